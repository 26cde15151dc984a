using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;

namespace ShopClass.Data.Lessons;

/// <summary>The tables of lessons.</summary>
internal static class LessonMap
{
    public static void Apply(ModelBuilder builder)
    {
        builder.Entity<LessonRow>(MapLesson);
        builder.Entity<ShopRow>(MapShop);
        builder.Entity<LessonPlanRow>(MapPlan);
    }

    private static void MapLesson(EntityTypeBuilder<LessonRow> lesson)
    {
        lesson.ToTable("Lessons");
        lesson.Property(l => l.Id).ValueGeneratedNever();
        lesson.Property(l => l.Title).HasMaxLength(StoreLimits.LongestName);
        lesson.Property(l => l.Version).IsConcurrencyToken();
        lesson.Property(l => l.Shows).HasConversion<ListColumn<Skill>, ListComparer<Skill>>();
        lesson.Property(l => l.Absent).HasConversion<ListColumn<Guid>, ListComparer<Guid>>();
        lesson
            .HasOne(l => l.Course)
            .WithMany(c => c.Lessons)
            .HasForeignKey(l => l.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapShop(EntityTypeBuilder<ShopRow> shop)
    {
        shop.ToTable("Shops");
        shop.HasKey(s => s.CourseId);
        shop.Property(s => s.CourseId).ValueGeneratedNever();
        shop.Property(s => s.Version).IsConcurrencyToken();
        shop.Property(s => s.Demonstrations)
            .HasConversion<ListColumn<SkillMinutes>, ListComparer<SkillMinutes>>();
        shop.HasOne(s => s.Course)
            .WithOne(c => c.Shop)
            .HasForeignKey<ShopRow>(s => s.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapPlan(EntityTypeBuilder<LessonPlanRow> plan)
    {
        plan.ToTable("LessonPlans");
        plan.Property(p => p.Id).ValueGeneratedNever();
        plan.HasOne(p => p.Course)
            .WithMany()
            .HasForeignKey(p => p.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
        plan.HasOne<ProjectRow>()
            .WithMany()
            .HasForeignKey(p => p.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
        plan.HasIndex(p => new
            {
                p.CourseId,
                p.ProjectId,
                p.Number,
            })
            .IsUnique();
    }
}

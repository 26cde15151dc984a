using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Data.Store;

namespace ShopClass.Data.People;

/// <summary>The tables of helpers, stand-ins and their invitations.</summary>
internal sealed class PeopleMap
    : IEntityTypeConfiguration<PersonRow>,
        IEntityTypeConfiguration<InvitationRow>
{
    private const int HashLength = 64;

    public static void Apply(ModelBuilder builder)
    {
        var map = new PeopleMap();
        builder.ApplyConfiguration<PersonRow>(map);
        builder.ApplyConfiguration<InvitationRow>(map);
    }

    public void Configure(EntityTypeBuilder<PersonRow> builder)
    {
        builder.ToTable("People");
        builder.Property(p => p.Id).ValueGeneratedNever();
        builder.Property(p => p.Role).HasConversion<string>().HasMaxLength(20);
        builder.HasIndex(p => new { p.CourseId, p.AccountId });
        builder
            .HasOne(p => p.Course)
            .WithMany(c => c.People)
            .HasForeignKey(p => p.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
        builder
            .HasOne(p => p.Lesson)
            .WithMany()
            .HasForeignKey(p => p.LessonId)
            .OnDelete(DeleteBehavior.Cascade);
        builder
            .HasOne<Account>()
            .WithMany()
            .HasForeignKey(p => p.AccountId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    public void Configure(EntityTypeBuilder<InvitationRow> builder)
    {
        builder.ToTable("Invitations");
        builder.Property(i => i.Id).ValueGeneratedNever();
        builder.Property(i => i.Role).HasConversion<string>().HasMaxLength(20);
        builder.Property(i => i.CodeHash).HasMaxLength(HashLength);
        builder.HasIndex(i => i.CodeHash).IsUnique();
        builder
            .HasOne(i => i.Course)
            .WithMany()
            .HasForeignKey(i => i.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
        builder
            .HasOne(i => i.Lesson)
            .WithMany()
            .HasForeignKey(i => i.LessonId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

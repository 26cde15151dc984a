using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Keeping;
using ShopClass.Data.Learning;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.People;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Data.Remakes;
using ShopClass.Data.Students;
using ShopClass.Data.Students.Logging;
using ShopClass.Data.Tools;

namespace ShopClass.Data.Store;

/// <summary>The store. Pages never see it: they ask the stores, which open one for each operation.</summary>
public sealed class ShopContext(DbContextOptions<ShopContext> options, TimeProvider? clock = null)
    : IdentityDbContext<Account>(options)
{
    /// <summary>The day it is here, by the server's own time zone; a stand-in's role holds on one.</summary>
    public DateOnly Today { get; } =
        DateOnly.FromDateTime((clock ?? TimeProvider.System).GetLocalNow().DateTime);

    public DbSet<CourseRow> Courses => Set<CourseRow>();

    public DbSet<ProjectRow> Projects => Set<ProjectRow>();

    public DbSet<PartRow> Parts => Set<PartRow>();

    public DbSet<StudentRow> Students => Set<StudentRow>();

    public DbSet<BoardRow> Boards => Set<BoardRow>();

    public DbSet<PlanRow> Plans => Set<PlanRow>();

    public DbSet<LessonRow> Lessons => Set<LessonRow>();

    public DbSet<LessonPlanRow> LessonPlans => Set<LessonPlanRow>();

    public DbSet<RemakeRow> Remakes => Set<RemakeRow>();

    public DbSet<PersonRow> People => Set<PersonRow>();

    public DbSet<InvitationRow> Invitations => Set<InvitationRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<Length>().HaveConversion<LengthColumn>();
        configurationBuilder.Properties<DateTime>().HaveConversion<UtcColumn>();
        configurationBuilder.Properties<UnitSystem>().HaveConversion<string>().HaveMaxLength(20);
        configurationBuilder.Properties<Precision>().HaveConversion<string>().HaveMaxLength(20);
        configurationBuilder.Properties<Surfacing>().HaveConversion<string>().HaveMaxLength(20);
        configurationBuilder
            .Properties<GrainDirection>()
            .HaveConversion<string>()
            .HaveMaxLength(20);
        ProjectLists.Configure(configurationBuilder);
        configurationBuilder
            .Properties<IReadOnlyList<TechniqueNote>>()
            .HaveConversion<ListColumn<TechniqueNote>, ListComparer<TechniqueNote>>();
        configurationBuilder
            .Properties<IReadOnlyList<Defect>>()
            .HaveConversion<ListColumn<Defect>, ListComparer<Defect>>();
        configurationBuilder
            .Properties<IReadOnlyList<OpenDimension>>()
            .HaveConversion<ListColumn<OpenDimension>, ListComparer<OpenDimension>>();
    }

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.Entity<CourseRow>(MapCourse);
        builder.Entity<ProjectRow>(MapProject);
        builder.Entity<PartRow>(MapPart);
        builder.Entity<StudentRow>(MapStudent);
        builder.Entity<BoardRow>(MapBoard);
        builder.Entity<PlanRow>(MapPlan);
        LoggingMap.Apply(builder);
        JoiningMap.Apply(builder);
        OrderMaps.Map(builder);
        LessonMap.Apply(builder);
        PeopleMap.Apply(builder);
        // Whoever stands in is nobody to the course on any other day than the lesson's.
        builder
            .Entity<PersonRow>()
            .HasQueryFilter(p => p.LessonId == null || p.Lesson!.Date == Today);
        builder.ApplyConfiguration(new RemakeMap());
        builder.ApplyConfiguration(new ProgressMap());
        builder.ApplyConfiguration(new KeepingMap());
        builder.ApplyConfiguration(new ToolMap());
        builder.ApplyConfiguration(new ReturnMap());
        builder.ApplyConfiguration(new StartMap());
    }

    private static void MapCourse(EntityTypeBuilder<CourseRow> course)
    {
        course.ToTable("Courses");
        course.Property(c => c.Id).ValueGeneratedNever();
        course.Property(c => c.Name).HasMaxLength(StoreLimits.LongestName);
        course.Property(c => c.Version).IsConcurrencyToken();
        course.ComplexProperty(c => c.Rules);
        course
            .HasOne<Account>()
            .WithMany()
            .HasForeignKey(c => c.OwnerId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapProject(EntityTypeBuilder<ProjectRow> project)
    {
        project.ToTable("Projects");
        project.Property(p => p.Id).ValueGeneratedNever();
        project.Property(p => p.Name).HasMaxLength(StoreLimits.LongestName);
        project.Property(p => p.Notes).HasMaxLength(StoreLimits.LongestNotes);
        project.Property(p => p.Version).IsConcurrencyToken();
        project
            .HasOne(p => p.Course)
            .WithMany(c => c.Projects)
            .HasForeignKey(p => p.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
        project
            .HasMany(p => p.Parts)
            .WithOne()
            .HasForeignKey(p => p.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapPart(EntityTypeBuilder<PartRow> part)
    {
        part.ToTable("Parts");
        part.Property(p => p.Id).ValueGeneratedNever();
        part.Property(p => p.Version).IsConcurrencyToken();
        part.HasIndex(p => new { p.ProjectId, p.Letter }).IsUnique();
    }

    private static void MapStudent(EntityTypeBuilder<StudentRow> student)
    {
        student.ToTable("Students");
        student.Property(s => s.Id).ValueGeneratedNever();
        student.Property(s => s.Name).HasMaxLength(StoreLimits.LongestName);
        student.Property(s => s.Alias).HasMaxLength(StoreLimits.LongestAlias);
        student.Property(s => s.Version).IsConcurrencyToken();
        student
            .HasOne(s => s.Course)
            .WithMany(c => c.Students)
            .HasForeignKey(s => s.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapBoard(EntityTypeBuilder<BoardRow> board)
    {
        board.ToTable("Boards");
        board.Property(b => b.Id).ValueGeneratedNever();
        board.Property(b => b.Version).IsConcurrencyToken();
        board.Property(b => b.SentBack).HasMaxLength(TypedText.LongestNotes);
        board
            .HasOne(b => b.Student)
            .WithMany(s => s.Boards)
            .HasForeignKey(b => b.StudentId)
            .OnDelete(DeleteBehavior.Cascade);
        board
            .HasOne(b => b.Project)
            .WithMany()
            .HasForeignKey(b => b.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
        board
            .HasIndex(b => new
            {
                b.StudentId,
                b.ProjectId,
                b.Position,
            })
            .IsUnique();
    }

    private static void MapPlan(EntityTypeBuilder<PlanRow> plan)
    {
        plan.ToTable("Plans");
        plan.Property(p => p.Id).ValueGeneratedNever();
        plan.HasOne(p => p.Student)
            .WithMany(s => s.Plans)
            .HasForeignKey(p => p.StudentId)
            .OnDelete(DeleteBehavior.Cascade);
        plan.HasOne(p => p.Project)
            .WithMany()
            .HasForeignKey(p => p.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
        plan.HasIndex(p => new
            {
                p.StudentId,
                p.ProjectId,
                p.Number,
            })
            .IsUnique();
    }
}

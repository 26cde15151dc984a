using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Core.Paces;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;

namespace ShopClass.Data.Learning;

/// <summary>What was decided about starting from an earlier course.</summary>
public enum StartChoice
{
    /// <summary>Nothing yet: it came with a course file.</summary>
    Offered,

    /// <summary>The course starts from it.</summary>
    Taken,

    /// <summary>The course starts from the usual rates.</summary>
    Left,
}

/// <summary>What an earlier course has learned, as a course has it to start from: numbers, and no names of people.</summary>
public sealed class StartRow
{
    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public StartChoice Choice { get; set; }

    /// <summary>What it comes from: an earlier course's name; empty for a course file.</summary>
    public string Source { get; set; } = "";

    /// <summary>The figures as JSON, gzip.</summary>
    public required byte[] Figures { get; set; }

    internal Learned ToLearned() => Packed.Unpack<Learned>(Figures);
}

/// <summary>The table of what courses start from.</summary>
internal sealed class StartMap : IEntityTypeConfiguration<StartRow>
{
    public void Configure(EntityTypeBuilder<StartRow> builder)
    {
        builder.ToTable("CourseStarts");
        builder.HasKey(s => s.CourseId);
        builder.Property(s => s.CourseId).ValueGeneratedNever();
        builder.Property(s => s.Choice).HasConversion<string>().HasMaxLength(20);
        builder.Property(s => s.Source).HasMaxLength(Access.StoreLimits.LongestName);
        builder
            .HasOne(s => s.Course)
            .WithOne(c => c.Start)
            .HasForeignKey<StartRow>(s => s.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

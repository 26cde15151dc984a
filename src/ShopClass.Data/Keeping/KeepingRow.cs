using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Data.Courses;

namespace ShopClass.Data.Keeping;

/// <summary>When a course ends, and so when its names go.</summary>
public sealed class KeepingRow
{
    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public DateOnly EndsOn { get; set; }

    /// <summary>When names and notes were deleted; null while they are there.</summary>
    public DateTime? ForgottenUtc { get; set; }
}

/// <summary>The table of when courses end.</summary>
internal sealed class KeepingMap : IEntityTypeConfiguration<KeepingRow>
{
    public void Configure(EntityTypeBuilder<KeepingRow> builder)
    {
        builder.ToTable("Keepings");
        builder.HasKey(k => k.CourseId);
        builder
            .HasOne(k => k.Course)
            .WithOne()
            .HasForeignKey<KeepingRow>(k => k.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

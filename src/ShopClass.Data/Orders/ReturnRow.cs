using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Data.Courses;

namespace ShopClass.Data.Orders;

/// <summary>That what an order or a plan leaves has been put on the rack: it is done once.</summary>
public sealed class ReturnRow
{
    /// <summary>The order or the plan.</summary>
    public Guid SourceId { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public DateTime AtUtc { get; set; }
}

/// <summary>The table of what was put back.</summary>
internal sealed class ReturnMap : IEntityTypeConfiguration<ReturnRow>
{
    public void Configure(EntityTypeBuilder<ReturnRow> builder)
    {
        builder.ToTable("RackReturns");
        builder.HasKey(r => r.SourceId);
        builder.Property(r => r.SourceId).ValueGeneratedNever();
        builder
            .HasOne(r => r.Course)
            .WithMany()
            .HasForeignKey(r => r.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

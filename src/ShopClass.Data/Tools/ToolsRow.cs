using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Core.Tools;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;

namespace ShopClass.Data.Tools;

/// <summary>A course's tools as stored.</summary>
public sealed class ToolsRow
{
    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public IReadOnlyList<ShopTool> Tools { get; set; } = [];

    public IReadOnlyList<ToolSet> Sets { get; set; } = [];

    public int SharpenAfter { get; set; }

    public Guid Version { get; set; }

    internal ToolChest ToChest() => new(Tools, Sets, SharpenAfter);

    internal void Take(ToolChest chest)
    {
        (Tools, Sets, SharpenAfter) = (chest.Tools, chest.Sets, chest.SharpenAfter);
        Version = Guid.NewGuid();
    }
}

/// <summary>The table of tools.</summary>
internal sealed class ToolMap : IEntityTypeConfiguration<ToolsRow>
{
    public void Configure(EntityTypeBuilder<ToolsRow> builder)
    {
        builder.ToTable("Tools");
        builder.HasKey(t => t.CourseId);
        builder.Property(t => t.CourseId).ValueGeneratedNever();
        builder.Property(t => t.Version).IsConcurrencyToken();
        builder
            .Property(t => t.Tools)
            .HasConversion<ListColumn<ShopTool>, ListComparer<ShopTool>>();
        builder.Property(t => t.Sets).HasConversion<ListColumn<ToolSet>, ListComparer<ToolSet>>();
        builder
            .HasOne(t => t.Course)
            .WithOne(c => c.Tools)
            .HasForeignKey<ToolsRow>(t => t.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

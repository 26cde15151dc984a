using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Core.Remakes;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;

namespace ShopClass.Data.Remakes;

/// <summary>A remake as stored: never changed. It belongs to the plan version whose part was spoiled.</summary>
public sealed class RemakeRow
{
    public Guid Id { get; set; }

    public Guid PlanId { get; set; }

    public PlanRow? Plan { get; set; }

    /// <summary>From 1 within the plan version.</summary>
    public int Number { get; set; }

    public DateTime MadeUtc { get; set; }

    public required string Part { get; set; }

    public int Copy { get; set; }

    public int Strip { get; set; }

    public int CutsMade { get; set; }

    public RemakeWay Way { get; set; }

    /// <summary>The option that was chosen, as JSON, gzip.</summary>
    public required byte[] Option { get; set; }

    internal RemakeMade ToMade() =>
        new(Number, new(Part, Copy, Strip), CutsMade, Packed.Unpack<RemakeOption>(Option));
}

internal sealed class RemakeMap : IEntityTypeConfiguration<RemakeRow>
{
    public void Configure(EntityTypeBuilder<RemakeRow> builder)
    {
        builder.ToTable("Remakes");
        builder.Property(r => r.Id).ValueGeneratedNever();
        builder.Property(r => r.Part).HasMaxLength(2);
        builder.Property(r => r.Way).HasConversion<string>().HasMaxLength(20);
        builder
            .HasOne(r => r.Plan)
            .WithMany()
            .HasForeignKey(r => r.PlanId)
            .OnDelete(DeleteBehavior.Cascade);
        builder.HasIndex(r => new { r.PlanId, r.Number }).IsUnique();
    }
}

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Plans;

namespace ShopClass.Data.Progress;

/// <summary>One thing said about a step, as stored: never changed, only added to.</summary>
public sealed class StepActionRow
{
    /// <summary>The order in which they were stored.</summary>
    public long Number { get; set; }

    /// <summary>Made by whoever said it; the same one counts once.</summary>
    public Guid Id { get; set; }

    public Guid PlanId { get; set; }

    public PlanRow? Plan { get; set; }

    public required string StepId { get; set; }

    public StepActionKind Kind { get; set; }

    public string Text { get; set; } = "";

    public Length? Size { get; set; }

    public bool ByInstructor { get; set; }

    public DateTime StoredUtc { get; set; }

    /// <summary>When it was said, by the clock of the device; earlier than stored when it waited for a signal.</summary>
    public DateTime SaidUtc { get; set; }

    /// <summary>Whole minutes the step took; null where nobody said.</summary>
    public int? Minutes { get; set; }

    /// <summary>The table's minutes for it; null where no minutes were said.</summary>
    public int? PlannedMinutes { get; set; }

    /// <summary>The kind of step, where minutes were said: kept here so that pace is read without unpacking plans.</summary>
    public StepKind? StepKind { get; set; }

    /// <summary>The species it was done in, where minutes were said; empty where not known.</summary>
    public string SpeciesId { get; set; } = "";

    internal StepAction ToAction() => new(Id, StepId, Kind, Text, Size) { Minutes = Minutes };
}

/// <summary>The table of what was said about steps.</summary>
internal sealed class ProgressMap : IEntityTypeConfiguration<StepActionRow>
{
    public const int LongestStepId = 200;

    public void Configure(EntityTypeBuilder<StepActionRow> builder)
    {
        builder.ToTable("StepActions");
        builder.HasKey(a => a.Number);
        builder.HasIndex(a => a.Id).IsUnique();
        builder.Property(a => a.StepId).HasMaxLength(LongestStepId);
        builder.Property(a => a.Kind).HasConversion<string>().HasMaxLength(20);
        builder.Property(a => a.StepKind).HasConversion<string>().HasMaxLength(30);
        builder.Property(a => a.SpeciesId).HasMaxLength(60);
        builder.Property(a => a.Text).HasMaxLength(TypedText.LongestNotes);
        builder
            .HasOne(a => a.Plan)
            .WithMany()
            .HasForeignKey(a => a.PlanId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

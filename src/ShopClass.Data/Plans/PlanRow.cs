using ShopClass.Data.Projects;
using ShopClass.Data.Students;

namespace ShopClass.Data.Plans;

/// <summary>A plan as stored: never changed, only followed by the next number.</summary>
public sealed class PlanRow
{
    public Guid Id { get; set; }

    public Guid StudentId { get; set; }

    public StudentRow? Student { get; set; }

    public Guid ProjectId { get; set; }

    public ProjectRow? Project { get; set; }

    public int Number { get; set; }

    public DateTime MadeUtc { get; set; }

    /// <summary>Fingerprint of the project, boards and rules it was made for.</summary>
    public required string RequestFingerprint { get; set; }

    /// <summary>Fingerprint of the whole snapshot.</summary>
    public required string PlanFingerprint { get; set; }

    public bool IsComplete { get; set; }

    public required string Sentence { get; set; }

    /// <summary>The checked plan as JSON, gzip.</summary>
    public required byte[] Snapshot { get; set; }

    /// <summary>The steps written for it, packed the same way; null in plans stored before steps were.</summary>
    public byte[]? Work { get; set; }
}

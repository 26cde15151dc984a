using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Data.Projects;

/// <summary>A row of a parts list as stored.</summary>
public sealed class PartRow
{
    public Guid Id { get; set; }

    public Guid ProjectId { get; set; }

    public int Position { get; set; }

    public string Letter { get; set; } = "";

    public string Name { get; set; } = "";

    public Length Thickness { get; set; }

    public Length Width { get; set; }

    public Length Length { get; set; }

    public int Quantity { get; set; }

    public GrainDirection Grain { get; set; }

    public bool ShowFace { get; set; }

    public bool GlueUpAllowed { get; set; }

    public bool AcceptsHiddenDefect { get; set; }

    public ReferenceFace ReferenceFace { get; set; }

    public string JointNotes { get; set; } = "";

    public IReadOnlyList<OpenDimension> Open { get; set; } = [];

    public Guid Version { get; set; }

    internal static PartRow From(Part part, Guid projectId, int position)
    {
        var row = new PartRow
        {
            Id = Guid.NewGuid(),
            ProjectId = projectId,
            Position = position,
        };
        row.Take(part);
        return row;
    }

    internal void Take(Part part)
    {
        Letter = part.Letter;
        Name = part.Name;
        (Thickness, Width, Length) = part.Finished;
        Quantity = part.Quantity;
        Grain = part.Grain;
        ShowFace = part.ShowFace;
        GlueUpAllowed = part.GlueUpAllowed;
        AcceptsHiddenDefect = part.AcceptsHiddenDefect;
        ReferenceFace = part.ReferenceFace;
        JointNotes = part.JointNotes;
        Open = [.. part.Open];
        Version = Guid.NewGuid();
    }

    internal Part ToPart() =>
        new()
        {
            Letter = Letter,
            Name = Name,
            Finished = new(Thickness, Width, Length),
            Quantity = Quantity,
            Grain = Grain,
            ShowFace = ShowFace,
            GlueUpAllowed = GlueUpAllowed,
            AcceptsHiddenDefect = AcceptsHiddenDefect,
            ReferenceFace = ReferenceFace,
            JointNotes = JointNotes,
            Open = Open,
        };

    internal PartView ToView() => new(Id, ToPart(), Version);
}

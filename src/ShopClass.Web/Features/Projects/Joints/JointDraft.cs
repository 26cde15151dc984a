using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Projects.Joints;

/// <summary>A joint being edited.</summary>
public sealed class JointDraft : KeptDraft<Joint>
{
    public JointKind Kind { get; set; }

    public string Part { get; set; } = "";

    public string Mate { get; set; } = "";

    public Length? Depth { get; set; }

    public Length? Width { get; set; }

    public Length? Across { get; set; }

    /// <summary>From the reference edge to its near side; empty lies in the middle, or right across.</summary>
    public Length? FromEdge { get; set; }

    public JointSide Side { get; set; }

    /// <summary>The places as typed: "2; 10".</summary>
    public PlacesEntry Places { get; } = new();

    public string Note { get; set; } = "";

    public bool CutsNothing => Kind is JointKind.Nailed;

    /// <summary>Whether it has a place along the part; a dovetail and a butt lie at its end.</summary>
    public bool HasPlaces => Kind is not (JointKind.Nailed or JointKind.Dovetail);

    /// <summary>Whether it has a place across the part; a notch begins at its edge.</summary>
    public bool HasPlaceAcross => HasPlaces && Kind is not JointKind.Notch;

    public override string Called =>
        (Part, Mate) switch
        {
            ("", "") => "new joint",
            (var part, "") => $"{Kind.Words()} in {part}",
            ("", var mate) => $"{Kind.Words()} for {mate}",
            var (part, mate) => $"{Kind.Words()} in {part} for {mate}",
        };

    /// <summary>A peg goes right through, so its depth need not be typed.</summary>
    public void FillDepth(IReadOnlyList<Part> parts)
    {
        if (Kind is JointKind.ThroughPeg)
            Depth ??= parts.FirstOrDefault(p => p.Letter == Part)?.Finished.Thickness;
    }

    protected override IEnumerable<(string Field, string Sentence, string Lacks)> Unfinished()
    {
        if (Part.Length == 0)
            yield return (nameof(Part), "Choose the part it is cut in.", "the part it is cut in");
        if (Mate.Length == 0 && Kind is not (JointKind.Notch or JointKind.Rabbet))
            yield return (nameof(Mate), "Choose the part that enters it.", "the part that enters");
        if (Depth is null && !CutsNothing)
            yield return (nameof(Depth), "Type how deep it goes.", "how deep");
        if (HasPlaces && Places.Problem is { } problem)
            yield return ("Positions", problem, "where");
        else if (
            HasPlaces
            && Places.Lengths.Count == 0
            && Kind is not (JointKind.Notch or JointKind.Rabbet)
        )
            yield return ("Positions", "Type where it lies, from the reference end.", "where");
    }

    protected override Joint Finished() =>
        new()
        {
            Kind = Kind,
            Part = Part,
            Mate = Mate.Length == 0 ? null : Mate,
            Depth = CutsNothing ? Length.Zero : Depth!.Value,
            Width = HasPlaces ? Width : null,
            Across = CutsNothing ? null : Across,
            FromEdge = HasPlaceAcross ? FromEdge : null,
            Side = CutsNothing ? JointSide.Reference : Side,
            Positions = HasPlaces ? Places.Lengths : [],
            Note = Note.Trim(),
        };

    protected override void Show(Joint item)
    {
        (Kind, Part, Mate, Side, Note) = (
            item.Kind,
            item.Part,
            item.Mate ?? "",
            item.Side,
            item.Note
        );
        Depth = item.Depth == Length.Zero ? null : item.Depth;
        (Width, Across, FromEdge) = (item.Width, item.Across, item.FromEdge);
        Places.Show(item.Positions);
    }
}

using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>A blank with everything round it.</summary>
internal sealed record BlankInPlace(
    CheckedPlan Made,
    BoardLayout Layout,
    Section Section,
    Strip Strip,
    PlacedBlank Blank
)
{
    public PlanningRequest Request => Made.Request;

    public Board Board { get; } = Made.Request.Boards.First(b => b.Id == Layout.BoardId);

    public Part Part { get; } = Made.Request.Project.Parts.First(p => p.Letter == Blank.Key.Part);

    public BoardRect Rect => Blank.In(Strip);

    /// <summary>Its least size along the board and across it.</summary>
    public (Length Along, Length Across) Needed =>
        Blank.Turned
            ? (Blank.Needed.Width, Blank.Needed.Length)
            : (Blank.Needed.Length, Blank.Needed.Width);

    /// <summary>Where usable wood ends along the board.</summary>
    public Length End => Board.Length - Board.TrimEnd;

    /// <summary>All blanks of a plan, by name.</summary>
    public static IReadOnlyList<BlankInPlace> AllOf(CheckedPlan made) =>
        [
            .. from layout in made.Plan.Boards
            from section in layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            orderby blank.Key
            select new BlankInPlace(made, layout, section, strip, blank),
        ];

    /// <summary>The other blanks of its board, with their strips.</summary>
    public IEnumerable<BlankInPlace> OthersOnTheBoard() =>
        Layout
            .Sections.SelectMany(section => section.Strips.Select(strip => (section, strip)))
            .SelectMany(at =>
                at.strip.Blanks.Select(b => new BlankInPlace(Made, Layout, at.section, at.strip, b))
            )
            .Where(other => other.Blank.Key != Blank.Key);

    /// <summary>The blanks in the other strips of its section.</summary>
    public IEnumerable<BlankInPlace> Beside() =>
        OthersOnTheBoard().Where(o => o.Section.From == Section.From && o.Strip.Near != Strip.Near);

    /// <summary>Cuts on its board.</summary>
    public IEnumerable<Cut> Cuts => Made.Sequence.Cuts.Where(c => c.BoardId == Layout.BoardId);

    public BlankReason Because(ReasonKind kind, string sentence) => new(Blank.Key, kind, sentence);

    public string Say(Length length) => Reasons.Say.Length(Request, length);
}

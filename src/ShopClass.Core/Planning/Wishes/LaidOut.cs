using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>A blank where it lies.</summary>
internal readonly record struct Lying(PlacedBlank Blank, Section Section, Strip Strip)
{
    public BoardRect Rect => Blank.In(Strip);
}

/// <summary>A board with its layout, and what follows from the two, worked out when first asked for.</summary>
internal sealed class LaidBoard(Board board, CourseRules rules, BoardLayout layout)
{
    private IReadOnlyList<BoardLength>? lengths;
    private IReadOnlyList<BoardRect>? leftovers;
    private IReadOnlyList<Lying>? blanks;

    public Board Board { get; } = board;

    public CourseRules Rules { get; } = rules;

    public BoardLayout Layout { get; } = layout;

    /// <summary>The lengths it is first crosscut to, as the order of cuts has them.</summary>
    public IReadOnlyList<BoardLength> Lengths =>
        lengths ??= new BoardLengths(Board, Rules, Layout).Find();

    /// <summary>What is left over between its trims when every blank is sawn out.</summary>
    public IReadOnlyList<BoardRect> Leftovers => leftovers ??= LeftWood.On(this);

    /// <summary>Its blanks, section by section.</summary>
    public IReadOnlyList<Lying> Blanks =>
        blanks ??= [
            .. from section in Layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            select new Lying(blank, section, strip),
        ];
}

/// <summary>A whole layout, to be weighed and rearranged. Boards that did not change are shared between layouts.</summary>
internal sealed class LaidOut
{
    private readonly Dictionary<string, Part> byLetter;
    private readonly Lazy<IReadOnlyList<PartRisk>> risks;

    private LaidOut(
        PlanningRequest request,
        IReadOnlyList<LaidBoard> boards,
        Dictionary<string, Part> byLetter,
        Lazy<IReadOnlyList<PartRisk>> risks
    ) => (Request, Boards, this.byLetter, this.risks) = (request, boards, byLetter, risks);

    public PlanningRequest Request { get; }

    public IReadOnlyList<LaidBoard> Boards { get; }

    public CourseRules Rules => Request.Rules;

    /// <summary>The parts by risk, the riskiest first.</summary>
    public IReadOnlyList<PartRisk> Risks => risks.Value;

    /// <summary>The layout of a plan; null where a board of the plan is not in the request.</summary>
    public static LaidOut? Of(PlanningRequest request, IReadOnlyList<BoardLayout> layouts)
    {
        var boards = request.Boards.ToDictionary(b => b.Id, StringComparer.Ordinal);
        if (layouts.Any(l => !boards.ContainsKey(l.BoardId) || l.Sections.Count == 0))
            return null;
        return new(
            request,
            [.. layouts.Select(l => new LaidBoard(boards[l.BoardId], request.Rules, l))],
            request.Project.Parts.ToDictionary(p => p.Letter, StringComparer.Ordinal),
            new(() => PartRisk.Ranked(request.Project))
        );
    }

    public Part PartOf(PlacedBlank blank) => byLetter[blank.Key.Part];

    /// <summary>The same with other layouts for some of its boards.</summary>
    public LaidOut With(params ReadOnlySpan<(int Board, BoardLayout Layout)> changed)
    {
        LaidBoard[] boards = [.. Boards];
        foreach (var (i, layout) in changed)
            boards[i] = new(boards[i].Board, Rules, layout);
        return new(Request, boards, byLetter, risks);
    }

    public string Say(Length length) => Reasons.Say.Length(Request, length);

    public static string List(IEnumerable<BlankKey> keys) =>
        Reasons.Say.List([.. keys.Order().Select(k => k.ToString())]);

    /// <summary>The length or the width a blank needs, along its board and across it.</summary>
    public static (Length Along, Length Across) Needed(PlacedBlank blank) =>
        blank.Turned
            ? (blank.Needed.Width, blank.Needed.Length)
            : (blank.Needed.Length, blank.Needed.Width);

    /// <summary>The least width of a strip.</summary>
    public static Length Needed(Strip strip) => strip.Blanks.Max(b => Needed(b).Across);
}

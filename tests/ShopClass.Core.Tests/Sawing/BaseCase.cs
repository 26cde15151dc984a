using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using Xunit;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>
/// The case that the rules are tried on. A surfaced board of 60 x 8 in with an inch of trim at each end yields A (5 x
/// 24) twice and B (2 x 24) once. With an inch of length and a quarter of width to spare, blanks are 25 x 5 1/4 and
/// 25 x 2 1/4, each exactly as small as it may be:
/// <code>
/// 1         26  26 1/8     51 1/8
/// | A1 0-5 1/4  | A2 0-5 1/4 |
/// | B1 5 3/8-7 5/8 |  waste  |
/// </code>
/// </summary>
internal sealed record BaseCase
{
    public Board Board { get; init; } =
        HandDrawn.Board(60, 8) with
        {
            TrimStart = In(1),
            TrimEnd = In(1),
        };

    public Part A { get; init; } = Part("A", 5, 24, 2);

    public Part B { get; init; } = Part("B", 2, 24);

    public PlacedBlank A1 { get; init; } = Blank("A1", 1, 26, 5.25m, 25);

    public PlacedBlank A2 { get; init; } = Blank("A2", 26.125m, 51.125m, 5.25m, 25);

    public PlacedBlank B1 { get; init; } = Blank("B1", 1, 26, 2.25m, 25);

    public Func<PlanningRequest, PlanningRequest> Asking { get; init; } = r => r;

    public Func<CutPlan, CutPlan> Planning { get; init; } = p => p;

    public Func<IReadOnlyList<Cut>, IEnumerable<Cut>> Sawing { get; init; } = c => c;

    public PlanningRequest Request => Asking(HandDrawn.Request([Board], [A, B]));

    public CutPlan Plan =>
        Planning(
            HandDrawn.Plan(
                Layout(
                    Board.Id,
                    Section(1, 26, Strip(0, 5.25m, A1), Strip(5.375m, 7.625m, B1)),
                    Section(26.125m, 51.125m, Strip(0, 5.25m, A2))
                )
            )
        );

    public SawingSequence Sequence => new([.. Sawing(Sequencer.Order(Request, Plan).Cuts)]);

    public RehearsalReport Report => Rehearsal.Replay(Request, Plan, Sequence);

    /// <summary>A copy with one cut of the sequence changed.</summary>
    public BaseCase WithCut(int number, Func<Cut, Cut> change) =>
        this with
        {
            Sawing = cuts => cuts.Select(c => c.Number == number ? change(c) : c),
        };

    /// <summary>Asserts that the rule is broken, for whom, by how much, and that it is said so.</summary>
    public void Breaks(string rule, string? subject, decimal? inches = null)
    {
        var found = Report.Findings.Where(f => f.Rule == rule).ToList();
        Assert.NotEmpty(found);
        Assert.Equal(subject, found[0].Subject);
        Assert.Equal(inches is { } amount ? In(amount) : null, found[0].Amount);
        Assert.Equal(FindingKind.Must, found[0].Kind);
        Assert.EndsWith(".", found[0].Sentence);
        Assert.False(Report.Passed);
    }

    /// <summary>Asserts that no must at all is broken.</summary>
    public void Keeps() => Assert.Equal([], Report.Findings.Where(f => f.Kind is FindingKind.Must));
}

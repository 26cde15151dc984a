using ShopClass.Core.Lumber;
using ShopClass.Core.Planning.Classes.Staged;
using ShopClass.Core.Planning.Search;

namespace ShopClass.Core.Planning.Classes;

/// <summary>A class's request put as pieces and boards in ticks, kerf included.</summary>
internal sealed class ClassWood
{
    private readonly Bench bench;
    private readonly ClassRequest request;

    public ClassWood(ClassRequest request)
    {
        this.request = request;
        Sources =
        [
            .. request.Stock.Select(size => Source.Of(size, request.Rules)),
            .. request.Rack.Select(board => Source.Of(board)),
        ];
        GlueUps = FewestGlueUps();
        bench = Bench.Lay(AskFor(request.Project, Sources), GlueUps);
        Planks = [.. Sources.Select(s => PlankOf(s, s.Run.Along.Ticks))];
        // A board with bad places is laid out on its longest clear run; no bound may count on that.
        Clear = [.. Sources.Select(s => PlankOf(s, s.Usable.Ticks))];
    }

    /// <summary>Where boards come from: the list's sizes, then the rack.</summary>
    public IReadOnlyList<Source> Sources { get; }

    /// <summary>Strips of each glued-up part.</summary>
    public IReadOnlyDictionary<string, int> GlueUps { get; }

    /// <summary>Blanks that are alike; each with the blanks of one kit.</summary>
    public IReadOnlyList<Kind> Kinds => bench.Kinds;

    private Plank[] Planks { get; }

    private Plank[] Clear { get; }

    /// <summary>So many kits and spare parts, to lay out and to bound.</summary>
    public (Cutting Layouts, Cutting Bounds) For(
        int kits,
        bool spareParts,
        IReadOnlyList<int> copies
    )
    {
        var spares = spareParts ? request.SpareParts : null;
        Piece[] pieces =
        [
            .. Kinds.Select(k => new Piece(
                Ways(k),
                k.Items.Count * kits
                    + k.Items.Where(i => i.Key.Copy == 1)
                        .Sum(i => spares?.GetValueOrDefault(i.Part.Letter) ?? 0),
                k.Suits
            )),
        ];
        Plank[] With(Plank[] planks) => [.. planks.Select((p, i) => p with { Copies = copies[i] })];
        return (new(With(Planks), pieces), new(With(Clear), pieces));
    }

    /// <summary>A planner's request for parts on boards like these.</summary>
    public PlanningRequest AskFor(Projects.Project project, IEnumerable<Source> boards) =>
        new()
        {
            Project = project,
            Boards = [.. boards.Select(s => s.Board)],
            Rules = request.Rules,
        };

    private Way[] Ways(Kind kind)
    {
        var (crosscut, rip) = (request.Rules.CrosscutKerf.Ticks, request.Rules.RipKerf.Ticks);
        var straight = new Way(
            (int)(kind.Length + crosscut),
            (int)(kind.Width + rip),
            (int)(kind.WidthBetweenStraightEdges + rip)
        );
        if (!kind.MayTurn)
            return [straight];
        var across = (int)(kind.Length + rip);
        return [straight, new((int)(kind.Width + crosscut), across, across, Turned: true)];
    }

    private Plank PlankOf(Source source, long usable) =>
        new(
            usable <= 0 ? 0 : (int)(usable + request.Rules.CrosscutKerf.Ticks),
            (int)(source.Board.SmallestWidth.Ticks + request.Rules.RipKerf.Ticks),
            source.Cost,
            source.Copies,
            source.Board.HasStraightEdges
        );

    /// <summary>As few joints as the boards there is no end of allow.</summary>
    private IReadOnlyDictionary<string, int> FewestGlueUps()
    {
        var endless = Sources.Where(s => s.Copies == int.MaxValue).ToList();
        var boards = endless.Count == 0 ? Sources : endless;
        return GlueUpChoices.For(AskFor(request.Project, boards))[0];
    }
}

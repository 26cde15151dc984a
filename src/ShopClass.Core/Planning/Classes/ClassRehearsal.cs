using System.Text;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Classes;

/// <summary>What the rehearsal of a class's boards found.</summary>
/// <param name="Findings">Broken musts, in sentences; none when every board can be sawn as planned and every kit is whole.</param>
public sealed record ClassRehearsalReport(IReadOnlyList<string> Findings)
{
    /// <summary>Whether no must is broken.</summary>
    public bool Passed => Findings.Count == 0;
}

/// <summary>
/// Rehearses a class's plan board by board: the cuts are ordered and replayed by <see cref="Rehearsal"/> as for a student's
/// board, boards that are cut alike once; then every blank is counted.
/// </summary>
public static class ClassRehearsal
{
    /// <summary>Replays every board and counts every blank.</summary>
    public static ClassRehearsalReport Replay(ClassRequest request, ClassPlan plan)
    {
        var findings = new List<string>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var board in plan.Boards)
        {
            if (seen.Add(Text(board)))
                findings.AddRange(OnBoard(request, plan, board));
        }

        findings.AddRange(Counted(request, plan));
        findings.AddRange(Kits(request, plan));
        return new(findings);
    }

    /// <summary>What is worth keeping of a board when all of it is sawn.</summary>
    internal static IEnumerable<Lumber.BoardRect> PiecesLeft(
        ClassRequest request,
        ClassPlan plan,
        ClassBoard board
    )
    {
        var (ask, cut) = AsOwnProject(request, plan, board);
        return Rehearsal
            .Replay(ask, cut, Sequencer.Order(ask, cut))
            .Steps[^1]
            .Pieces.Where(p => p.Fate is PieceFate.Offcut)
            .Select(p => p.Rect);
    }

    /// <summary>What the rehearsal of one board finds, were it part of the plan.</summary>
    internal static IEnumerable<string> OnBoard(
        ClassRequest request,
        ClassPlan plan,
        ClassBoard board
    )
    {
        var (ask, cut) = AsOwnProject(request, plan, board);
        var report = Rehearsal.Replay(ask, cut, Sequencer.Order(ask, cut));
        return report.Findings.Where(f => f.Kind is FindingKind.Must).Select(f => f.Sentence);
    }

    /// <summary>The board by itself, its blanks numbered from 1 for every part.</summary>
    private static (PlanningRequest Request, CutPlan Plan) AsOwnProject(
        ClassRequest request,
        ClassPlan plan,
        ClassBoard board
    )
    {
        var copies = board
            .Blanks.Select(b => (b.Key.Part, b.Key.Copy))
            .Distinct()
            .GroupBy(c => c.Part, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.Select(c => c.Copy).Order().ToList(),
                StringComparer.Ordinal
            );
        BlankKey Own(BlankKey key) => key with { Copy = copies[key.Part].IndexOf(key.Copy) + 1 };
        var placed = board.Blanks.Select(b => Own(b.Key)).ToHashSet();
        var missing =
            from part in copies
            from copy in Enumerable.Range(1, part.Value.Count)
            from strip in Strips(plan, part.Key)
            select new BlankKey(part.Key, copy, strip);
        var glueUps = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var glueUp in plan.GlueUps.Where(g => copies.ContainsKey(g.Key)))
            glueUps.Add(glueUp.Key, glueUp.Value);
        return (
            new()
            {
                Project = request.Project with
                {
                    Parts =
                    [
                        .. request
                            .Project.Parts.Where(p => copies.ContainsKey(p.Letter))
                            .Select(p => p with { Quantity = copies[p.Letter].Count }),
                    ],
                },
                Boards = [board.Board],
                Rules = request.Rules,
            },
            new()
            {
                Boards = [Renamed(board.Layout, Own)],
                Missing = [.. missing.Where(key => !placed.Contains(key))],
                GlueUps = glueUps,
                Goals = [],
                StepsTaken = 0,
            }
        );
    }

    private static BoardLayout Renamed(BoardLayout layout, Func<BlankKey, BlankKey> name)
    {
        Strip Strip(Strip strip) =>
            strip with
            {
                Blanks = [.. strip.Blanks.Select(b => b with { Key = name(b.Key) })],
            };
        return layout with
        {
            Sections =
            [
                .. layout.Sections.Select(s => s with { Strips = [.. s.Strips.Select(Strip)] }),
            ],
        };
    }

    private static IEnumerable<string> Counted(ClassRequest request, ClassPlan plan)
    {
        var asked =
            from part in request.WholeClass.Parts
            from copy in Enumerable.Range(1, part.Quantity)
            from strip in Strips(plan, part.Letter)
            select new BlankKey(part.Letter, copy, strip);
        var placed = plan.Boards.SelectMany(b => b.Blanks).Select(b => b.Key).Concat(plan.Missing);
        return placed.Order().SequenceEqual(asked.Order())
            ? []
            : ["Not every blank of the class is laid out once or named as missing."];
    }

    private static IEnumerable<string> Kits(ClassRequest request, ClassPlan plan) =>
        from board in plan.Boards
        where board.Kit is not null
        from blank in board.Blanks
        where request.KitOf(blank.Key) != board.Kit
        select $"{blank.Key} lies on {board.Board.Name}, a board of another kit.";

    private static IEnumerable<int> Strips(ClassPlan plan, string letter) =>
        plan.GlueUps.TryGetValue(letter, out var strips) ? Enumerable.Range(1, strips) : [0];

    /// <summary>All that matters for sawing a board, so that two alike are replayed once.</summary>
    private static string Text(ClassBoard board)
    {
        var text = new StringBuilder();
        text.Append(board.StockSizeId is null ? board.Board.Id : $"size {board.StockSizeId}");
        var copies = new Dictionary<BlankKey, int>();
        foreach (var section in board.Layout.Sections)
        {
            text.Append(';').Append(section.From.Ticks).Append('-').Append(section.To.Ticks);
            foreach (var strip in section.Strips)
            {
                text.Append('|').Append(strip.Near.Ticks).Append('-').Append(strip.Far.Ticks);
                foreach (var blank in strip.Blanks)
                {
                    var whole = blank.Key with { Strip = 0 };
                    copies.TryAdd(whole, copies.Count);
                    text.Append(',').Append(blank.From.Ticks).Append('-').Append(blank.To.Ticks);
                    text.Append(blank.Needed).Append(blank.Turned);
                    text.Append(blank.Key.Part)
                        .Append(copies[whole])
                        .Append('.')
                        .Append(blank.Key.Strip);
                }
            }
        }

        return text.ToString();
    }
}

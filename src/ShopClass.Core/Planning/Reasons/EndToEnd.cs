using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>
/// Proofs by length: blanks of which no two fit side by side lie one after another, a crosscut kerf between them.
/// </summary>
internal static class EndToEnd
{
    /// <summary>The copies of one part, in the clear runs there are.</summary>
    public static Impossibility? OfCopies(PartOnBoards part)
    {
        var (copies, kerf) = (part.Part.Quantity, part.Request.Rules.CrosscutKerf);
        if (copies < 2 || part.GoesSideBySide)
            return null;
        var room = part.Boards.Sum(b => ClearRuns.Count(part.Runs(b), part.Along, kerf));
        if (room >= copies)
            return null;
        var needed = part.Along * copies + kerf * (copies - 1);
        ClearRun[] runs = [.. part.Boards.SelectMany(part.Runs).Where(r => r.Along >= part.Along)];
        return runs.Length == 1 ? InOneRun(part, needed, runs[0].Along) : InSeveral(part, room);
    }

    /// <summary>Parts of which no two fit side by side, whatever their letters, on all boards together.</summary>
    public static Impossibility? Of(PlanningRequest request, IReadOnlyList<PartOnBoards> parts)
    {
        var (rules, boards) = (request.Rules, request.Boards);
        PartOnBoards[] wide =
        [
            .. parts.Where(p =>
                !p.MayTurn
                && !p.MayBeGluedUp
                && boards.All(b => p.SawnWidth * 2 + rules.RipKerf > b.SmallestWidth)
            ),
        ];
        var used = boards.Where(b => wide.Any(p => p.Boards.Contains(b))).ToList();
        var count = wide.Sum(p => p.Part.Quantity);
        if (wide.Length < 2 || count <= used.Count)
            return null;
        var needed =
            Sum(wide.Select(p => p.Along * p.Part.Quantity))
            + rules.CrosscutKerf * (count - used.Count);
        var there = Sum(
            used.Select(b => Length.Max(Length.Zero, b.Length - b.TrimStart - b.TrimEnd))
        );
        return needed <= there ? null : OnAll(request, wide, needed, there, used.Count);
    }

    private static Impossibility InOneRun(PartOnBoards part, Length needed, Length there)
    {
        var (need, has) = Say.Apart(part.Request, needed, there);
        return new(
            ImpossibilityKind.EndToEnd,
            [part.Part.Letter],
            $"{Copies(part)} cannot lie side by side. One after another they need {need} of clear board; {part.LongestWords(there, has)}."
        )
        {
            Needed = needed,
            There = there,
        };
    }

    private static Impossibility InSeveral(PartOnBoards part, int room) =>
        new(
            ImpossibilityKind.EndToEnd,
            [part.Part.Letter],
            $"{Copies(part)} cannot lie side by side. One after another, the clear runs have room for {room} of them."
        );

    private static Impossibility OnAll(
        PlanningRequest request,
        PartOnBoards[] wide,
        Length needed,
        Length there,
        int boards
    )
    {
        var (need, has) = Say.Apart(request, needed, there);
        var where = boards == 1 ? "the board has" : "the boards together have";
        return new(
            ImpossibilityKind.EndToEnd,
            [.. wide.Select(p => p.Part.Letter)],
            $"No two blanks of {Say.List([.. wide.Select(p => p.Part.Letter)])} can lie side by side. One after another they need {need} with the kerfs between them; between the end trims {where} {has}."
        )
        {
            Needed = needed,
            There = there,
        };
    }

    private static string Copies(PartOnBoards part) =>
        Say.Capital(Say.Copies(part.Part.Letter, part.Part.Quantity));

    private static Length Sum(IEnumerable<Length> lengths) =>
        Length.FromTicks(lengths.Sum(l => l.Ticks));
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>Names what a cut leaves, in words: "A1", "a strip for A1 and B1", "the rest of the board", "waste".</summary>
internal sealed class SideNames(Board board, CourseRules rules, IReadOnlyList<LaidBlank> blanks)
{
    private const int MostNamed = 4;

    /// <summary>What this piece is called after a cut of this kind.</summary>
    public string Of(BoardRect side, CutKind kind)
    {
        var inside = blanks.Where(b => side.Contains(b.Rect)).ToList();
        if (inside.Count == 0)
            return Leftover(side);
        if (inside is [var only] && IsSawnOut(side, only.Rect))
            return only.Key.ToString();
        if (kind is CutKind.Rip)
            return $"a strip for {List(inside)}";
        return IsRestOfBoard(side) && inside.Count > 1
            ? "the rest of the board"
            : $"a length for {List(inside)}";
    }

    /// <summary>The blanks in a piece as a list: "A1, A2 and B1"; counted when there are many.</summary>
    public static string List(IReadOnlyList<LaidBlank> inside)
    {
        if (inside.Count > MostNamed)
            return $"{inside.Count} blanks";
        var names = inside.Select(b => b.Key.ToString()).ToList();
        return names.Count == 1
            ? names[0]
            : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
    }

    private string Leftover(BoardRect side)
    {
        var from = Length.Max(side.From, board.TrimStart);
        var to = Length.Min(side.To, board.Length - board.TrimEnd);
        var isWorthKeeping =
            to - from >= rules.ShortestOffcut
            && side.Across >= rules.NarrowestOffcut
            && !board.Defects.Any(d => d.Reach is DefectReach.Through && d.Place.Overlaps(side));
        return isWorthKeeping
            ? $"an offcut {LengthWriter.WriteWithUnit(side.Along, rules.Precision)} long"
            : "waste";
    }

    private bool IsRestOfBoard(BoardRect side) =>
        side.To == board.Length && side.Across == board.SmallestWidth;

    private bool IsSawnOut(BoardRect side, BoardRect blank) =>
        IsSliver(blank.From - side.From, rules.CrosscutKerf)
        && IsSliver(side.To - blank.To, rules.CrosscutKerf)
        && IsSliver(blank.Near - side.Near, rules.RipKerf)
        && IsSliver(side.Far - blank.Far, rules.RipKerf);

    private static bool IsSliver(Length over, Length kerf) => over == Length.Zero || over < kerf;
}

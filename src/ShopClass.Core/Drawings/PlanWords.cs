using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>A marked-out board in words.</summary>
internal static class PlanWords
{
    /// <summary>The board, every blank, leftover and tape position, each as a sentence on a line of its own.</summary>
    public static string Of(PlanOnBoard plan)
    {
        List<string> lines = [BoardWords.Of(plan.Board, plan.Precision)];
        lines.AddRange(
            plan.Blanks.Select(b =>
                $"Blank {b.Blank.Key}, {plan.SizeOf(b.Rect)} {Unit(plan)}, {Place(b.Rect, plan.Precision)}."
            )
        );
        lines.AddRange(
            plan.Leftovers.Where(p => p.Fate is PieceFate.Offcut).Select(p => Leftover("Offcut", p))
        );
        lines.AddRange(
            plan.Leftovers.Where(p => p.Fate is PieceFate.Waste).Select(p => Leftover("Waste", p))
        );
        if (plan.Spare is { } spare)
            lines.Add(
                $"Room for a spare {spare.Letter}, {plan.SizeOf(spare.Place)} {Unit(plan)}, {Place(spare.Place, plan.Precision)}."
            );
        lines.AddRange(
            plan.TapeMarks()
                .Select(m =>
                    $"Mark {LengthWriter.WriteWithUnit(m.At, plan.Precision)} from the start: {m.Meaning}."
                )
        );
        return string.Join('\n', lines);

        string Leftover(string what, Piece piece) =>
            $"{what}, {plan.SizeOf(piece.Rect)} {Unit(plan)}, {Place(piece.Rect, plan.Precision)}.";
    }

    /// <summary>Where a rectangle lies on its board.</summary>
    public static string Place(BoardRect rect, Precision precision)
    {
        string At(Length length) => LengthWriter.Write(length, precision);
        var unit = precision.Unit() is UnitSystem.Inch ? "in" : "mm";
        return $"from {At(rect.From)} to {At(rect.To)} {unit} along the board and "
            + $"{At(rect.Near)} to {At(rect.Far)} {unit} from its near edge";
    }

    private static string Unit(PlanOnBoard plan) =>
        plan.Precision.Unit() is UnitSystem.Inch ? "in" : "mm";
}

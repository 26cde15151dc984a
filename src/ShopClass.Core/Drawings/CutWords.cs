using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>Cuts and pieces in words.</summary>
internal static class CutWords
{
    /// <summary>A cut and the pieces before it, each as a sentence on a line of its own.</summary>
    public static string Before(PlanOnBoard plan, Cut cut, IReadOnlyList<Piece> pieces) =>
        string.Join(
            '\n',
            Pieces(plan, pieces)
                .Prepend(
                    $"Cut {cut.Number}: {Kind(cut.Kind)}, {Position(cut, plan.Precision)}. It leaves {cut.Leaves}."
                )
        );

    /// <summary>Each piece as a sentence.</summary>
    public static IEnumerable<string> Pieces(PlanOnBoard plan, IReadOnlyList<Piece> pieces)
    {
        var unit = plan.Precision.Unit() is UnitSystem.Inch ? "in" : "mm";
        return pieces.Select(p =>
            $"{plan.Board.Name}, {Fate(p)}: {plan.SizeOf(p.Rect)} {unit}, {PlanWords.Place(p.Rect, plan.Precision)}."
        );
    }

    /// <summary>What a cut does.</summary>
    public static string Kind(CutKind kind) =>
        kind switch
        {
            CutKind.EndTrim => "end trim",
            CutKind.Crosscut => "crosscut",
            CutKind.Rip => "rip",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of cut."),
        };

    /// <summary>Where its line is.</summary>
    public static string Position(Cut cut, Precision precision) =>
        LengthWriter.WriteWithUnit(cut.Position, precision)
        + (cut.Kind is CutKind.Rip ? " from the near edge" : " from the start");

    private static string Fate(Piece piece) =>
        piece.Fate switch
        {
            PieceFate.Stock => "still to be cut",
            PieceFate.Blank => $"blank {piece.Blank}",
            PieceFate.Offcut => "offcut",
            _ => "waste",
        };
}

using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Orders;

/// <summary>Why somebody goes without a part, in a sentence.</summary>
public static class GoingWithout
{
    /// <summary>The reasons for the parts that are missing, each said once.</summary>
    public static string Why(ClassOrder order, IReadOnlyList<BlankKey> missing) =>
        string.Join(
            " ",
            order
                .Request.Project.Parts.Where(p => missing.Any(m => m.Part == p.Letter))
                .Select(p => Reason(order, p))
                .Distinct()
        );

    // A finished size is the least a board must have: what is too small for it is too small in any case.
    private static string Reason(ClassOrder order, Part part)
    {
        var boards = Boards(order);
        var precision = order.Ask.Rules.Precision;
        string TooSmall(string be, Length need, string most, Length has) =>
            $"{part.Letter} is {LengthWriter.WriteWithUnit(need, precision)} {be}, and the {most} board there is measures {LengthWriter.WriteWithUnit(has, precision)}.";
        if (boards.Count == 0)
            return "No seller on these lists and no rack has a board of this wood.";
        var (thick, wide, along) = (
            part.Finished.Thickness,
            part.Finished.Width,
            part.Finished.Length
        );
        if (boards.Max(b => b.Thickness) is var thickest && thickest < thick)
            return TooSmall("thick", thick, "thickest", thickest);
        var isFixed = part.Grain is GrainDirection.AlongLength;
        if (isFixed && boards.Max(b => b.Length) is var longest && longest < along)
            return TooSmall("long", along, "longest", longest);
        if (
            isFixed
            && !part.GlueUpAllowed
            && boards.Max(b => b.Width) is var widest
            && widest < wide
        )
            return TooSmall("wide", wide, "widest", widest);
        if (boards.Any(b => b.Count is null))
            return $"No board on these lists or the rack yields {part.Letter}: look at its thickness, and at what sawing and planing take off.";
        return $"{OrderWords.Say(boards.Sum(b => b.Count ?? 0), "board")} on these lists and the rack: not enough for everybody.";
    }

    private static List<(Length Thickness, Length Width, Length Length, int? Count)> Boards(
        ClassOrder order
    ) =>
        [
            .. order
                .Request.Stock.Where(s => s.Available is not 0)
                .Select(s => (s.Thickness, s.Width, s.Length, s.Available)),
            .. order.Request.Rack.Select(r =>
                (r.Board.Thickness, r.Board.SmallestWidth, r.Board.Length, (int?)1)
            ),
        ];
}

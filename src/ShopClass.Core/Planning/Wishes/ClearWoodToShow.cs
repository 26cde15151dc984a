using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Show faces get the clearest wood.</summary>
internal static class ClearWoodToShow
{
    /// <summary>Round a bad place the grain is not straight; nearer than 1 in counts as beside it: our proposal.</summary>
    public static Length Beside { get; } = Length.FromInches(1);

    /// <summary>Pieces with a show face that lie beside a bad place, those that cover one counted twice.</summary>
    public static long FallsShortBy(LaidOut laid)
    {
        var poor = 0L;
        foreach (var board in laid.Boards.Where(b => b.Board.Defects.Count > 0))
        {
            foreach (var lying in board.Blanks)
            {
                if (laid.PartOf(lying.Blank).ShowFace)
                    poor += Poorness(board.Board, lying.Rect);
            }
        }

        return poor;
    }

    public static WishMet? Met(LaidOut laid)
    {
        if (laid.Boards.All(b => b.Board.Defects.Count == 0))
            return null;
        var showing = laid
            .Boards.SelectMany(b => b.Blanks.Select(l => (b.Board, Lying: l)))
            .Where(x => laid.PartOf(x.Lying.Blank).ShowFace)
            .ToLookup(x => Poorness(x.Board, x.Lying.Rect) == 0, x => x.Lying.Blank.Key);
        if (!showing[true].Any() && !showing[false].Any())
            return null;
        return showing[false].Any()
            ? new(
                WishKind.ClearWoodToShow,
                false,
                $"{LaidOut.List(showing[false])} will show and {(showing[false].Count() == 1 ? "lies" : "lie")} beside or over a bad place: choose the better face."
            )
            : new(
                WishKind.ClearWoodToShow,
                true,
                $"{LaidOut.List(showing[true])} will show and {(showing[true].Count() == 1 ? "comes" : "come")} from wood at least {laid.Say(Beside)} away from every bad place."
            );
    }

    private static int Poorness(Board board, BoardRect rect)
    {
        var round = new BoardRect(
            rect.From - Beside,
            rect.To + Beside,
            rect.Near - Beside,
            rect.Far + Beside
        );
        var worst = 0;
        foreach (var defect in board.Defects)
        {
            if (defect.Place.Overlaps(rect))
                return 2;
            if (defect.Place.Overlaps(round))
                worst = 1;
        }

        return worst;
    }
}

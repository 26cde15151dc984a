namespace ShopClass.Core.Planning.Reasons;

/// <summary>Says why each blank of a plan lies where it lies, from facts anyone can check on the plan.</summary>
public static class BlankReasons
{
    private static readonly Func<BlankInPlace, BlankReason?>[] OfBoard =
    [
        BoardReasons.OnlyBoard,
        BoardReasons.NothingLeftElsewhere,
    ];

    private static readonly Func<BlankInPlace, BlankReason?>[] OfPlace =
    [
        ClearWoodReasons.HiddenFace,
        ClearWoodReasons.OnlyClearRun,
        NeighbourReasons.GlueMate,
        NeighbourReasons.OneCrosscut,
        NeighbourReasons.GangMarked,
        NeighbourReasons.OneLine,
        NeighbourReasons.WithinLength,
        NeighbourReasons.RoomBeside,
        NeighbourReasons.OneRip,
        ClearWoodReasons.PastABadPlace,
        WidthReasons.WholeWidth,
        EndReasons.OffcutInOnePiece,
        EndReasons.FirstOnTheBoard,
        EndReasons.NextInTurn,
    ];

    private static readonly Func<BlankInPlace, BlankReason?>[] OfSize =
    [
        WidthReasons.SurplusWidth,
        WidthReasons.SurplusLength,
    ];

    /// <summary>
    /// Reasons for every placed blank, by name: one for its place, before it one for its board where there are several,
    /// after it what surplus it keeps.
    /// </summary>
    public static IReadOnlyList<BlankReason> Of(CheckedPlan made) =>
        [
            .. BlankInPlace
                .AllOf(made)
                .SelectMany(blank =>
                    new[] { First(OfBoard, blank), First(OfPlace, blank) }.Concat(
                        OfSize.Select(reason => reason(blank))
                    )
                )
                .OfType<BlankReason>(),
        ];

    private static BlankReason? First(
        Func<BlankInPlace, BlankReason?>[] reasons,
        BlankInPlace blank
    ) => reasons.Select(reason => reason(blank)).FirstOrDefault(found => found is not null);
}

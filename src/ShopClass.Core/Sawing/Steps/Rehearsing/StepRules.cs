namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>Everything that must hold of the steps, one function each; its name is the rule. All are common practice.</summary>
internal static class StepRules
{
    public static IReadOnlyList<Func<StepRun, IEnumerable<Finding>>> All { get; } =
    [
        OrderRules.StepsMustBeNumberedInOrderAndNamedOnce,
        OrderRules.StepsMustComeAfterThoseTheyWaitFor,
        OrderRules.WorkOnAPieceMustWaitForTheWorkBefore,
        SawingRules.PiecesMustBeThereWhenTheyAreWorked,
        SawingRules.EveryCutOfThePlanMustBeMadeOnce,
        SawingRules.AreasMustBalanceToTheTick,
        SawingRules.HeldPiecesMustBeLongEnoughForTheirSupport,
        SawingRules.WasteMustFallOnTheSideOfTheSawingHand,
        ReferenceRules.ReferencesMustBeMarkedOnTrueWood,
        ReferenceRules.KnifeAndGaugeLinesMustHaveAReference,
        ReferenceRules.LengthsMustBeMeasuredFromASquaredEnd,
        ReferenceRules.GaugesMustBeSetOnceAndBeforeTheyAreUsed,
        SizeRules.StepsMustLeaveWhatTheySay,
        SizeRules.NoPieceMayGrow,
        SizeRules.NoPieceMayGoBelowItsFinishedSize,
        SizeRules.PartsMustEndAtTheirFinishedSize,
        SizeRules.NoPartMayKeepTheHollowOfItsBoard,
        OpenRules.OpenDimensionsMustNotBeCutEarly,
        OpenRules.OpenDimensionsMustWaitForTheirEvent,
        OpenRules.OpenDimensionsMustCloseInTheirOrder,
        JointRules.EveryJointMustBeCut,
        JointRules.JointsMustBeCutInPiecesAtSize,
        JointRules.JointsMustLeaveWood,
        AcrossRules.JointsMustLieOnTheirPieces,
        AcrossRules.PlacesAcrossMustBeGaugedFromTheReferenceEdge,
        AcrossRules.WhatEntersAStoppedDadoMustLoseItsCorner,
        JointRules.EverythingMustFitBeforeItIsPutTogether,
        JointRules.FinishMustComeLast,
        JointRules.WhatIsNotTaughtMustComePrepared,
    ];
}

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>A rule: looks at a whole replay and answers with what it finds wrong, or worth knowing.</summary>
internal delegate IEnumerable<Finding> Rule(Replay replay);

/// <summary>Every rule of the rehearsal; a rule's name is its sentence.</summary>
internal static class RehearsalRules
{
    /// <summary>All rules, musts before notes.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        CutRules.BoardsMustBeAtHandAndLaidOutOnce,
        CutRules.CutsMustBeNumberedInOrder,
        CutRules.CutsMustBeMadeInAPieceThatIsThere,
        CutRules.CutsMustRunEdgeToEdge,
        CutRules.CutsMustBeMadeWithASawForThem,
        KerfRules.KerfsMustBeAsWideAsTheSaw,
        KerfRules.KerfsMustSpareTheBlanks,
        KerfRules.CutsMustBeSawnToALineOfThePlan,
        CutRules.SawnLengthsMustBeTrue,
        CutRules.PiecesMustBeBrokenDownInThreeStages,
        CutRules.PiecesMustBeLongEnoughForTheirSupport,
        BlankRules.BlanksMustBelongToTheProject,
        BlankRules.EveryBlankMustBeThereOnce,
        BlankRules.BlanksMustBeSawnOut,
        SizeRules.BlanksMustBeLongEnough,
        SizeRules.BlanksMustBeWideEnough,
        SizeRules.NeededSizesMustNotBeUnderstated,
        BlankRules.GrainMustRunAlongTheBlanks,
        WoodRules.BlanksMustClearTheEndTrim,
        WoodRules.BlanksMustLieWithinTheSmallestWidth,
        WoodRules.BlanksMustBeClearOfDefects,
        SizeRules.BoardsMustBeThickEnough,
        SizeRules.BoardsMustNotBeThickerThanIsPlanedAway,
        WoodRules.RoughBoardsNeedPlaningTaught,
        BlankRules.GlueUpsMustBeAllowed,
        BlankRules.GlueUpsMustBeTaught,
        BlankRules.GlueUpsMustHaveNoMoreStripsThanAllowed,
        CutRules.AreasMustBalance,
        Notes.MissingBlanksAreNamedByThePlan,
        Notes.HiddenDefectsGoToTheHiddenFace,
    ];
}

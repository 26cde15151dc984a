using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Data.Plans;

namespace ShopClass.Web.Tests.Plans;

/// <summary>Plans put together by hand, for what a page says about them.</summary>
internal static class HandMade
{
    public static Finding Broken { get; } =
        new(
            FindingKind.Must,
            "PartsMustLeaveAKerfBetweenThem",
            "b",
            "A2",
            null,
            "A1 and A2 touch."
        );

    public static Finding Noted { get; } =
        new(
            FindingKind.Note,
            "ShortPiecesAreHardToHold",
            "b",
            "cut 1",
            null,
            "A1 is short to hold."
        );

    public static PlanningRequest Request { get; } =
        new()
        {
            Project = new()
            {
                Name = "Small shelf",
                Parts =
                [
                    new()
                    {
                        Letter = "A",
                        Name = "side",
                        Quantity = 1,
                        Finished = new(
                            Length.FromInches(0, 3, 4),
                            Length.FromInches(6),
                            Length.FromInches(14)
                        ),
                    },
                ],
            },
            Boards = [Classroom.Pine],
            Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
        };

    public static CheckedPlan Made(
        IReadOnlyList<Finding>? findings = null,
        IReadOnlyList<GoalResult>? goals = null,
        IReadOnlyList<BlankKey>? missing = null
    ) =>
        new(
            Request,
            new()
            {
                Boards = [new(Classroom.Pine.Id, [])],
                Missing = missing ?? [],
                Goals = goals ?? [],
                StepsTaken = 0,
            },
            new([]),
            new([], findings ?? [], []),
            new(VerdictKind.Fits, "Everything fits.", [], [], [])
        );

    public static StoredPlan Stored(CheckedPlan plan) =>
        new(
            Guid.NewGuid(),
            Guid.NewGuid(),
            Guid.NewGuid(),
            1,
            DateTime.UnixEpoch,
            plan,
            new([]),
            IsOutOfDate: false
        );
}

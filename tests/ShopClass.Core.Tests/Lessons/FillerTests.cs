using ShopClass.Core.Lessons;
using ShopClass.Core.Measure;
using ShopClass.Core.Paces;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

public class FillerTests
{
    private static readonly CheckedPlan Plan = CheckedPlan.Make(
        DemoProjects.Find("wall shelf", UnitSystem.Inch)
    );

    [Fact]
    public void The_offcuts_are_the_pieces_the_rehearsal_leaves_without_the_spare_s()
    {
        var left = Plan.Rehearsal.Steps[^1].Pieces.Where(p => p.Fate is PieceFate.Offcut).ToList();
        var spare = Spares.Of(Plan);
        var free = left.Where(p =>
            spare is null || p.BoardId != spare.BoardId || !p.Rect.Contains(spare.Place)
        );

        var offcuts = LeftBoards.OffcutsOf(Plan);

        Assert.NotEmpty(left);
        Assert.Equal(
            free.Select(p => (p.Rect.Along, p.Rect.Across)),
            offcuts.Select(o => (o.Length, o.WidthAtMiddle))
        );
    }

    [Fact]
    public void What_fits_is_offered_with_a_rehearsed_plan_and_what_is_too_long_is_not()
    {
        var offcuts = LeftBoards.OffcutsOf(PlanWithOffcut);
        Assert.NotEmpty(offcuts);
        var longest = offcuts.Max(o => o.Length);
        var small = Peg("peg", Length.FromInches(4));
        var tooLong = Peg("pole", longest + Length.FromInches(1));

        var found = Fillers.Of(
            PlanWithOffcut,
            [tooLong, small],
            PlanWithOffcut.Request.Rules,
            TestContext.Current.CancellationToken
        );

        var filler = Assert.Single(found);
        Assert.Equal("peg", filler.Project.Name);
        Assert.True(filler.Plan.Rehearsal.Passed && filler.Plan.Plan.IsComplete);
        // Its minutes are its steps', by the student's pace.
        var usual = filler.Minutes(StepPace.Usual, Hand.Right);
        var steps = WorkWriter.Write(filler.Plan, Hand.Right).Steps;
        Assert.Equal((steps.Sum(s => s.Time.Busy) + 59) / 60, usual);
        var twice = new StepPace(
            new([.. Enum.GetValues<StepKind>().Select(k => new KindPace(k, new(200, 9)))], []),
            PaceFactor.Usual
        );
        Assert.InRange(filler.Minutes(twice, Hand.Right), 2 * usual - 1, 2 * usual + steps.Count);
        Assert.All(filler.Plan.Plan.Boards, b => Assert.Contains(offcuts, o => o.Id == b.BoardId));
    }

    /// <summary>One small part from the shelf's long board: most of it is left.</summary>
    private static readonly CheckedPlan PlanWithOffcut = CheckedPlan.Make(
        Plan.Request with
        {
            Project = Peg("first", Length.FromInches(10)),
        }
    );

    private static Project Peg(string name, Length length) =>
        new()
        {
            Name = name,
            Parts =
            [
                new()
                {
                    Letter = "A",
                    Name = "peg",
                    Quantity = 1,
                    Finished = new(Length.FromInches(0, 3, 4), Length.FromInches(2), length),
                },
            ],
        };
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>
/// Cupped and twisted boards (common practice): sawn out first, each piece flattened by itself, hollow side down on the saw
/// bench. Geometry as in WarpTests.
/// </summary>
public class CuppedBoardTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static readonly Board Wide = new()
    {
        Id = "board",
        Name = "Wide pine",
        SpeciesId = "eastern-white-pine",
        Surfacing = Surfacing.S4S,
        Thickness = WorkCases.In(1),
        WidthAtStart = WorkCases.In(9.25),
        WidthAtMiddle = WorkCases.In(9.25),
        WidthAtEnd = WorkCases.In(9.25),
        Length = WorkCases.In(96),
        TrimStart = WorkCases.In(1),
        TrimEnd = WorkCases.In(1),
    };

    [Fact]
    public void A_flat_board_is_not_flattened_and_a_cupped_one_is_piece_by_piece_after_it_is_sawn()
    {
        Assert.DoesNotContain(Work(Wide).Steps, s => s.Kind is StepKind.FlattenFace);
        var steps = Work(Wide with { Cup = WorkCases.In(.125) }).Steps;
        var flattened = steps.Where(s => s.Kind is StepKind.FlattenFace).ToList();
        Assert.Equal(["A1", "A2", "B1", "B2"], flattened.SelectMany(s => s.Pieces));
        Assert.All(
            flattened,
            s => Assert.True(s.Number > steps.Last(c => c.Cut is not null).Number)
        );
        // The second face is planed too: every flattened piece is gauged from its true face.
        Assert.All(
            flattened,
            f =>
                Assert.Contains(
                    steps,
                    s => s.Kind is StepKind.PlaneToThickness && s.Pieces[0] == f.Pieces[0]
                )
        );
    }

    [Fact]
    public void A_narrow_part_of_a_cupped_board_is_used_as_it_comes() =>
        // The rail's blank, 2 3/4 in, keeps (2.75/9.25)² of an eighth: less than 1/64 in.
        Assert.DoesNotContain(
            Work(Wide with { Cup = WorkCases.In(.125) }).Steps,
            s => s.Kind is StepKind.FlattenFace && s.Pieces.Contains("C1")
        );

    [Fact]
    public void A_cupped_board_lies_hollow_side_down_and_a_twisted_one_on_a_wedge()
    {
        var cupped = Work(Wide with { Cup = WorkCases.In(.125) }).Steps;
        var twisted = Work(Wide with { Twist = WorkCases.In(.25) }).Steps;
        Assert.Contains("hollow side down", First(cupped), StringComparison.Ordinal);
        Assert.Contains("wedge under the corner", First(twisted), StringComparison.Ordinal);
        Assert.DoesNotContain("rock", First(Work(Wide).Steps), StringComparison.Ordinal);

        static string First(IReadOnlyList<Step> steps) =>
            steps.First(s => s.Support is Support.SawBench).Hold;
    }

    // A side's blank is 6 1/4 in wide, its arc (6.25/9.25)² of a quarter: 0.1141 in, so 0.8641 in of board are needed.
    [Theory]
    [InlineData(55, 64, false)]
    [InlineData(56, 64, true)]
    public void A_board_must_be_thick_enough_to_be_planed_flat(int over, int under, bool isEnough)
    {
        var board = Wide with
        {
            Cup = WorkCases.In(.25),
            Thickness = Length.FromInches(0, over, under),
        };
        var plan = CheckedPlan.Make(WorkCases.Request(board), cancel: Cancel);
        Assert.Equal(isEnough, plan.Plan.IsComplete);
        if (isEnough)
            Assert.Equal(
                [],
                StepRehearsal.Replay(plan, WorkWriter.Write(plan, Hand.Right)).Findings
            );
        else
        {
            Assert.StartsWith(
                "Too thin by 1/16 in",
                plan.Verdict.Sentence,
                StringComparison.Ordinal
            );
            Assert.Contains(
                plan.Verdict.Cautions,
                c => c.Contains("cupped by 1/4 in", StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void A_board_that_is_not_flat_needs_planing_taught(bool isTaught, bool isComplete)
    {
        var request = WorkCases.Request(
            Wide with
            {
                Cup = WorkCases.In(.125),
                Thickness = WorkCases.In(.75),
            }
        );
        // Three quarters all through leave nothing to plane; where planing is taught the board must be thicker.
        var plan = CheckedPlan.Make(
            request with
            {
                Boards = [request.Boards[0] with { Thickness = WorkCases.In(isTaught ? 1 : .75) }],
                Rules = request.Rules with { PlaningTaught = isTaught },
            },
            cancel: Cancel
        );
        Assert.Equal(isComplete, plan.Plan.IsComplete);
        if (!isTaught)
            Assert.Contains("teaches no planing", plan.Verdict.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rehearsal_finds_work_that_leaves_a_cupped_board_hollow()
    {
        var flat = CheckedPlan.Make(WorkCases.Request(Wide), cancel: Cancel);
        var work = WorkWriter.Write(flat, Hand.Right);
        Assert.Equal([], StepRehearsal.Replay(flat, work).Findings);
        // The same work on the same board, which is cupped after all.
        var cupped = flat with
        {
            Request = flat.Request with { Boards = [Wide with { Cup = WorkCases.In(.125) }] },
        };
        var rules = StepRehearsal.Replay(cupped, work).Findings.Select(f => f.Rule).ToHashSet();
        Assert.Contains("ReferencesMustBeMarkedOnTrueWood", rules);
        // A board too thin for its hollow: parts that come out at full thickness keep it on one face.
        var deep = cupped with
        {
            Request = cupped.Request with { Boards = [Wide with { Cup = WorkCases.In(.75) }] },
        };
        Assert.Contains(
            "NoPartMayKeepTheHollowOfItsBoard",
            StepRehearsal.Replay(deep, work).Findings.Select(f => f.Rule)
        );
        Assert.Contains(
            "BoardsMustBeThickEnough",
            Rehearsal.Replay(deep.Request, deep.Plan, deep.Sequence).Findings.Select(f => f.Rule)
        );
    }

    private static WorkSequence Work(Board board)
    {
        var plan = CheckedPlan.Make(WorkCases.Request(board), cancel: Cancel);
        var work = WorkWriter.Write(plan, Hand.Right);
        Assert.Equal([], StepRehearsal.Replay(plan, work).Findings);
        return work;
    }
}

using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>
/// Every rule of the rehearsal with work that breaks it. The same work unspoilt is the other half of each pair: it passes.
/// The rules are common practice, in the words of their names.
/// </summary>
public class SpoiledWorkTests
{
    [Fact]
    public void Unspoilt_work_passes_on_every_board()
    {
        foreach (
            var plan in new[]
            {
                WorkCases.OnSurfacedPine,
                WorkCases.OnRoughBirch,
                WorkCases.OnNarrowPine,
                WorkCases.OnStoppedDados,
            }
        )
            Assert.Equal([], StepRehearsal.Replay(plan, Write(plan)).Findings);
    }

    [Fact]
    public void Steps_must_be_numbered_in_order_and_named_once()
    {
        Breaks(
            "StepsMustBeNumberedInOrderAndNamedOnce",
            s => s.Number == 3,
            s => s with { Number = 4 }
        );
        Breaks(
            "StepsMustBeNumberedInOrderAndNamedOnce",
            s => s.Number == 3,
            s => s with { Id = "finish" }
        );
    }

    [Fact]
    public void Steps_must_come_after_those_they_wait_for() =>
        Breaks(
            "StepsMustComeAfterThoseTheyWaitFor",
            s => s.Number == 3,
            s => s with { After = [3] }
        );

    [Fact]
    public void Work_on_a_piece_must_wait_for_the_work_before() =>
        Breaks(
            "WorkOnAPieceMustWaitForTheWorkBefore",
            s => s.Id == "length:C1",
            s => s with { After = [1] }
        );

    [Fact]
    public void Pieces_must_be_there_when_they_are_worked() =>
        Breaks(
            "PiecesMustBeThereWhenTheyAreWorked",
            s => s.Id == "length:C1",
            s => s with { Pieces = ["C2"] }
        );

    [Fact]
    public void Every_cut_of_the_plan_must_be_made_once() =>
        Breaks(
            "EveryCutOfThePlanMustBeMadeOnce",
            s => s.Kind is StepKind.Rip,
            s => s with { Cut = null }
        );

    [Fact]
    public void Areas_must_balance_to_the_tick() =>
        Breaks("AreasMustBalanceToTheTick", s => s.Kind is StepKind.Rip, Shrunk);

    [Fact]
    public void Knee_held_stock_must_be_as_long_as_the_saw_bench_limit() =>
        Breaks(
            "HeldPiecesMustBeLongEnoughForTheirSupport",
            s => s.Id == "length:A1",
            s => s with { Support = Support.SawBench }
        );

    [Theory]
    [InlineData(20, false)]
    [InlineData(21, true)]
    public void The_kept_side_at_a_bench_hook_must_reach_the_limit(int inches, bool breaks)
    {
        var plan = WithRules(WorkCases.OnSurfacedPine, Length.FromInches(inches));
        var work = Write(WorkCases.OnSurfacedPine);
        var found = StepRehearsal
            .Replay(plan, work)
            .Findings.Where(f =>
                f.Rule == "HeldPiecesMustBeLongEnoughForTheirSupport"
                && f.Subject == Subject(work, "length:B1")
            );
        // B1 is kept at 20 1/2 in.
        Assert.Equal(breaks, found.Any());
        if (breaks)
            Assert.Equal(Length.FromInches(0, 1, 2), found.First().Amount);
    }

    [Fact]
    public void A_bench_hook_cannot_hold_a_rip() =>
        Breaks(
            "HeldPiecesMustBeLongEnoughForTheirSupport",
            s => s.Id == "width:B1",
            s => s with { Support = Support.BenchHook }
        );

    [Fact]
    public void Waste_must_fall_on_the_side_of_the_sawing_hand() =>
        Breaks(
            "WasteMustFallOnTheSideOfTheSawingHand",
            s => s.Id == "length:B1",
            s => s with { WasteSide = Side.Left }
        );

    [Fact]
    public void No_reference_mark_before_the_surface_is_true() =>
        Breaks(
            "ReferencesMustBeMarkedOnTrueWood",
            s => s.Id is "flatten:A1",
            s => s with { Kind = StepKind.CheckBoard },
            WorkCases.OnRoughBirch
        );

    [Fact]
    public void No_knife_line_without_a_reference_edge_and_face() =>
        Breaks(
            "KnifeAndGaugeLinesMustHaveAReference",
            s => s.Id == "reference:B",
            s => s with { Kind = StepKind.MarkOut }
        );

    [Fact]
    public void Lengths_must_be_measured_from_a_squared_end() =>
        Breaks(
            "LengthsMustBeMeasuredFromASquaredEnd",
            s => s.Id == "square:A2",
            s => s with { Kind = StepKind.CutToLength }
        );

    [Fact]
    public void Gauges_must_be_set_before_they_are_used() =>
        Breaks(
            "GaugesMustBeSetOnceAndBeforeTheyAreUsed",
            s => s.Kind is StepKind.SetGauge,
            s => s with { Gauge = Length.FromInches(5) }
        );

    [Fact]
    public void Gauges_must_be_set_once() =>
        Breaks(
            "GaugesMustBeSetOnceAndBeforeTheyAreUsed",
            s => s.Kind is StepKind.SetGauge,
            s => s with { Title = "Set a gauge" }
        );

    [Fact]
    public void Steps_must_leave_what_they_say()
    {
        Breaks("StepsMustLeaveWhatTheySay", s => s.Kind is StepKind.Rip, Shrunk);
        Breaks(
            "StepsMustLeaveWhatTheySay",
            s => s.Kind is StepKind.JointEdges,
            Shrunk,
            WorkCases.OnNarrowPine
        );
        Breaks(
            "StepsMustLeaveWhatTheySay",
            s => s.Kind is StepKind.GlueUp,
            Shrunk,
            WorkCases.OnNarrowPine
        );
        Breaks("StepsMustLeaveWhatTheySay", s => s.Id == "reference:C", Shrunk);
        Breaks(
            "StepsMustLeaveWhatTheySay",
            s => s.Id == "square:C1",
            s => s with { Leaves = [.. s.Leaves.Take(1)] }
        );
    }

    [Fact]
    public void No_piece_may_grow() =>
        Breaks("NoPieceMayGrow", s => s.Id == "reference:C", s => Resized(s, Length.FromInches(1)));

    [Fact]
    public void No_piece_may_go_below_its_finished_size() =>
        Breaks("NoPieceMayGoBelowItsFinishedSize", s => s.Id == "length:A1", Shrunk);

    [Fact]
    public void Parts_must_end_at_their_finished_size() =>
        Breaks("PartsMustEndAtTheirFinishedSize", s => s.Kind is StepKind.Finish, Shrunk);

    [Fact]
    public void A_dimension_that_is_open_must_not_be_cut_early() =>
        Breaks(
            "OpenDimensionsMustNotBeCutEarly",
            s => s.Id == "length:C1",
            s => Resized(s, -Length.FromTicks(1))
        );

    [Fact]
    public void An_open_dimension_must_wait_for_its_event() =>
        Breaks(
            "OpenDimensionsMustWaitForTheirEvent",
            s => s.Id is "close:length:C1" or "take:length:C",
            s => s with { After = [1] }
        );

    [Fact]
    public void Open_dimensions_must_close_in_their_order()
    {
        Breaks(
            "OpenDimensionsMustCloseInTheirOrder",
            s => s.Id == "fit:length:C",
            s => s with { Open = [] }
        );
        Breaks(
            "OpenDimensionsMustCloseInTheirOrder",
            s => s.Id == "take:length:C",
            s => s with { Open = [s.Open[0] with { State = OpenState.Fitted }] }
        );
    }

    [Fact]
    public void Every_joint_must_be_cut() =>
        Breaks(
            "EveryJointMustBeCut",
            s => s.Id.StartsWith("dado:A2", StringComparison.Ordinal),
            s => s with { Kind = StepKind.Fit }
        );

    [Fact]
    public void Joints_must_be_cut_in_pieces_at_size() =>
        Breaks(
            "JointsMustBeCutInPiecesAtSize",
            s => s.Id == "length:A1",
            s => Resized(s, Length.FromTicks(1))
        );

    [Theory]
    [InlineData(23, false)]
    [InlineData(24, true)]
    public void Joints_must_leave_wood(int thirtySeconds, bool breaks)
    {
        var plan = WorkCases.OnSurfacedPine;
        var deep = plan with
        {
            Request = plan.Request with
            {
                Project = WorkCases.Shelf with
                {
                    Joints =
                    [
                        WorkCases.Shelf.Joints[0] with
                        {
                            Depth = Length.FromInches(0, thirtySeconds, 32),
                        },
                    ],
                },
            },
        };
        Assert.Equal(breaks, Rules(deep, Write(deep)).Contains("JointsMustLeaveWood"));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Joints_must_lie_on_their_pieces(int ticks, bool breaks)
    {
        var plan = WorkCases.OnStoppedDados;
        var joint = WorkCases.StoppedShelf.Joints[0];
        var moved = plan with
        {
            Request = plan.Request with
            {
                Project = WorkCases.StoppedShelf with
                {
                    Joints = [joint with { FromEdge = WorkCases.In(1) + Length.FromTicks(ticks) }],
                },
            },
        };
        Assert.Equal(breaks, Rules(moved, Write(moved)).Contains("JointsMustLieOnTheirPieces"));
    }

    [Fact]
    public void Places_across_must_be_gauged_from_the_reference_edge() =>
        Breaks(
            "PlacesAcrossMustBeGaugedFromTheReferenceEdge",
            s => s.Kind is StepKind.MarkJoint && s.Pieces.Contains("A1"),
            s => s with { GaugesAcross = [Length.FromInches(4)] },
            WorkCases.OnStoppedDados
        );

    [Fact]
    public void A_gauge_for_a_place_across_must_be_set_before_it_is_used() =>
        Breaks(
            "GaugesMustBeSetOnceAndBeforeTheyAreUsed",
            s => s.Kind is StepKind.SetGauge && s.Gauge == Length.FromInches(5),
            s => s with { Gauge = Length.FromInches(4) },
            WorkCases.OnStoppedDados
        );

    [Fact]
    public void What_enters_a_stopped_dado_must_lose_its_corner() =>
        Breaks(
            "WhatEntersAStoppedDadoMustLoseItsCorner",
            s => s.Id.StartsWith("shoulder:B1", StringComparison.Ordinal),
            s => s with { Kind = StepKind.Fit },
            WorkCases.OnStoppedDados
        );

    [Fact]
    public void Everything_must_fit_before_it_is_put_together() =>
        Breaks(
            "EverythingMustFitBeforeItIsPutTogether",
            s => s.Kind is StepKind.Assemble,
            s => s with { After = [1] }
        );

    [Fact]
    public void Finish_must_come_last() =>
        Breaks("FinishMustComeLast", s => s.Kind is StepKind.Finish, s => s with { After = [1] });

    [Fact]
    public void What_is_not_taught_must_come_prepared()
    {
        var plan = WorkCases.OnSurfacedPine;
        var untaught = plan with
        {
            Request = plan.Request with
            {
                Rules = plan.Request.Rules with { PlaningTaught = false },
            },
        };
        Assert.Contains("WhatIsNotTaughtMustComePrepared", Rules(untaught, Write(plan)));
        Assert.DoesNotContain("WhatIsNotTaughtMustComePrepared", Rules(untaught, Write(untaught)));
    }

    private static void Breaks(
        string rule,
        Func<Step, bool> which,
        Func<Step, Step> spoil,
        CheckedPlan? plan = null
    )
    {
        plan ??= WorkCases.OnSurfacedPine;
        var work = Write(plan);
        Assert.Contains(work.Steps, s => which(s));
        var spoilt = work with { Steps = [.. work.Steps.Select(s => which(s) ? spoil(s) : s)] };
        Assert.Contains(rule, Rules(plan, spoilt));
    }

    private static IEnumerable<string> Rules(CheckedPlan plan, WorkSequence work) =>
        StepRehearsal.Replay(plan, work).Findings.Select(f => f.Rule);

    private static Step Shrunk(Step step) => Resized(step, -Length.FromTicks(1));

    private static Step Resized(Step step, Length by) =>
        step with
        {
            Leaves =
            [
                step.Leaves[0] with
                {
                    Width = step.Leaves[0].Width + by,
                    Length = step.Leaves[0].Length + by,
                },
                .. step.Leaves.Skip(1),
            ],
        };

    private static string Subject(WorkSequence work, string id) =>
        $"step {work.Steps.Single(s => s.Id == id).Number}";

    private static CheckedPlan WithRules(CheckedPlan plan, Length hook) =>
        plan with
        {
            Request = plan.Request with
            {
                Rules = plan.Request.Rules with { BenchHookLimit = hook },
            },
        };

    private static WorkSequence Write(CheckedPlan plan) => WorkWriter.Write(plan, Hand.Right);
}

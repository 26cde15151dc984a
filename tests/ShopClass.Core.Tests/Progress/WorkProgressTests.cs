using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Progress;

public sealed class WorkProgressTests
{
    private static readonly Gen<StepAction> AnyAction = Gen.Select(
            Gen.Int[1, 6],
            Gen.Enum<StepActionKind>(),
            Gen.Int[0, 2].Select(i => new[] { "", "A1", "A2" }[i]),
            Gen.Guid
        )
        .Select(
            (number, kind, text, id) =>
                new StepAction(id, $"s{number}", kind, text, Length.FromInches(14))
        );

    [Fact]
    public void Whatever_is_said_a_done_step_never_stands_on_an_open_one() =>
        AnyAction
            .List[0, 60]
            .Sample(all =>
            {
                var said = new List<StepAction>();
                foreach (var action in all)
                {
                    if (ActionChecks.ProblemWith(WorkProgress.Of(Bench, said), action) is null)
                        said.Add(action);
                }

                var progress = WorkProgress.Of(Bench, said);
                Assert.All(
                    progress.Steps.Where(s => s.IsDone),
                    done => Assert.Empty(progress.OpenBefore(done.Step))
                );
            });

    [Fact]
    public void The_next_step_is_the_first_open_one_whose_needs_are_met()
    {
        Assert.Equal(1, After().Next!.Step.Number);
        Assert.Equal(2, After(Tick(1)).Next!.Step.Number);
        // Step 3 needs only step 1; step 4 waits for 2 and 3.
        Assert.Equal(2, After(Tick(1), Tick(3)).Next!.Step.Number);
        Assert.Equal(4, After(Tick(1), Tick(3), Tick(2)).Next!.Step.Number);
        Assert.Null(After([.. Enumerable.Range(1, 5).Select(Tick)]).Next);
    }

    [Fact]
    public void Ticking_too_early_is_refused_with_the_step_that_comes_first()
    {
        var problem = ActionChecks.ProblemWith(After(Tick(1)), Tick(4));

        Assert.Equal("Step 4 comes after step 2: Do thing 2. Do that one first.", problem);
        Assert.NotNull(ActionChecks.ProblemWith(After(), Of(4, StepActionKind.CheckedOff)));
    }

    [Fact]
    public void A_tick_is_taken_back_only_while_nothing_stands_on_it()
    {
        var untick = Of(1, StepActionKind.Untick);

        Assert.Null(ActionChecks.ProblemWith(After(Tick(1)), untick));
        Assert.Contains(
            "Step 2",
            ActionChecks.ProblemWith(After(Tick(1), Tick(2)), untick)!,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "instructor",
            ActionChecks.ProblemWith(After(Of(1, StepActionKind.CheckedOff)), untick)!,
            StringComparison.Ordinal
        );
        Assert.False(After(Tick(1), untick).Find("s1")!.IsDone);
    }

    [Fact]
    public void A_check_is_asked_for_sent_back_asked_for_again_and_passed()
    {
        var asked = Of(1, StepActionKind.PleaseCheck);
        Assert.Equal(CheckState.Waiting, After(Tick(1), asked).Find("s1")!.Check);

        var back = After(asked, Of(1, StepActionKind.SentBack, "out of square")).Find("s1")!;
        Assert.Equal((CheckState.SentBack, "out of square"), (back.Check, back.Fault));

        var passed = After(asked, Of(1, StepActionKind.CheckedOff)).Find("s1")!;
        Assert.Equal((CheckState.Passed, true), (passed.Check, passed.IsDone));
    }

    [Fact]
    public void Help_and_spoiled_pieces_stand_until_somebody_ends_them()
    {
        StepAction[] trouble =
        [
            Of(3, StepActionKind.NeedHelp),
            Of(3, StepActionKind.Spoiled, "A1"),
            Of(3, StepActionKind.Spoiled, "A2"),
            Of(3, StepActionKind.Spoiled, "A1"),
        ];
        Assert.True(After(trouble).Find("s3")!.NeedsHelp);
        Assert.Equal(["A2", "A1"], After(trouble).Find("s3")!.Spoiled);

        var over = After([
            .. trouble,
            Of(3, StepActionKind.Helped),
            Of(3, StepActionKind.Settled, "A1"),
        ]);
        Assert.False(over.Find("s3")!.NeedsHelp);
        Assert.Equal(["A2"], over.Find("s3")!.Spoiled);
    }

    [Fact]
    public void The_last_size_of_a_piece_counts_and_notes_add_up()
    {
        var state = After(
                Measured(3, "A1", Length.FromInches(13)),
                Measured(3, "A1", Length.FromInches(14)),
                Of(3, StepActionKind.Note, "hard going"),
                Of(3, StepActionKind.Note, "sharper saw")
            )
            .Find("s3")!;

        Assert.Equal([new SizeLogged("A1", Length.FromInches(14))], state.Sizes);
        Assert.Equal(["hard going", "sharper saw"], state.Notes);
    }

    [Theory]
    [InlineData("s9", StepActionKind.Tick, "")]
    [InlineData("s3", StepActionKind.Note, "")]
    [InlineData("s3", StepActionKind.Spoiled, "Z9")]
    [InlineData("s3", StepActionKind.Spoiled, "")]
    [InlineData("s3", StepActionKind.Measured, "Z9")]
    [InlineData("s1", StepActionKind.Measured, "A1")]
    public void What_makes_no_sense_is_refused_with_a_sentence(
        string step,
        StepActionKind kind,
        string text
    ) =>
        Assert.NotNull(
            ActionChecks.ProblemWith(
                After(),
                new(Guid.Empty, step, kind, text, Length.FromInches(14))
            )
        );

    private static WorkProgress After(params StepAction[] said) => WorkProgress.Of(Bench, said);

    private static StepAction Tick(int number) => Of(number, StepActionKind.Tick);

    private static StepAction Of(int number, StepActionKind kind, string text = "") =>
        new(Guid.NewGuid(), $"s{number}", kind, text);

    private static StepAction Measured(int number, string piece, Length size) =>
        new(Guid.NewGuid(), $"s{number}", StepActionKind.Measured, piece, size);

    private static IReadOnlyList<Step> Bench { get; } =
    [
        StepOf(1, StepKind.MarkOut),
        StepOf(2, StepKind.Rip, 1),
        StepOf(3, StepKind.CutToLength, 1),
        StepOf(4, StepKind.CutToLength, 2, 3),
        StepOf(5, StepKind.Finish, 4),
    ];

    private static Step StepOf(int number, StepKind kind, params int[] after) =>
        new()
        {
            Id = $"s{number}",
            Number = number,
            Kind = kind,
            Skill = Skill.MarkingOut,
            Station = Station.BenchTop,
            Title = $"Do thing {number}",
            Pieces = ["A1", "A2"],
            Class = CutClass.Second,
            Reason = "Because.",
            After = after,
            Leaves =
            [
                new(
                    "A1",
                    Length.FromInches(0, 3, 4),
                    Length.FromInches(6),
                    Length.FromInches(14),
                    PieceUse.Work
                ),
            ],
            Time = new(60, 60, 0, "test"),
        };
}

using CsCheck;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Sawing.Steps;

namespace ShopClass.Core.Tests.Planning;

public class SizingTests
{
    private static PlanningRequest Ask(Surfacing surfacing) =>
        Wood.Ask(
            CourseRules.DefaultsFor(UnitSystem.Inch),
            [Wood.Board("1", Wood.In(0, 3, 4), Wood.In(9, 1, 4), Wood.In(48), surfacing)],
            Wood.Part("A", 2, Wood.In(0, 3, 4), Wood.In(9, 1, 4), Wood.In(12)),
            Wood.Part("B", 1, Wood.In(0, 3, 4), Wood.In(4), Wood.In(10))
        );

    private static SizingPair? Pair(PlanningRequest request) =>
        Sizing.Pair(request, cancel: TestContext.Current.CancellationToken);

    private static WorkSequence Work(CheckedPlan made)
    {
        var work = WorkWriter.Write(made, Hand.Right);
        Assert.Empty(StepRehearsal.Replay(made, work).Findings.Select(f => f.Sentence));
        return work;
    }

    [Fact]
    public void A_true_board_is_sawn_straight_to_length_or_oversize_for_the_habit()
    {
        var pair = Pair(Ask(Surfacing.S4S))!;

        // Two of 12 in and one of 10 in: 34 in and two kerfs of 1/16 in, against 3 in more.
        Assert.Equal(
            [Wood.In(37, 1, 8).Ticks, Wood.In(34, 1, 8).Ticks],
            new[] { pair.Oversize, pair.Straight }.Select(p =>
                (long)p.Plan.Goals.Single(g => g.Goal is PlanGoal.LengthUsed).Value
            )
        );
        Assert.All(
            pair.Oversize.Sequence.Cuts,
            c => Assert.Equal((CutClass.Third, LineKind.Pencil), (c.Class, c.Line))
        );
        Assert.All(
            pair.Straight.Sequence.Cuts.Where(c => c.Kind is not CutKind.Rip),
            c => Assert.Equal((CutClass.Second, LineKind.Knife), (c.Class, c.Line))
        );
        Assert.All(
            pair.Straight.Sequence.Cuts.Where(c => c.Kind is CutKind.Rip),
            c => Assert.Equal((CutClass.Third, LineKind.Pencil), (c.Class, c.Line))
        );
        Assert.StartsWith(
            "The boards are true already, and blanks are sawn straight",
            Sizing.Sentence(pair.Straight),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "1 in over in length",
            Sizing.Sentence(pair.Oversize),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Straight_to_length_saves_the_second_cut_of_each_end()
    {
        var pair = Pair(Ask(Surfacing.S4S))!;
        static int EndCuts(WorkSequence work) =>
            work.Steps.Count(s =>
                s.Saw is not null && (s.Kind is StepKind.SquareEnd or StepKind.CutToLength)
            );
        var (over, straight) = (Work(pair.Oversize), Work(pair.Straight));
        Assert.Equal((6, 0), (EndCuts(over), EndCuts(straight)));
        Assert.True(straight.Steps.Sum(s => s.Time.Busy) < over.Steps.Sum(s => s.Time.Busy));
        // A knife line needs a reference: the board's is marked before the first.
        Assert.Equal(
            ["Mark the reference face and edge of “Board 1”"],
            straight
                .Steps.TakeWhile(s => s.Line is not LineKind.Knife)
                .Where(s => s.Kind is StepKind.MarkReference)
                .Select(s => s.Title)
        );
    }

    [Theory]
    [InlineData(Surfacing.Rough)]
    [InlineData(Surfacing.S2S)]
    [InlineData(Surfacing.S3S)]
    public void A_board_that_is_not_true_has_no_such_choice(Surfacing surfacing)
    {
        Assert.Null(Pair(Ask(surfacing)));
        var made = CheckedPlan.Make(
            Ask(surfacing).StraightToSize(),
            cancel: TestContext.Current.CancellationToken
        );
        Assert.All(made.Sequence.Cuts, c => Assert.Equal(CutClass.Third, c.Class));
        Assert.Null(Sizing.Sentence(made));
    }

    [Fact]
    public void Crosscuts_straight_to_length_are_finer_work_for_the_lessons_and_practised_first()
    {
        var pair = Pair(Ask(Surfacing.S4S))!;
        var fine = WorkWriter.Write(pair.Straight, Hand.Right);
        var rough = WorkWriter.Write(pair.Oversize, Hand.Right);

        Assert.All(
            rough.Steps.Where(s => s.Kind is StepKind.Crosscut),
            s => Assert.Equal(Skill.Crosscutting, s.Skill)
        );
        var cuts = fine.Steps.Where(s => s.Kind is StepKind.Crosscut).ToList();
        Assert.NotEmpty(cuts);
        Assert.All(cuts, s => Assert.Equal(Skill.FineCrosscutting, s.Skill));
        // There is waste to practise on once a cut has left some; every fine cut after that waits for the practice.
        var practice = fine.Steps.FirstOrDefault(s => s.Kind is StepKind.Practise);
        Assert.All(
            cuts.Where(s => practice is not null && s.Number > practice.Number),
            s => Assert.Contains(practice!.Number, s.After)
        );
    }

    [Fact]
    public void A_cupped_board_has_no_such_choice()
    {
        var flat = Ask(Surfacing.S4S);
        var cupped = flat.Boards[0] with { Cup = Wood.In(0, 1, 16) };
        Assert.Null(Pair(flat with { Boards = [cupped] }));
    }

    [Fact]
    public void A_course_without_a_length_allowance_has_no_such_choice() =>
        Assert.Null(Pair(Ask(Surfacing.S4S).StraightToSize()));

    [Fact]
    public void The_rehearsals_agree_to_every_work_straight_to_length() =>
        RandomWork.Any.Sample(
            request =>
            {
                var straight = request.StraightToSize() with
                {
                    Boards = [.. request.Boards.Select(b => b with { Surfacing = Surfacing.S4S })],
                    StepLimit = 200,
                };
                var made = CheckedPlan.Make(
                    straight,
                    cancel: TestContext.Current.CancellationToken
                );
                Assert.Empty(
                    made.Rehearsal.Findings.Where(f => f.Kind is FindingKind.Must)
                        .Select(f => f.Sentence)
                );
                Work(made);
            },
            iter: 100
        );
}

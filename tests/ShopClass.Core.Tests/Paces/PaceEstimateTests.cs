using CsCheck;
using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Paces;

/// <summary>
/// The estimate against what any shrinkage must do. The weight of five steps and the bounds are our proposal; no published
/// basis was found.
/// </summary>
public sealed class PaceEstimateTests
{
    private static readonly Gen<TimedStep> AnyStep = Gen.Select(
        OneOf("ada", "bo", "cleo"),
        OneOf(StepKind.Rip, StepKind.Crosscut, StepKind.CutJoint),
        OneOf("", "eastern-white-pine", "hard-maple"),
        Gen.Int[1, 90],
        Gen.Int[1, TimedSteps.MostMinutes],
        (student, kind, species, planned, taken) =>
            new TimedStep(student, kind, species, planned, taken)
    );

    [Fact]
    public void The_estimate_lies_between_the_usual_rate_and_what_was_timed() =>
        Gen.Select(AnyStep.List[1, 30], Gen.Int[25, 400])
            .Sample(
                (steps, prior) =>
                {
                    var data = Timed(steps);
                    var found = PaceEstimate.Shrunk(prior, steps);

                    Assert.InRange(
                        found.Hundredths,
                        Math.Min(prior, Math.Floor(data)),
                        Math.Max(prior, Math.Ceiling(data))
                    );
                    Assert.Equal(steps.Count, found.Steps);
                }
            );

    [Fact]
    public void More_of_the_same_moves_it_to_what_was_timed_and_in_the_end_there() =>
        AnyStep.Sample(step =>
        {
            var data = Timed([step]);
            var before = Math.Abs(100m - data);
            foreach (var count in new[] { 1, 2, 5, 20, 100, 4000 })
            {
                var found = PaceEstimate.Shrunk(100, [.. Enumerable.Repeat(step, count)]);
                var off = Math.Abs(found.Hundredths - data);
                Assert.True(off <= before + 1m, $"{count} steps: {off} after {before}");
                before = off;
            }

            Assert.True(before <= 1m, $"{before} hundredths off after 4000 steps");
        });

    [Fact]
    public void Five_timed_steps_weigh_as_much_as_the_usual_rate() =>
        Assert.Equal(
            new PaceFactor(150, 5),
            PaceEstimate.Shrunk(100, [.. Enumerable.Repeat(Rip("ada", 10, 20), 5)])
        );

    [Fact]
    public void The_last_courses_rate_stands_in_the_place_of_the_usual_one_and_weighs_as_much() =>
        Gen.Select(AnyStep.List[0, 30], AnyStep.List[1, 30])
            .Sample(
                (timed, before) =>
                {
                    var start = PaceEstimate.Of(before).Course.AsStart();
                    var found = PaceEstimate.Of(timed, start).Course;

                    Assert.Equal(
                        timed.Concat(before).Select(t => t.Kind).Distinct().Order(),
                        found.Kinds.Select(k => k.Kind)
                    );
                    foreach (var kind in found.Kinds)
                    {
                        var rate =
                            start.Kinds.FirstOrDefault(k => k.Kind == kind.Kind)?.Factor
                            ?? PaceFactor.Usual;
                        TimedStep[] own = [.. timed.Where(t => t.Kind == kind.Kind)];
                        Assert.Equal(
                            (own.Length, rate.Steps),
                            (kind.Factor.Steps, kind.Factor.Before)
                        );
                        Assert.Equal(
                            own.Length == 0
                                ? rate.Hundredths
                                : PaceEstimate.Shrunk(rate.Hundredths, own).Hundredths,
                            kind.Factor.Hundredths
                        );
                    }

                    // Every species told apart before is told apart now.
                    Assert.Subset(
                        found.Species.Select(s => (s.Kind, s.SpeciesId)).ToHashSet(),
                        start.Species.Select(s => (s.Kind, s.SpeciesId)).ToHashSet()
                    );
                }
            );

    [Fact]
    public void A_course_that_times_nothing_hands_on_what_it_started_from() =>
        AnyStep
            .List[1, 30]
            .Sample(steps =>
            {
                var start = PaceEstimate.Of(steps).Course.AsStart();
                var again = PaceEstimate.Of([], start).Course.AsStart();

                Assert.Equal(start.Kinds, again.Kinds);
                Assert.Equal(start.Species, again.Species);
            });

    [Fact]
    public void The_order_of_the_steps_does_not_matter_and_the_same_steps_give_the_same_pace() =>
        Gen.Select(AnyStep.List[1, 30], Gen.Int[0, 1000])
            .Sample(
                (steps, seed) =>
                {
                    // A stated shuffle: by a product modulo a prime.
                    var other = steps
                        .Select((s, i) => (s, (i + 1) * (seed + 7) % 1009))
                        .OrderBy(x => x.Item2)
                        .Select(x => x.s);
                    var (one, two) = (PaceEstimate.Of(steps), PaceEstimate.Of(other));

                    Assert.Equal(one.Course.Kinds, two.Course.Kinds);
                    Assert.Equal(one.Course.Species, two.Course.Species);
                    Assert.Equal(one.Students, two.Students);
                }
            );

    [Fact]
    public void A_species_has_a_factor_of_its_own_where_enough_of_it_was_timed_beside_another()
    {
        var pine = Enumerable.Repeat(Rip("ada", 10, 10), 4);
        var maple = Enumerable.Repeat(Rip("bo", 10, 20) with { SpeciesId = "hard-maple" }, 3);

        var enough = PaceEstimate.Of([.. pine, .. maple]).Course;
        var tooFew = PaceEstimate.Of([.. pine, .. maple.Take(2)]).Course;

        Assert.True(
            enough.Of(StepKind.Rip, "hard-maple").Hundredths
                > enough.Of(StepKind.Rip, "eastern-white-pine").Hundredths
        );
        Assert.DoesNotContain(tooFew.Species, s => s.SpeciesId == "hard-maple");
        Assert.Equal(tooFew.Kinds[0].Factor, tooFew.Of(StepKind.Rip, "hard-maple"));
        Assert.Equal(PaceFactor.Usual, enough.Of(StepKind.Fit, "hard-maple"));
    }

    [Fact]
    public void A_student_is_measured_against_the_course_and_not_against_the_table()
    {
        // Everybody takes twice the table: the course is slow, and nobody in it.
        var all = new[] { "ada", "bo" }.SelectMany(s => Enumerable.Repeat(Rip(s, 10, 20), 40));
        var pace = PaceEstimate.Of(all);

        Assert.InRange(pace.Course.Kinds[0].Factor.Hundredths, 190, 200);
        Assert.All(pace.Students.Values, f => Assert.InRange(f.Hundredths, 100, 106));
    }

    [Fact]
    public void A_forgotten_clock_counts_as_four_times_the_plan_and_no_more() =>
        Assert.Equal(
            PaceEstimate.Shrunk(100, [Rip("ada", 10, 40)]),
            PaceEstimate.Shrunk(100, [Rip("ada", 10, 400)])
        );

    [Theory]
    [InlineData(0, "nothing timed yet, the usual rate")]
    [InlineData(1, "from 1 step, still mostly the usual rate")]
    [InlineData(3, "from 3 steps, still mostly the usual rate")]
    [InlineData(5, "from 5 steps, about as much timed as usual")]
    [InlineData(15, "from 15 steps, mostly what was timed")]
    public void How_sure_it_is_stands_in_words(int steps, string words) =>
        Assert.Equal(words, new PaceFactor(120, steps).HowSure);

    [Theory]
    [InlineData(1, true)]
    [InlineData(480, true)]
    [InlineData(0, false)]
    [InlineData(-3, false)]
    [InlineData(481, false)]
    public void Minutes_are_from_1_to_480(int minutes, bool isGood) =>
        Assert.Equal(isGood, TimedSteps.ProblemWith(minutes) is null);

    [Fact]
    public void Every_kind_of_step_has_a_name_of_its_own() =>
        Assert.Equal(
            Enum.GetValues<StepKind>().Length,
            Enum.GetValues<StepKind>().Select(KindNames.Of).Distinct().Count()
        );

    private static Gen<T> OneOf<T>(params T[] choices) =>
        Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static TimedStep Rip(string student, int planned, int taken) =>
        new(student, StepKind.Rip, "eastern-white-pine", planned, taken);

    // The oracle: fractions, summed step by step, each within a quarter and four times its plan.
    private static decimal Timed(IReadOnlyCollection<TimedStep> steps) =>
        100m
        * steps.Sum(s => Math.Min(Math.Max(s.Taken, s.Planned / 4m), s.Planned * 4m))
        / steps.Sum(s => s.Planned);
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Courses;

public class RuleBookTests
{
    private static readonly CourseRules Inch = CourseRules.DefaultsFor(UnitSystem.Inch);
    private static readonly CourseRules Metric = CourseRules.DefaultsFor(UnitSystem.Metric);

    // Common practice and published texts on hand work, as each rule's source says.
    [Theory]
    [InlineData("crosscutKerf", "1/16", "1.5", RuleBasis.Practice)]
    [InlineData("ripKerf", "5/64", "2", RuleBasis.Practice)]
    [InlineData("backSawKerf", "1/32", "0.8", RuleBasis.Practice)]
    [InlineData("lengthAllowance", "1", "25", RuleBasis.Practice)]
    [InlineData("widthAllowance", "1/4", "6", RuleBasis.Book)]
    [InlineData("planingPerFace", "3/32", "2.5", RuleBasis.Book)]
    [InlineData("edgeJointAllowance", "1/16", "1.5", RuleBasis.Practice)]
    [InlineData("usualEndTrim", "1", "25", RuleBasis.Proposal)]
    [InlineData("thicknessLeeway", "1/32", "1", RuleBasis.Proposal)]
    [InlineData("mostPlanedAway", "1/4", "6", RuleBasis.Proposal)]
    [InlineData("sawBenchLimit", "24", "600", RuleBasis.Proposal)]
    [InlineData("benchHookLimit", "6", "150", RuleBasis.Proposal)]
    [InlineData("shortestOffcut", "8", "200", RuleBasis.Proposal)]
    [InlineData("narrowestOffcut", "1 1/2", "38", RuleBasis.Proposal)]
    public void A_default_is_a_round_figure_in_either_unit(
        string key,
        string inches,
        string millimetres,
        RuleBasis basis
    )
    {
        var rule = Rule(key);
        Assert.Equal(
            inches,
            LengthWriter.WriteExact(rule.DefaultFor(UnitSystem.Inch), UnitSystem.Inch)
        );
        Assert.Equal(
            millimetres,
            LengthWriter.WriteExact(rule.DefaultFor(UnitSystem.Metric), UnitSystem.Metric)
        );
        Assert.Equal(basis, rule.Basis);
    }

    // Wood Handbook, FPL-GTR-190, Table 5-3a: black walnut 0.55 at 12 %.
    [Fact]
    public void Hard_going_begins_above_black_walnut()
    {
        var walnut = SpeciesTable.Find("black-walnut")!.SpecificGravity12!.Value;
        Assert.Equal(walnut, Inch.HardGoingAbove / 100m);
        Assert.Equal(walnut, Metric.HardGoingAbove / 100m);
    }

    [Fact]
    public void Defaults_have_no_problem_and_are_within_about_a_tenth_of_each_other()
    {
        Assert.Empty(RuleBook.ProblemsIn(Inch));
        Assert.Empty(RuleBook.ProblemsIn(Metric));
        Assert.All(
            RuleBook.Lengths,
            rule =>
            {
                var (inch, metric) = (rule.Get(Inch).Ticks, rule.Get(Metric).Ticks);
                // A thickness leeway of 1/32 in is 0.8 mm; the metric one is the rule's whole 1 mm.
                var within = rule.Key == "thicknessLeeway" ? 4 : 10;
                Assert.True(Math.Abs(inch - metric) <= inch / within + 400, rule.Key);
            }
        );
    }

    [Fact]
    public void Every_rule_says_what_it_does_and_where_it_comes_from()
    {
        Assert.Equal(14, RuleBook.Lengths.Select(r => r.Key).Distinct().Count());
        Assert.All(
            RuleBook.Lengths,
            rule =>
            {
                Assert.EndsWith(".", rule.Meaning, StringComparison.Ordinal);
                Assert.EndsWith(".", rule.Source, StringComparison.Ordinal);
                Assert.True(
                    rule.Group is "Kerfs" or "Allowances" or "Holding" or "Offcuts",
                    rule.Group
                );
            }
        );
    }

    [Fact]
    public void A_rule_changes_its_own_setting_and_no_other() =>
        Assert.All(
            RuleBook.Lengths,
            rule =>
            {
                var changed = rule.With(Inch, rule.Get(Inch) + Length.FromTicks(1));
                Assert.Equal(
                    [rule.Key],
                    RuleBook.Lengths.Where(r => r.Get(changed) != r.Get(Inch)).Select(r => r.Key)
                );
                Assert.Equal(Inch, rule.With(changed, rule.Get(Inch)));
            }
        );

    [Fact]
    public void A_setting_out_of_range_is_named_and_one_at_the_limit_is_not() =>
        Assert.All(
            RuleBook.Lengths,
            rule =>
            {
                var tick = Length.FromTicks(1);
                Assert.Contains(Keys(rule.With(Inch, rule.Least - tick)), key => key == rule.Key);
                Assert.Contains(Keys(rule.With(Inch, rule.Most + tick)), key => key == rule.Key);
                Assert.DoesNotContain(
                    RuleBook.ProblemsIn(rule.With(Inch, rule.Most)),
                    p =>
                        p.Key == rule.Key
                        && p.Sentence.StartsWith(rule.Name, StringComparison.Ordinal)
                );
                Assert.DoesNotContain(
                    RuleBook.ProblemsIn(rule.With(Inch, rule.Least)),
                    p =>
                        p.Key == rule.Key
                        && p.Sentence.StartsWith(rule.Name, StringComparison.Ordinal)
                );
            }
        );

    [Theory]
    [InlineData(UnitSystem.Inch, "Crosscut kerf is 0 in. Choose from 1/64 in to 1/4 in.")]
    [InlineData(UnitSystem.Metric, "Crosscut kerf is 0 mm. Choose from 0.4 mm to 6 mm.")]
    public void The_range_is_told_in_the_unit_of_the_course(UnitSystem unit, string sentence) =>
        Assert.Equal(
            [("crosscutKerf", sentence)],
            RuleBook.ProblemsIn(CourseRules.DefaultsFor(unit) with { CrosscutKerf = Length.Zero })
        );

    [Fact]
    public void An_end_trim_is_nothing_or_at_least_a_kerf()
    {
        Assert.Equal(
            ["usualEndTrim"],
            Keys(Inch with { UsualEndTrim = Length.FromInches(0, 3, 64) })
        );
        Assert.Empty(Keys(Inch with { UsualEndTrim = Length.FromInches(0, 1, 16) }));
        Assert.Empty(Keys(Inch with { UsualEndTrim = Length.Zero }));
    }

    [Fact]
    public void A_bench_hook_does_not_need_longer_stock_than_a_saw_bench()
    {
        var limit = Length.FromInches(12);
        Assert.Equal(
            ["benchHookLimit"],
            Keys(Inch with { SawBenchLimit = limit, BenchHookLimit = limit + Length.FromTicks(1) })
        );
        Assert.Empty(Keys(Inch with { SawBenchLimit = limit, BenchHookLimit = limit }));
    }

    [Fact]
    public void The_precision_belongs_to_the_unit()
    {
        Assert.Equal(["precision"], Keys(Inch with { Precision = Precision.Millimetre }));
        Assert.Empty(Keys(Inch with { Precision = Precision.SixtyFourth }));
        Assert.Equal(["precision"], Keys(Metric with { Precision = (Precision)77 }));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(125, true)]
    [InlineData(126, false)]
    public void Specific_gravity_is_a_sane_figure(int hundredths, bool right) =>
        Assert.Equal(right, Keys(Inch with { HardGoingAbove = hundredths }).Count == 0);

    [Theory]
    [InlineData(9, false)]
    [InlineData(10, true)]
    [InlineData(90, true)]
    [InlineData(91, false)]
    public void Humidity_is_a_sane_figure(int percent, bool right)
    {
        Assert.Equal(right ? [] : ["shopHumidity"], Keys(Inch with { ShopHumidity = percent }));
        Assert.Equal(right ? [] : ["roomHumidity"], Keys(Inch with { RoomHumidity = percent }));
    }

    private static LengthRule Rule(string key) => RuleBook.Lengths.Single(r => r.Key == key);

    private static IReadOnlyList<string> Keys(CourseRules rules) =>
        [.. RuleBook.ProblemsIn(rules).Select(p => p.Key)];
}

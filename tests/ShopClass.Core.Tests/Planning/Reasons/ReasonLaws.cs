using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Reasons;

namespace ShopClass.Core.Tests.Planning.Reasons;

public class ReasonLaws
{
    [Fact]
    public void Every_placed_blank_has_a_reason_and_no_reason_is_false() =>
        RandomWood
            .Requests(parts: 4, boards: 2, defects: 3)
            .Sample(request => Check(request), iter: 120, threads: 1);

    [Theory]
    [MemberData(nameof(DemoPlanTests.All), MemberType = typeof(DemoPlanTests))]
    public void The_reasons_of_a_whole_project_are_true(string name, UnitSystem unit) =>
        Check(DemoProjects.Find(name, unit));

    private static void Check(PlanningRequest request)
    {
        var made = CheckedPlan.Make(request, cancel: TestContext.Current.CancellationToken);
        var reasons = BlankReasons.Of(made);
        var placed = made
            .Plan.Boards.SelectMany(b => b.Sections)
            .SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks)
            .Select(b => b.Key)
            .Order();
        Assert.Equal(placed, reasons.Select(r => r.Blank).Distinct());
        Assert.All(reasons, r => Assert.Null(ClaimCheck.ProblemWith(r, made)));
    }
}

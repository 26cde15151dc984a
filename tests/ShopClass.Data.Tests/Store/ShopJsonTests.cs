using System.Text.Json;
using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.Store;

public class ShopJsonTests
{
    private static readonly Gen<Length> AnyLength = Gen.Long.Select(Length.FromTicks);

    private static readonly Gen<Defect> AnyDefect = Gen.Select(
        Gen.Enum<DefectKind>(),
        Gen.Select(
            AnyLength,
            AnyLength,
            AnyLength,
            AnyLength,
            (f, t, n, w) => new BoardRect(f, t, n, w)
        ),
        Gen.Enum<DefectReach>(),
        (kind, place, reach) => new Defect(kind, place, reach)
    );

    [Fact]
    public void Any_list_of_defects_comes_back_as_it_was() =>
        AnyDefect
            .List[0, 8]
            .Sample(list => Assert.Equal(list, ThereAndBack<IReadOnlyList<Defect>>(list)));

    [Fact]
    public void Figures_larger_than_a_long_come_back_whole()
    {
        var area = Area.FromSquareTicks(Int128.MaxValue);
        var goal = new GoalResult(PlanGoal.SawingEffort, Int128.MaxValue, Int128.MinValue);

        Assert.Equal(area, ThereAndBack(area));
        Assert.Equal(goal, ThereAndBack(goal));
    }

    [Fact]
    public void Choices_are_kept_by_name_so_that_a_new_one_in_between_moves_nothing()
    {
        var defect = new Defect(DefectKind.Pith, default, DefectReach.BackFace);

        var json = JsonSerializer.Serialize(defect, ShopJson.Options);

        Assert.Contains("Pith", json);
        Assert.Contains("BackFace", json);
        Assert.DoesNotContain("Across", json);
    }

    [Fact]
    public void Counts_by_letter_are_written_in_the_order_of_the_letters()
    {
        IReadOnlyDictionary<string, int> counts = new Dictionary<string, int>
        {
            ["B"] = 2,
            ["A"] = 3,
        };

        Assert.Equal("""{"A":3,"B":2}""", JsonSerializer.Serialize(counts, ShopJson.Options));
        Assert.Equal(["A", "B"], ThereAndBack(counts).Keys);
    }

    private static T ThereAndBack<T>(T value) =>
        JsonSerializer.Deserialize<T>(
            JsonSerializer.Serialize(value, ShopJson.Options),
            ShopJson.Options
        )!;
}

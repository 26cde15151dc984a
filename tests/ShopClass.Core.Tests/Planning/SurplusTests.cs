using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

public class SurplusTests
{
    private static Section OnlySection(Length width, Length length)
    {
        var rules = Wood.Bare(Wood.Mm(2)) with
        {
            LengthAllowance = Wood.Mm(25),
            WidthAllowance = Wood.Mm(6),
        };
        var plan = Wood.Plan(
            Wood.Ask(
                rules,
                [Wood.Board("1", Wood.Mm(20), width, length)],
                Wood.Part("A", 2, Wood.Mm(20), Wood.Mm(94), Wood.Mm(275))
            )
        );
        return Assert.Single(Assert.Single(plan.Boards).Sections);
    }

    [Fact]
    public void Spare_width_is_shared_evenly_rather_than_ripped_off_as_a_sliver()
    {
        // Two strips of 100 with a kerf of 2 leave 30 of 232: less than an offcut of 50 with its kerf.
        var section = OnlySection(Wood.Mm(232), Wood.Mm(400));
        Assert.Equal([Wood.Mm(115), Wood.Mm(115)], section.Strips.Select(s => s.Far - s.Near));
        Assert.Equal(Wood.Mm(232), section.Strips[^1].Far);
    }

    [Theory]
    [InlineData(253, 253)]
    [InlineData(254, 202)]
    public void Spare_width_worth_keeping_is_left_as_an_offcut(int width, int far)
    {
        // 202 are needed; an offcut of 50 and a kerf of 2 begin at 254.
        Assert.Equal(Wood.Mm(far), OnlySection(Wood.Mm(width), Wood.Mm(400)).Strips[^1].Far);
    }

    [Fact]
    public void Shared_lines_fall_on_the_course_s_precision_where_the_wood_allows_it()
    {
        var section = OnlySection(Wood.Mm(231), Wood.Mm(400));
        Assert.Equal(section.Strips[0].Far, section.Strips[0].Far.RoundTo(Wood.Mm(1)));
    }

    [Theory]
    [InlineData(25, 300)]
    [InlineData(26, 274)]
    public void A_slightly_shorter_part_keeps_the_difference(int shorter, int sawnTo)
    {
        var rules = Wood.Bare(Length.Zero) with { LengthAllowance = Wood.Mm(25) };
        var plan = Wood.Plan(
            Wood.Ask(
                rules,
                [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(320))],
                Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(50), Wood.Mm(275)),
                Wood.Part("B", 1, Wood.Mm(20), Wood.Mm(50), Wood.Mm(275 - shorter))
            )
        );
        var section = Assert.Single(plan.Boards[0].Sections);
        var b = section.Strips.SelectMany(s => s.Blanks).Single(p => p.Key.Part == "B");
        Assert.Equal(Wood.Mm(sawnTo), b.To - b.From);
    }
}

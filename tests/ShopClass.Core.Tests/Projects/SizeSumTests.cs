using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;
using static ShopClass.Core.Tests.Projects.JointChecksTests;

namespace ShopClass.Core.Tests.Projects;

public class SizeSumTests
{
    // The tool tote: its bottom sits in dados 1/4 in deep in ends 3/4 in thick, between sides 18 in long.
    private static readonly Part[] Parts =
    [
        Made("A", "3/4", "7", "9", 2),
        Made("B", "1/2", "4", "18", 2),
        Made("C", "1/2", "6", "17", 1),
    ];

    private static SizeCheck Bottom { get; } =
        new(
            "C",
            PartDimension.Length,
            [
                Of(1, "B", PartDimension.Length),
                Of(-2, "A", PartDimension.Thickness),
                new(2, null, default, In("1/4"), "dado"),
            ]
        );

    [Fact]
    public void A_sum_that_comes_out_says_so_with_its_figures() =>
        Assert.Equal(
            new(
                true,
                In("17"),
                In("17"),
                "The length of C is 17 in = 18 in length of B − 2 × 3/4 in thickness of A + 2 × 1/4 in dado."
            ),
            SizeSum.Of(Bottom, Parts, UnitSystem.Inch)
        );

    [Fact]
    public void A_sum_that_does_not_come_out_fails_with_both_figures()
    {
        SizeCheck shelf = new(
            "B",
            PartDimension.Length,
            [new(1, null, default, In("20"), "clear"), new(2, null, default, In("1/4"), "dado")]
        );

        var sum = SizeSum.Of(shelf, [Made("B", "3/4", "6", "20", 2)], UnitSystem.Inch);

        Assert.False(sum.Agrees);
        Assert.Equal(
            "The length of B is 20 in, but 20 in clear + 2 × 1/4 in dado = 20 1/2 in.",
            sum.Sentence
        );
    }

    [Fact]
    public void One_tick_too_much_does_not_agree()
    {
        Part[] off =
        [
            .. Parts[..2],
            Parts[2] with
            {
                Finished = new(In("1/2"), In("6"), In("17") + Length.FromTicks(1)),
            },
        ];

        Assert.False(SizeSum.Of(Bottom, off, UnitSystem.Inch).Agrees);
    }

    [Fact]
    public void A_sum_over_a_part_that_is_gone_says_which_and_fails()
    {
        var sum = SizeSum.Of(Bottom, [Parts[0], Parts[2]], UnitSystem.Inch);

        Assert.False(sum.Agrees);
        Assert.Equal("No part is marked B. Choose one of A, C.", sum.Sentence);
    }

    public static TheoryData<string, string, SizeCheck, SizeCheck> Pairs =>
        new()
        {
            {
                "Part",
                "No part is marked Q. Choose one of A, B, C.",
                Bottom with
                {
                    Part = "Q",
                },
                Bottom
            },
            { "Terms", "Write what the size must equal.", Bottom with { Terms = [] }, Bottom },
            { "Terms", "Here are 9 terms; 8 is the most.", Repeated(9), Repeated(8) },
            {
                "Terms",
                "A size cannot be checked against itself. Choose another part or size.",
                With(Of(1, "C", PartDimension.Length)),
                With(Of(1, "C", PartDimension.Width))
            },
            {
                "1.Times",
                "It counts 0 times. Write a whole number from 1 to 50, or from −50 to −1 to take away.",
                With(Of(0, "A", PartDimension.Width)),
                With(Of(-50, "A", PartDimension.Width))
            },
            {
                "1.Times",
                "It counts 51 times. Write a whole number from 1 to 50, or from −50 to −1 to take away.",
                With(Of(51, "A", PartDimension.Width)),
                With(Of(50, "A", PartDimension.Width))
            },
            {
                "1.Part",
                "No part is marked Q. Choose one of A, B, C.",
                With(Of(1, "Q", PartDimension.Width)),
                With(Of(1, "A", PartDimension.Width))
            },
            {
                "1.Fixed",
                "The size is 0 in. Write the size, more than zero.",
                With(new(1, null, default, Length.Zero, "gap")),
                With(new(1, null, default, In("1/32"), "gap"))
            },
            {
                "1.Fixed",
                "Choose a part or write a size, not both.",
                With(new(1, "A", default, In("1"), "")),
                With(new(1, "A", default, Length.Zero, ""))
            },
            {
                "1.Meaning",
                "Say what this size is, such as “clear width”.",
                With(new(1, null, default, In("1"), "")),
                With(new(1, null, default, In("1"), "gap"))
            },
        };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_wrong_sum_is_named_at_its_field_and_one_only_just_right_is_not(
        string field,
        string sentence,
        SizeCheck wrong,
        SizeCheck right
    )
    {
        Assert.Equal([(field, sentence)], SizeSum.ProblemsIn(wrong, Parts, UnitSystem.Inch));
        Assert.Empty(SizeSum.ProblemsIn(right, Parts, UnitSystem.Inch));
    }

    private static SizeTerm Of(int times, string part, PartDimension dimension) =>
        new(times, part, dimension, Length.Zero, "");

    private static SizeCheck With(SizeTerm term) => Bottom with { Terms = [term] };

    private static SizeCheck Repeated(int terms) =>
        Bottom with
        {
            Terms = [.. Enumerable.Repeat(Of(1, "A", PartDimension.Width), terms)],
        };
}

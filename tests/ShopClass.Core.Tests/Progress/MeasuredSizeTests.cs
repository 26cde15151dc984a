using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Progress;

public sealed class MeasuredSizeTests
{
    // Second class, as our tolerances have it: 0 to +1/64 in. Tolerances are our proposal; the classes are common practice.
    private static readonly SizeAsked Asked = new(
        "A1",
        PartDimension.Length,
        Length.FromInches(14),
        Length.FromInches(0, 1, 64),
        Length.Zero
    );

    [Theory]
    [InlineData("14", SizeVerdict.Good)]
    [InlineData("14 1/64", SizeVerdict.Good)]
    [InlineData("13 31/32", SizeVerdict.Good)] // read to the nearest sixteenth
    [InlineData("14 1/32", SizeVerdict.Over)]
    [InlineData("15", SizeVerdict.Over)]
    [InlineData("13 15/16", SizeVerdict.UnderStillFits)]
    [InlineData("13 1/2", SizeVerdict.UnderStillFits)]
    [InlineData("13 15/32", SizeVerdict.TooSmall)]
    public void Judged_by_the_plan_and_the_finished_part(string measured, SizeVerdict verdict)
    {
        var judged = MeasuredSize.Judge(
            Asked,
            Read(measured),
            Length.FromInches(13, 1, 2),
            Precision.Sixteenth
        );

        Assert.Equal(verdict, judged.Verdict);
    }

    [Fact]
    public void Too_small_says_by_how_much_and_what_to_do_now()
    {
        var judged = MeasuredSize.Judge(
            Asked,
            Read("13 1/4"),
            Length.FromInches(13, 1, 2),
            Precision.Sixteenth
        );

        Assert.Equal(
            "A1 is 1/4 in too small in length: the finished part needs 13 1/2 in. Stop, keep the piece, and press “I spoiled it”. Do not cut other pieces to match.",
            judged.Sentence
        );
    }

    [Theory]
    [InlineData("14mm")] // 14 in asked, the figure right, the unit wrong
    [InlineData("356 in")] // 14 in are 355.6 mm
    public void The_right_figure_in_the_wrong_unit_is_asked_about(string typed)
    {
        var problem = MeasuredSize.ProblemWith(Asked, Read(typed));

        Assert.Contains("wrong unit", problem, StringComparison.Ordinal);
        Assert.Contains("14 in or 356 mm", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("60")]
    [InlineData("0")]
    public void A_size_that_cannot_be_meant_is_asked_about(string typed) =>
        Assert.NotNull(MeasuredSize.ProblemWith(Asked, Read(typed)));

    [Theory]
    [InlineData("13")]
    [InlineData("14 1/16")]
    [InlineData("356 mm")]
    public void Any_size_that_may_be_meant_is_taken(string typed) =>
        Assert.Null(MeasuredSize.ProblemWith(Asked, Read(typed)));

    private static Length Read(string text) => LengthReader.Read(text, UnitSystem.Inch).Value;
}

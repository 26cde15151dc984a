using Bunit;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Web.Features.Progress.Parts;
using Xunit;

namespace ShopClass.Web.Tests.Progress;

/// <summary>What a student's step says of sizes and marks.</summary>
public sealed class StepFactsTests : BunitContext
{
    [Fact]
    public void Sizes_are_told_exactly_as_the_step_has_them_and_every_mark_is_there()
    {
        var step = new Step
        {
            Id = "width:B1",
            Number = 1,
            Kind = StepKind.BringToWidth,
            Skill = Skill.Planing,
            Station = Station.Vise,
            Title = "Bring B1 to 6 1/32 in wide",
            Pieces = ["B1"],
            Reason = "",
            Marks =
            [
                "6 1/32 in from the reference edge, on both faces",
                "this keeps 1/32 in on the width",
            ],
            Leaves =
            [
                new(
                    "B1",
                    Length.FromInches(0, 3, 4),
                    Length.FromInches(6, 1, 32),
                    Length.FromInches(20, 1, 2),
                    PieceUse.Work
                ),
            ],
            Time = new(60, 60, 0, ""),
        };

        var page = Render<StepFacts>(p =>
            p.Add(f => f.Step, step).Add(f => f.Precision, Precision.Sixteenth)
        );

        Assert.Contains("B1, 3/4 × 6 1/32 × 20 1/2 in", page.Markup, StringComparison.Ordinal);
        Assert.Equal(
            ["6 1/32 in from the reference edge, on both faces", "This keeps 1/32 in on the width"],
            page.FindAll("li").Select(li => li.TextContent.Trim())
        );
    }
}

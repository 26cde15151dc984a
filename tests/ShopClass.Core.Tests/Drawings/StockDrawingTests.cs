using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Drawings;

public class StockDrawingTests
{
    private static readonly StockGuide Guide = Made();

    public static TheoryData<double, double> Frames { get; } =
        new()
        {
            { 960, 13 },
            { 358, 13 },
            { 515, 8 },
        };

    [Theory]
    [MemberData(nameof(Frames))]
    public void Every_board_is_drawn_to_one_scale_and_stays_in_the_frame(double width, double text)
    {
        var (group, drawing) = Drawn(new(width, text));

        var boards = drawing.Shapes.OfType<Box>().Where(b => b.Tag is not null).ToList();
        Assert.Equal(group.Options.Sum(o => o.Boards), boards.Count);
        var scale = boards[0].Width / group.Options[0].Shortest.Ticks;
        Assert.All(
            boards,
            box =>
            {
                var number = int.Parse(
                    box.Tag!["option ".Length..],
                    System.Globalization.CultureInfo.InvariantCulture
                );
                var option = group.Options[number - 1];
                Assert.Equal(option.Shortest.Ticks * scale, box.Width, 0.5);
                Assert.Equal(option.Size.Width.Ticks * scale, box.Height, 0.5);
            }
        );
        Assert.All(
            drawing.Shapes.OfType<Box>(),
            box =>
            {
                Assert.InRange(box.X + box.Width, 0, drawing.Width);
                Assert.InRange(box.Y + box.Height, 0, drawing.Height);
            }
        );
    }

    [Fact]
    public void The_words_name_every_board_with_its_work()
    {
        var (group, drawing) = Drawn(DrawingFrame.Wide);

        Assert.All(
            group.Options,
            option =>
            {
                Assert.Contains(
                    GuideWords.Ask(option, UnitSystem.Inch),
                    drawing.TextTwin,
                    StringComparison.Ordinal
                );
                Assert.Contains(
                    GuideWords.Work(option),
                    drawing.TextTwin,
                    StringComparison.Ordinal
                );
            }
        );
    }

    private static (StockGroup Group, Drawing Drawing) Drawn(DrawingFrame frame)
    {
        var group = Guide.Groups[0];
        return (group, StockDrawing.Of(group, group.Options, Guide.Rules, frame));
    }

    private static StockGuide Made()
    {
        var wanted = DemoProjects.Find("wall shelf", UnitSystem.Inch);
        return StockGuide.Make(wanted.Project, wanted.Rules);
    }
}

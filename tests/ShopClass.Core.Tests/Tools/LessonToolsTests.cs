using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Lessons;
using ShopClass.Core.Tools;
using Xunit;

namespace ShopClass.Core.Tests.Tools;

public class LessonToolsTests
{
    private static readonly ToolChest Shop = new(
        [new("Good back saws", "back saw", 2), new("square", "square", 3)],
        [],
        10
    );

    [Fact]
    public void Two_back_saws_are_one_short_for_three_who_saw_at_once()
    {
        var (request, plan) = Three(["back saw", "bench hook", "square"]);

        var tools = LessonTools.For(request, plan, 0, Shop);

        Assert.Equal(["back saw", "square"], tools.Select(t => t.Need.Words));
        Assert.Equal((3, 2, 1), (tools[0].Need.Count, tools[0].Have, tools[0].Wanting));
        Assert.Equal(
            "Back saw: 3 in use at once, the shop has 2: 1 too few, 0:00 into the lesson.",
            tools[0].Sentence
        );
        Assert.Null(tools[1].Sentence);
    }

    [Fact]
    public void With_three_back_saws_they_go_round()
    {
        var (request, plan) = Three(["back saw"]);
        var three = Shop with { Tools = [new("back saw", "back saw", 3)] };

        Assert.Equal(0, LessonTools.For(request, plan, 0, three).Single().Wanting);
    }

    [Fact]
    public void A_dovetail_saw_or_a_small_back_saw_will_do()
    {
        var (request, plan) = Three(["dovetail saw"]);
        var mixed = Shop with
        {
            Tools = [new("back saw", "back saw", 2), new("dovetail saw", "dovetail saw", 1)],
        };

        Assert.Equal(0, LessonTools.For(request, plan, 0, mixed).Single().Wanting);
        Assert.Equal(1, LessonTools.For(request, plan, 0, Shop).Single().Wanting);
    }

    [Fact]
    public void What_is_in_every_kit_is_at_hand_and_what_the_kits_take_is_not_there_for_lessons()
    {
        var (request, plan) = Three(["back saw", "square"]);
        var set = Shop with { Sets = [new("Marking set", [new("square", 1)])] };

        Assert.Equal(
            ["back saw"],
            LessonTools.For(request, plan, 0, set).Select(t => t.Need.Words)
        );
        Assert.Empty(LessonTools.ShortForKits(set, 3));
        Assert.Equal(
            ["The kits of 4 students take 4 squares; the shop has 3."],
            LessonTools.ShortForKits(set, 4)
        );
    }

    [Theory]
    [InlineData("clamps", "clamp", 2)]
    [InlineData("at least three clamps", "clamp", 3)]
    [InlineData("chisels", "chisel", 1)]
    [InlineData("two straight sticks", "winding stick", 2)]
    [InlineData("smoothing plane or scraper", "bench plane or scraper", 1)]
    [InlineData("a tool nobody listed", "a tool nobody listed", 1)]
    public void Words_of_a_step_are_counted(string words, string kind, int count)
    {
        var need = ToolBook.NeedsOf(words).Single();
        Assert.Equal((kind, count), (need.Words, need.Count));
    }

    [Theory]
    [InlineData("glue")]
    [InlineData("damp rag")]
    [InlineData("bench hook")]
    public void What_is_used_up_or_is_a_station_is_no_tool(string words) =>
        Assert.Empty(ToolBook.NeedsOf(words));

    [Fact]
    public void Minutes_since_sharpening_are_shared_and_say_when_it_falls_due()
    {
        var (request, plan) = Three(["back saw"]);
        var monday = new DateTime(2026, 3, 2, 18, 0, 0, DateTimeKind.Utc);
        SawnStep Sawn(int minutes, int hoursAfter) =>
            new(["back saw"], minutes * 60, monday.AddHours(hoursAfter));
        var chest = Shop with { Tools = [new("back saw", "back saw", 2, monday)] };
        var ahead = Sharpening.Ahead(request, plan, MadeUp.FirstDay, (_, _) => false);

        // 8 minutes with two saws are 4 for each; what was sawn before the file came out does not count.
        var state = Sharpening.Of(chest, [Sawn(8, 1), Sawn(50, -1)], ahead).Single();

        Assert.Equal((4, 10, 15), (state.Minutes, state.Limit, state.MinutesAhead));
        Assert.Equal("Evening 1", state.DueIn?.Title);
        Assert.True(Sharpening.Of(chest, [Sawn(20, 1)], []).Single().IsDue);
        Assert.Equal(
            "4 of 10 minutes; no lesson planned saws with it.",
            Sharpening.Of(chest, [Sawn(8, 1)], []).Single().Sentence
        );
        // What is ticked already, and lessons that are over, saw no more.
        Assert.Empty(Sharpening.Ahead(request, plan, MadeUp.FirstDay, (_, _) => true));
        Assert.Empty(Sharpening.Ahead(request, plan, MadeUp.FirstDay.AddDays(1), (_, _) => false));
    }

    [Theory]
    [InlineData("", 1, 240, "Tools[0].Name")]
    [InlineData("back saw", -1, 240, "Tools[0].Count")]
    [InlineData("back saw", 501, 240, "Tools[0].Count")]
    [InlineData("back saw", 1, 9, "SharpenAfter")]
    public void What_cannot_be_is_named_at_its_field(
        string name,
        int count,
        int after,
        string field
    ) =>
        Assert.Equal(
            field,
            Assert
                .Single(ToolChecks.ProblemsIn(new([new(name, "back saw", count)], [], after)))
                .Field
        );

    // Three students, ten minutes each at a bench top, where there is room for all of them at once.
    private static (LessonRequest Request, LessonPlan Plan) Three(string[] tools)
    {
        Step[] steps =
        [
            MadeUp.Step(1, 10) with
            {
                Tools = tools,
                Saw = new(SawKind.BackSaw, 13, default),
                Time = new(0, 600, 0, "made up"),
            },
        ];
        var request = new LessonRequest
        {
            Shop = StationCounts.Usual,
            Lessons = [MadeUp.Evening(0)],
            Demonstrations = [new(Skill.MarkingOut, 0)],
            Students =
            [
                MadeUp.Student("Ada", steps),
                MadeUp.Student("Bo", steps),
                MadeUp.Student("Cleo", steps),
            ],
        };
        return (request, LessonPlanner.Plan(request));
    }
}

using Bunit;
using Microsoft.AspNetCore.Components.Web;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Planning.Reasons;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Plans;

namespace ShopClass.Web.Tests.Plans;

public sealed class PlanPageTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static readonly Length Eleven = Length.FromInches(11, 1, 4);

    private static readonly Length Six = Length.FromInches(6);

    private Classroom _room = default!;

    public async ValueTask InitializeAsync() =>
        _room = await Classroom.OpenAsync(isLeftHanded: true);

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task A_first_visit_makes_stores_and_shows_a_rehearsed_plan()
    {
        await _room.LogAsync(Classroom.Pine);

        var page = Open();
        page.WaitForElement(".stepper", Patience);

        var stored = await NewestAsync();
        Assert.Equal(1, stored!.Number);
        Assert.True(stored.Checked.Rehearsal.Passed);
        Assert.Contains("Rehearsed", page.Markup, StringComparison.Ordinal);
        Assert.Equal(
            [$"/sheets/kit/{stored.Id}?paper=a4", $"/sheets/kit/{stored.Id}?paper=letter"],
            page.FindAll("a[href^='/sheets/kit/']").Select(a => a.GetAttribute("href"))
        );
        Assert.Equal(8, page.FindAll($"a[href^='/sheets/steps/{stored.Id}?layout=']").Count);
        var blanks = page.FindAll("th[scope=row]")
            .Select(th => th.TextContent)
            .Where(t => t.Length == 2);
        Assert.Equal(["A1", "A2", "B1"], blanks);
    }

    [Fact]
    public async Task A_plan_from_before_a_change_says_so_and_a_new_one_is_the_next_version()
    {
        var board = await _room.LogAsync(Classroom.Pine);
        Open().WaitForElement(".stepper", Patience);
        await _room.Store.Boards.SaveAsync(
            _room.Instructor,
            board.Id,
            board.Board with
            {
                Length = board.Board.Length + Length.FromInches(1),
            },
            board.Version,
            Xunit.TestContext.Current.CancellationToken
        );

        var page = Open();
        Assert.Contains("Out of date", page.Markup, StringComparison.Ordinal);
        Assert.Equal(1, (await NewestAsync())!.Number);

        await page.FindAll("button")
            .First(b => b.TextContent.Trim() == "Make a new plan")
            .ClickAsync(new());
        page.WaitForState(
            () => !page.Markup.Contains("Out of date", StringComparison.Ordinal),
            Patience
        );
        Assert.Equal(2, (await NewestAsync())!.Number);
    }

    [Fact]
    public async Task Every_blank_says_why_it_lies_where_it_does()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();
        page.WaitForElement(".stepper", Patience);

        Assert.Equal(["A1", "A2", "B1"], page.FindAll(".blank-whys dt").Select(d => d.TextContent));
        Assert.Equal(
            BlankReasons.Of((await NewestAsync())!.Checked).Select(r => r.Sentence),
            page.FindAll(".blank-whys dd p").Select(p => p.TextContent)
        );
    }

    [Fact]
    public async Task The_page_lists_what_the_craft_likes_and_where_the_spare_is_kept()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();
        page.WaitForElement(".wishes", Patience);

        var plan = (await NewestAsync())!.Checked;
        var wishes = WishesMet.Of(plan);
        Assert.NotEmpty(wishes);
        Assert.Equal(
            wishes.Select(w => $"{(w.IsMet ? "Yes" : "Not here")} {w.Sentence}"),
            page.FindAll(".wishes li").Select(li => li.TextContent.Trim())
        );
        var spare = Spares.Of(plan);
        Assert.NotNull(spare);
        Assert.Contains(
            Spares.Sentence(spare, plan.Request),
            page.Find("section[aria-labelledby=the-craft] > p:last-child").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Another_way_is_shown_beside_the_usual_and_becomes_the_next_version()
    {
        // Wide enough for the rail beside a side, long enough for all of them one after another.
        await _room.LogAsync(
            Classroom.Pine with
            {
                WidthAtStart = Eleven,
                WidthAtMiddle = Eleven,
                WidthAtEnd = Eleven,
            }
        );
        var page = Open();
        page.WaitForElement(".ways button", Patience);
        Assert.Empty(page.FindAll(".way"));

        await page.Find(".ways button").ClickAsync(new());
        page.WaitForElement(".way", Patience);
        Assert.InRange(page.FindAll(".way").Count, 2, 3);
        Assert.Single(page.FindAll(".way .mark"));
        var other = page.FindAll(".way button")[0];
        var name = page.Find($"#{other.GetAttribute("aria-describedby")}").TextContent;
        await other.ClickAsync(new());

        page.WaitForState(() => page.FindAll(".way").Count == 0, Patience);
        var stored = await NewestAsync();
        Assert.Equal((2, false), (stored!.Number, stored.IsOutOfDate));
        var kind = WayKinds.All.Single(k => k.Words() == name);
        Assert.Equal(kind.Goals(), stored.Checked.Request.Goals);
    }

    [Fact]
    public async Task A_true_board_may_be_sawn_straight_to_size_and_the_plan_says_which_it_is()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();
        await page.WaitForElement(".sizings button", Patience).ClickAsync(new());
        page.WaitForElement(".sizings .way", Patience);
        Assert.Contains("for the habit", page.Find(".sizing").TextContent);
        Assert.Equal(2, page.FindAll(".sizings .way").Count);

        await page.Find(".sizings .way button").ClickAsync(new());

        page.WaitForState(
            () => page.Find(".sizing").TextContent.Contains("straight to finished length"),
            Patience
        );
        var stored = (await NewestAsync())!;
        Assert.Equal((2, false), (stored.Number, stored.IsOutOfDate));
        Assert.Equal(Length.Zero, stored.Checked.Request.Rules.LengthAllowance);

        // Once chosen it stays chosen, until the other is.
        var again = Open();
        await again.WaitForElement(".sizings button", Patience).ClickAsync(new());
        again.WaitForElement(".sizings .way", Patience);
        await again.Find(".sizings .way button").ClickAsync(new());
        again.WaitForState(
            () => again.Find(".sizing").TextContent.Contains("for the habit"),
            Patience
        );
        Assert.Equal(3, (await NewestAsync())!.Number);
    }

    [Fact]
    public async Task Where_there_is_no_other_way_it_says_so_and_shows_none()
    {
        // Every part takes the whole width, so they lie one after another whatever is put first.
        await _room.LogAsync(
            Classroom.Pine with
            {
                WidthAtStart = Six,
                WidthAtMiddle = Six,
                WidthAtEnd = Six,
            }
        );
        var page = Open();
        await page.WaitForElement(".ways button", Patience).ClickAsync(new());

        page.WaitForState(
            () =>
                page.FindAll(".ways button").Count == 0
                && page.FindAll(".ways [role=status]").Count == 0,
            Patience
        );
        Assert.Contains(
            "no other layout",
            page.Find(".ways").TextContent,
            StringComparison.Ordinal
        );
        Assert.Empty(page.FindAll(".way"));
    }

    [Fact]
    public async Task A_board_too_small_comes_with_the_proof()
    {
        await _room.LogAsync(Classroom.Pine with { Length = Length.FromInches(30) });
        var page = Open();
        page.WaitForElement(".verdict", Patience);

        var verdict = (await NewestAsync())!.Checked.Verdict;
        Assert.NotEmpty(verdict.Proofs);
        Assert.All(
            verdict.Proofs,
            p => Assert.Contains(p, page.Find(".verdict").TextContent, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Without_a_board_it_asks_for_one() =>
        Assert.Contains("There is no board yet.", Open().Markup, StringComparison.Ordinal);

    [Fact]
    public async Task The_work_is_stepped_through_by_button_key_slider_and_list()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();
        page.WaitForElement(".stepper", Patience);
        var steps = (await NewestAsync())!.Work.Steps;
        Assert.Equal($"Step 1 of {steps.Count}", Where(page));

        await page.FindAll(".stepper-bar .button")[1].ClickAsync(new());
        Assert.Equal($"Step 2 of {steps.Count}", Where(page));
        Assert.Equal(steps[1].Title, page.Find(".step-title").TextContent);

        await page.Find(".stepper").KeyDownAsync(new KeyboardEventArgs { Key = "ArrowLeft" });
        Assert.Equal($"Step 1 of {steps.Count}", Where(page));

        await page.Find(".stepper input[type=range]").InputAsync($"{steps.Count}");
        Assert.Equal(steps[^1].Title, page.Find(".step-title").TextContent);

        await page.FindAll(".all-steps button")[4].ClickAsync(new());
        Assert.Equal($"Step 5 of {steps.Count}", Where(page));
    }

    [Fact]
    public async Task Every_step_says_how_to_hold_and_do_it_and_about_how_long_it_takes()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();
        page.WaitForElement(".stepper", Patience);
        var steps = (await NewestAsync())!.Work.Steps;

        foreach (var step in steps)
        {
            await page.Find(".stepper input[type=range]").InputAsync($"{step.Number}");
            var card = page.Find(".step-card").TextContent;
            Assert.Contains(step.Hold, card, StringComparison.Ordinal);
            Assert.Contains(step.Technique, card, StringComparison.Ordinal);
            Assert.Contains(step.Reason, card, StringComparison.Ordinal);
            Assert.Contains(" min", card, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_left_handed_student_has_the_waste_on_the_left()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();
        page.WaitForElement(".stepper", Patience);
        var sawn = (await NewestAsync())!.Work.Steps.First(s =>
            s.Kind is Core.Sawing.Steps.StepKind.CutToLength && s.Saw is not null
        );

        await page.Find(".stepper input[type=range]").InputAsync($"{sawn.Number}");

        Assert.Contains(
            "waste is free on the left",
            page.Find(".step-card").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Another_student_finds_no_plan_here()
    {
        await _room.LogAsync(Classroom.Pine);

        var page = Open(new StudentViewer(Guid.NewGuid(), _room.Course.Id));

        Assert.DoesNotContain("Small shelf", page.Markup, StringComparison.Ordinal);
    }

    private static string Where(IRenderedComponent<PlanPage> page) =>
        page.Find(".stepper-where").TextContent;

    private Task<Data.Plans.StoredPlan?> NewestAsync() =>
        _room.Store.Plans.NewestAsync(_room.Instructor, _room.Student.Id, _room.Project.Id);

    private IRenderedComponent<PlanPage> Open(Viewer? viewer = null) =>
        _room.Open<PlanPage>(
            p =>
                p.Add(x => x.CourseId, _room.Course.Id)
                    .Add(x => x.StudentId, _room.Student.Id)
                    .Add(x => x.ProjectId, _room.Project.Id),
            viewer
        );
}

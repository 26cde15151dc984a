using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;
using ShopClass.Web.Features.Remakes;

namespace ShopClass.Web.Tests.Remakes;

public sealed class RemakePageTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private Classroom _room = default!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Classroom.OpenAsync();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task A_spoiled_side_is_chosen_an_offcut_offered_and_the_choice_kept()
    {
        var planId = await PlanAsync(Classroom.Pine with { Length = Length.FromInches(96) });
        var page = Open();

        await page.Find("#spoiled-blank").ChangeAsync(new() { Value = "A2" });
        await page.Find("form").SubmitAsync();
        page.WaitForElement("#remake-Offcut", Patience);
        await page.FindAll(".remake button")[0].ClickAsync(new());

        var kept = Assert.Single(
            await _room.Store.Remakes.OfPlanAsync(_room.Instructor, planId, Cancel)
        );
        Assert.Equal((new BlankKey("A", 2), RemakeWay.Offcut), (kept.Spoiled, kept.Option.Way));
    }

    [Fact]
    public async Task What_is_closed_is_said_with_its_reason()
    {
        await PlanAsync(Classroom.Pine);
        var page = Open();

        await page.Find("#spoiled-blank").ChangeAsync(new() { Value = "B1" });
        await page.Find("form").SubmitAsync();
        page.WaitForElement("#ways-out", Patience);

        Assert.Contains("The class has no spare B.", page.Markup, StringComparison.Ordinal);
        Assert.Contains(
            "Nothing on the rack is free to take.",
            page.Markup,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_rack_is_offered_to_the_instructor_and_not_shown_to_a_student()
    {
        await PlanAsync(Classroom.Pine);
        var rack = _room.Store.Services.GetRequiredService<RackStore>();
        var piece = new RackPiece
        {
            Id = "",
            Board = Classroom.Pine with { Name = "the short pine" },
            Place = "rack 2",
        };
        Assert.True(
            (await rack.AddAsync(_room.Instructor, _room.Course.Id, piece, Cancel)).IsSaved
        );

        foreach (
            var (viewer, isOffered) in new[]
            {
                (_room.Instructor, true),
                (new StudentViewer(_room.Student.Id, _room.Course.Id), false),
            }
        )
        {
            var page = Open(viewer);
            await page.Find("#spoiled-blank").ChangeAsync(new() { Value = "B1" });
            await page.Find("form").SubmitAsync();
            page.WaitForElement("#ways-out", Patience);

            Assert.Equal(
                isOffered,
                page.Markup.Contains("the short pine, rack 2", StringComparison.Ordinal)
            );
        }
    }

    [Fact]
    public async Task Nothing_chosen_and_a_sound_piece_longer_than_the_blank_are_said_at_the_field()
    {
        await PlanAsync(Classroom.Pine);
        var page = Open();

        await page.Find("form").SubmitAsync();
        Assert.Contains(
            "Choose the part",
            page.Find("#spoiled-blank-problem").TextContent,
            StringComparison.Ordinal
        );

        await page.Find("#spoiled-blank").ChangeAsync(new() { Value = "A1" });
        await page.Find("#spoiled-left").ChangeAsync(new() { Value = "TheStart" });
        await page.Find("#spoiled-length").ChangeAsync(new() { Value = "40" });
        await page.Find("form").SubmitAsync();

        Assert.Contains(
            "must be shorter than that",
            page.Find(".field-problem").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("40", page.Find("#spoiled-length").GetAttribute("value"));
        Assert.Empty(page.FindAll("#ways-out"));
    }

    [Fact]
    public void Without_a_plan_nothing_can_be_spoiled()
    {
        Assert.Contains("There is no plan yet", Open().Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<RemakePage> Open(Viewer? viewer = null) =>
        _room.Open<RemakePage>(
            p =>
                p.Add(x => x.CourseId, _room.Course.Id)
                    .Add(x => x.StudentId, _room.Student.Id)
                    .Add(x => x.ProjectId, _room.Project.Id),
            viewer
        );

    private async Task<Guid> PlanAsync(Board board)
    {
        await _room.LogAsync(board);
        var (student, project) = (_room.Student.Id, _room.Project.Id);
        var request = await _room.Store.Plans.RequestAsync(
            _room.Instructor,
            student,
            project,
            Cancel
        );
        var plan = CheckedPlan.Make(request!, null, Cancel);
        return (await _room.Store.Plans.SaveAsync(_room.Instructor, student, project, plan, Cancel))
            .Value!
            .Id;
    }
}

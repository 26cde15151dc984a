using System.Text;
using Bunit;
using ShopClass.Data.Learning;
using ShopClass.Web.Features.Courses;
using ShopClass.Web.Features.Orders;

namespace ShopClass.Web.Tests.Courses;

/// <summary>What an instructor is shown of the last course of the same project, and what an order takes from it.</summary>
public sealed class StartTests : IAsyncLifetime
{
    private const string Last = """
        { "shopclass": 1, "kind": "course", "course": { "name": "Spring", "unit": "inch",
          "projects": [ { "name": "Shelf", "parts": [
            { "letter": "A", "name": "side", "quantity": 2, "thickness": "3/4 in", "width": "6 in", "length": "14 in" },
            { "letter": "B", "name": "rail", "quantity": 1, "thickness": "3/4 in", "width": "2 in", "length": "20 in" } ] } ],
          "students": [ { "name": "Ada" }, { "name": "Bo" }, { "name": "Cleo" } ],
          "learned": {
            "pace": [
              { "step": "rough rip", "percent": 130, "steps": 40 },
              { "step": "rough rip", "species": "hard-maple", "percent": 155, "steps": 12 } ],
            "projects": [ { "project": "Shelf", "waste": 41, "plans": 11, "parts": [
              { "part": "A", "spoiled": 3, "made": 24 }, { "part": "B", "spoiled": 0, "made": 12 } ] } ] } } }
        """;

    private Office office = default!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => office = await Office.OpenAsync();

    public ValueTask DisposeAsync() => office.DisposeAsync();

    [Fact]
    public async Task The_figures_of_the_last_course_are_shown_with_their_basis_and_taken_by_choice()
    {
        await BringAsync();
        await office.Store.Projects.CreateAsync(
            office.Instructor,
            office.Course.Id,
            "shelf",
            Cancel
        );
        var page = office.Open<CoursePage>(p => p.Add(x => x.CourseId, office.Course.Id));
        var offer = page.Find(".start-offers").TextContent;
        foreach (
            var said in new[]
            {
                "From “Spring”",
                "Rough rip",
                "× 1.30",
                "40 timed steps",
                "hard maple",
                "× 1.55",
                "41 % waste, from 11 plans",
                "3 of 24 A spoiled",
            }
        )
            Assert.Contains(said, offer, StringComparison.OrdinalIgnoreCase);
        Assert.Null((await LookAsync()).Taken);

        await page.FindAll(".start-offers button")
            .First(b => b.TextContent == "Begin with these")
            .ClickAsync(new());

        Assert.Equal("Spring", (await LookAsync()).Taken!.Source);
        Assert.Empty(page.FindAll(".start-offers"));
    }

    [Fact]
    public async Task Beginning_with_the_usual_rates_is_asked_once()
    {
        await BringAsync();
        await office.Store.Projects.CreateAsync(
            office.Instructor,
            office.Course.Id,
            "Shelf",
            Cancel
        );
        var page = office.Open<CoursePage>(p => p.Add(x => x.CourseId, office.Course.Id));

        await page.FindAll(".start-offers button")
            .First(b => b.TextContent == "Begin with the usual rates")
            .ClickAsync(new());

        Assert.Equal(StartChoice.Left, (await LookAsync()).Choice);
        Assert.Empty(
            office
                .Open<CoursePage>(p => p.Add(x => x.CourseId, office.Course.Id))
                .FindAll(".start-offers")
        );
    }

    [Fact]
    public async Task An_order_takes_waste_and_spares_from_the_last_course_and_says_so()
    {
        var course = await BringAsync();
        var project = Assert.Single(
            await office.Store.Projects.ListAsync(office.Instructor, course, Cancel)
        );
        Assert.Equal("30", await WasteAsync());
        await office.Store.Starts.TakeAsync(office.Instructor, course, null, Cancel);

        var page = Order();

        Assert.Equal("41", await WasteAsync());
        // Three students and a spare kit: 8 sides, of which 3 in 24 are spoiled.
        Assert.Equal("1", page.Find("#spare-A").GetAttribute("value"));
        Assert.Equal("0", page.Find("#spare-B").GetAttribute("value"));
        Assert.Contains(
            "41 % waste, from 11 plans; 1 spare of A, since 3 of 24 A spoiled.",
            page.Find(".last-course").TextContent,
            StringComparison.Ordinal
        );

        IRenderedComponent<OrderPage> Order() =>
            office.Open<OrderPage>(p =>
                p.Add(x => x.CourseId, course).Add(x => x.ProjectId, project.Id)
            );

        Task<string?> WasteAsync() =>
            Task.FromResult(Order().Find("#order-waste").GetAttribute("value"));
    }

    private async Task<StartView> LookAsync() =>
        (await office.Store.Starts.FindAsync(office.Instructor, office.Course.Id, Cancel))!;

    private async Task<Guid> BringAsync()
    {
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(Last));
        var outcome = await office.Store.Files.ImportAsync(office.Instructor, file, null, Cancel);
        Assert.Empty(outcome.Problems);
        return outcome.CourseId!.Value;
    }
}

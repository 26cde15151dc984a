using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace ShopClass.EndToEnd;

/// <summary>Everything for the lessons in one file: every plan, the plan of lessons, then one print set, read back.</summary>
[Collection(OneApp.Name)]
public sealed class PrintSetTests(RunningApp app)
{
    private static readonly string[] Sheets =
    [
        "Step cards, for each student",
        "Lesson sheets, one for each lesson",
        "Wall sheets, one for each lesson",
        "Lesson checklists, one for each student",
        "Tools for the lessons",
        "Kit labels",
    ];

    [Fact]
    public async Task An_instructor_prints_plans_steps_lessons_tools_and_labels_in_one_set()
    {
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var watch = System.Diagnostics.Stopwatch.StartNew();
        var project = (await DemoPages.All(desk)).Single(p => p.Name == "project").Path;
        var lessons = await LessonTests.MakeAsync(desk);
        await Assertions
            .Expect(desk.Page.GetByText("Lesson by lesson"))
            .ToBeVisibleAsync(new() { Timeout = 60_000 });
        await desk.Open(
            lessons.Replace("/lessons", "/print", StringComparison.Ordinal)
                + "?project="
                + project[(project.LastIndexOf('/') + 1)..]
        );
        await desk.WaitUntilQuiet();
        await Assertions.Expect(desk.Page.GetByText("no lessons planned yet")).ToHaveCountAsync(0);
        await SetAddressAsync(desk);
        foreach (var sheet in Sheets)
            await desk.Page.GetByText(sheet, new() { Exact = true }).ClickAsync();
        var students = await desk
            .Page.GetByRole(AriaRole.Group, new() { Name = "For whom" })
            .GetByRole(AriaRole.Checkbox)
            .CountAsync();

        var pdf = await MakeAsync(desk);
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await File.WriteAllTextAsync(
                Path.Combine(folder, "print-set.txt"),
                $"From the front page to the file, every plan and the plan of lessons made on the way: {watch.Elapsed.TotalSeconds:0} s.",
                TestContext.Current.CancellationToken
            );

        using var set = PdfDocument.Open(pdf);
        Assert.True(set.TryGetBookmarks(out var outline));
        var titles = outline.GetNodes().Select(n => n.Title).ToList();
        int Count(string part) => titles.Count(t => t.Contains(part, StringComparison.Ordinal));
        // The twelve of the demo have boards that do; who joined in another test may have none.
        var kits = Count(": kit sheet for ");
        Assert.InRange(kits, 12, students - 1);
        Assert.Equal(kits, Count(": steps for "));
        Assert.InRange(Count(": lessons of "), kits, students - 1);
        Assert.Equal(1, Count(": tools for the lessons"));
        Assert.Equal(1, Count("Kit labels"));
        Assert.True(Count(": who does what, lesson ") > 1);
        Assert.Equal(
            Count(": who does what, lesson "),
            titles.Count(t => Regex.IsMatch(t, ": lesson [0-9]+, "))
        );
        // Each page says which it is of its sheet; only labels, bare, do not.
        var texts = set.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text)));
        var bare = texts
            .Where(t => !Regex.IsMatch(t, "(?<!Plan )[0-9]+ of [0-9]+", RegexOptions.IgnoreCase))
            .ToList();
        Assert.Equal((kits + 29) / 30, bare.Count);
        // Each label says by which plan its kit is made up.
        Assert.Equal(
            kits,
            bare.Sum(t => Regex.Count(t, "Plan [0-9]+ of [0-9]+ [A-Z][a-z]+ 20[0-9]{2}"))
        );
        desk.SawNothingStrange();
    }

    private static async Task SetAddressAsync(Person desk)
    {
        await desk.Page.GetByText("Labels and codes").ClickAsync();
        var address = desk.Page.GetByLabel("Address of this app in the shop");
        await address.FillAsync("http://192.168.1.20:5000");
        await address.BlurAsync();
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true })
            .ClickAsync();
        await Assertions.Expect(address).ToHaveValueAsync("http://192.168.1.20:5000");
        // The panel stays open and says that it is kept.
        await Assertions
            .Expect(desk.Page.GetByText("Saved.", new() { Exact = true }))
            .ToBeVisibleAsync();
        await desk.WaitUntilQuiet();
    }

    private static async Task<byte[]> MakeAsync(Person desk)
    {
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Make the print set" })
            .ClickAsync();
        var open = desk.Page.GetByRole(AriaRole.Link, new() { Name = "Open it to print" });
        await Assertions.Expect(open).ToBeVisibleAsync(new() { Timeout = 120_000 });
        var folder = Environment.GetEnvironmentVariable("SHOPCLASS_LOOK");
        if (folder is not null)
            await desk.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, "print-set.png"), FullPage = true }
            );
        await Assertions.Expect(desk.Page.GetByText("Kit labels:")).ToHaveCountAsync(0);
        var set = await desk.Page.APIRequest.GetAsync(
            desk.AddressOf((await open.GetAttributeAsync("href"))!)
        );
        var pdf = await set.BodyAsync();
        if (folder is not null)
            await File.WriteAllBytesAsync(
                Path.Combine(folder, "whole-set.pdf"),
                pdf,
                TestContext.Current.CancellationToken
            );
        return pdf;
    }
}

using System.Text;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>A course brought in from a file starts from what the last one learned, by choice, down to the order of its wood.</summary>
[Collection(OneApp.Name)]
public sealed class NextCourseTests(RunningApp app)
{
    private const string Last = """
        { "shopclass": 1, "kind": "course", "course": { "name": "Rails in spring", "unit": "inch",
          "projects": [ { "name": "Coat rail", "parts": [
            { "letter": "A", "name": "rail", "quantity": 1, "thickness": "3/4 in", "width": "4 in", "length": "20 in" },
            { "letter": "B", "name": "peg", "quantity": 4, "thickness": "3/4 in", "width": "3/4 in", "length": "4 in" } ] } ],
          "students": [ { "name": "Ada" }, { "name": "Bo" }, { "name": "Cleo" } ],
          "learned": {
            "pace": [
              { "step": "rough crosscut", "percent": 120, "steps": 61 },
              { "step": "rough rip", "percent": 130, "steps": 40 },
              { "step": "rough rip", "species": "hard-maple", "percent": 155, "steps": 12 } ],
            "projects": [ { "project": "Coat rail", "waste": 41, "plans": 11, "parts": [
              { "part": "A", "spoiled": 1, "made": 12 }, { "part": "B", "spoiled": 5, "made": 53 } ] } ] } } }
        """;

    [Fact]
    public async Task Pace_waste_and_spoilage_come_with_the_file_and_are_used_once_taken()
    {
        await using var desk = await Person.AtADesk(app);
        var page = desk.Page;
        await desk.OpenDemoAsInstructor();
        await desk.Open("/courses");
        await page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "rails.json",
                    MimeType = "application/json",
                    Buffer = Encoding.UTF8.GetBytes(Last),
                }
            );
        await page.GetByRole(AriaRole.Link, new() { Name = "Rails in spring" }).First.ClickAsync();
        var offer = page.Locator(".start-offers");
        await Expect(offer).ToContainTextAsync("From the course file");
        await Expect(offer).ToContainTextAsync("41 % waste, from 11 plans");
        await Look(desk, "next-offer");
        await page.GetByRole(
                AriaRole.Button,
                new() { Name = "Begin with these: From the course file" }
            )
            .ClickAsync();
        await Expect(offer).ToHaveCountAsync(0);

        var course = new Uri(page.Url).AbsolutePath;
        await desk.Open($"{course}/materials");
        await page.Locator("a[href*='/materials/orders/']").First.ClickAsync();
        await Expect(page.Locator("#order-waste")).ToHaveValueAsync("41");
        await Expect(page.Locator("#spare-A")).ToHaveValueAsync("1");
        await Expect(page.Locator("#spare-B")).ToHaveValueAsync("2");
        await Expect(page.Locator(".last-course"))
            .ToContainTextAsync("2 spares of B, since 5 of 53 B spoiled");
        Assert.Empty(await AccessibilityTests.FaultsOf(desk, "an order from the last course"));
        await Look(desk, "next-order");
        await page.SetViewportSizeAsync(390, 844);
        await Look(desk, "next-order-phone");
        desk.SawNothingStrange();
    }

    private static async Task Look(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await person.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
            );
    }

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}

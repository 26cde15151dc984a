using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace ShopClass.EndToEnd;

/// <summary>The main job as a newcomer does it, from the first start to the kit sheet, and once more after a restart.</summary>
public sealed class WholeJobTests(RunningApp app) : IClassFixture<RunningApp>
{
    private const string SixParts = """
        Letter	Part	Qty	Thickness	Width	Length	Notes
        A	side	2	3/4	5	12	dado for the shelf
        B	shelf	1	3/4	5	16 1/2	fits the dados
        C	top	1	3/4	5	18	overhangs
        D	rail	1	3/4	2	16	between the sides
        E	cleat	2	3/4	1	5	under the shelf
        F	peg	2	3/4	3/4	4	one strip, crosscut last
        """;

    [Fact]
    public async Task From_an_empty_store_to_the_kit_sheet_and_still_there_after_a_restart()
    {
        await using var instructor = await Person.AtADesk(app);
        var page = instructor.Page;
        await CreateTheAccount(instructor);

        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Tuesday boxes");
        await Press(page, "Begin the course");
        await page.GetByRole(AriaRole.Link, new() { Name = "Tuesday boxes" }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Tuesday boxes" }))
            .ToBeVisibleAsync();
        var coursePath = new Uri(page.Url).AbsolutePath;

        await page.GetByLabel("New project").FillAsync("Peg shelf");
        await Press(page, "Begin the parts list");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Peg shelf" }))
            .ToBeVisibleAsync();
        await PasteTheParts(page);

        await instructor.Open(coursePath);
        await page.GetByLabel("New student").FillAsync("Odile Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Odile Brandt" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Log a board" }).First.ClickAsync();
        await LogAKnottyBoard(page);

        await Expect(page.GetByText(new Regex("fits", RegexOptions.IgnoreCase)).First)
            .ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Make the plan" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        await TakeEveryStep(page);
        var planPath = new Uri(page.Url).AbsolutePath;
        await TheKitSheetSaysIt(instructor);
        instructor.SawNothingStrange();

        app.Restart();
        await using var later = await Person.AtADesk(app);
        await SignIn(later);
        await later.Open(planPath);
        await Expect(later.Page.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        await Expect(later.Page.GetByText("Out of date")).ToHaveCountAsync(0);
        await TheKitSheetSaysIt(later);
    }

    private static async Task CreateTheAccount(Person instructor)
    {
        await instructor.Open("/");
        var page = instructor.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Create the instructor's account" })
            .ClickAsync();
        await page.GetByLabel("Name to sign in with").FillAsync("mistress-of-saws");
        await page.GetByLabel("Password", new() { Exact = true }).FillAsync("slow strokes win");
        await page.GetByLabel("The same password again").FillAsync("slow strokes win");
        await Press(page, "Create the account");
        await page.WaitForURLAsync("**/courses");
        await instructor.Settle();
    }

    private static async Task SignIn(Person instructor)
    {
        await instructor.Open("/account/sign-in");
        var page = instructor.Page;
        await page.GetByLabel("Name", new() { Exact = false }).First.FillAsync("mistress-of-saws");
        await page.GetByLabel("Password", new() { Exact = true }).FillAsync("slow strokes win");
        await page.Locator("main")
            .GetByRole(AriaRole.Button, new() { Name = "Sign in" })
            .ClickAsync();
        await page.WaitForURLAsync("**/courses");
        await instructor.Settle();
    }

    private static async Task PasteTheParts(IPage page)
    {
        await Press(page, "Paste from a spreadsheet");
        await page.GetByLabel("Rows of the parts list").FillAsync(SixParts);
        await Press(page, "Show what it says");
        await Press(page, "Add these 6 parts");
        await Expect(page.GetByText("9 pieces")).ToBeVisibleAsync();
        await Expect(page.Locator("svg[role=img]:visible").First).ToBeVisibleAsync();
    }

    private static async Task LogAKnottyBoard(IPage page)
    {
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Log a board" }))
            .ToBeVisibleAsync();
        await Fill(page, "What you call it", "The knotty one");
        await Fill(page, "Wood", "eastern white pine");
        await Fill(page, "Thickness, at the thinnest place", "3/4");
        await Fill(page, "Length", "8'");
        await page.GetByLabel("Same width all along").UncheckAsync();
        await Fill(page, "Width at the start", "7 1/4");
        await Fill(page, "Width in the middle", "7 1/4");
        await Fill(page, "Width at the far end", "7 3/16");
        await Fill(page, "Trim at the start", "1");
        await Fill(page, "Trim at the far end", "1 1/2");
        await Press(page, "Add a bad place by numbers");
        await Fill(page, "Begins, from the start", "30");
        await Fill(page, "Ends, from the start", "31 1/2");
        await Fill(page, "Begins, from the near edge", "2");
        await Fill(page, "Ends, from the near edge", "3 1/4");
        await Press(page, "Log this board");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Boards for Peg shelf" }))
            .ToBeVisibleAsync();
    }

    private static async Task TakeEveryStep(IPage page)
    {
        var where = page.Locator(".stepper-where");
        var steps = int.Parse(
            Regex.Match(await where.InnerTextAsync(), @"of (\d+)").Groups[1].Value
        );
        Assert.InRange(steps, 20, 200);
        await page.GetByRole(AriaRole.Button, new() { Name = "Next step" }).FocusAsync();
        for (var step = 2; step <= steps; step++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
            await Expect(where).ToContainTextAsync($"{step} of {steps}");
        }

        await Expect(page.Locator(".step-title"))
            .ToContainTextAsync(new Regex("finish", RegexOptions.IgnoreCase));
    }

    private static async Task TheKitSheetSaysIt(Person instructor)
    {
        foreach (var paper in (string[])["A4", "Letter"])
        {
            var href = await instructor
                .Page.GetByRole(AriaRole.Link, new() { Name = $"Kit sheet, {paper}" })
                .GetAttributeAsync("href");
            var answer = await instructor.Page.APIRequest.GetAsync(instructor.AddressOf(href!));
            Assert.Equal("application/pdf", answer.Headers["content-type"]);
            using var pdf = PdfDocument.Open(await answer.BodyAsync());
            var words = string.Join(
                ' ',
                pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text)
            );
            Assert.Contains("Peg shelf", words, StringComparison.Ordinal);
            Assert.Contains("Odile Brandt", words, StringComparison.Ordinal);
            Assert.Contains($"Page 1 of {pdf.NumberOfPages}", words, StringComparison.Ordinal);
        }
    }

    private static Task Fill(IPage page, string label, string text) =>
        page.GetByLabel(label, new() { Exact = true }).FillAsync(text);

    private static Task Press(IPage page, string name) =>
        page.GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}

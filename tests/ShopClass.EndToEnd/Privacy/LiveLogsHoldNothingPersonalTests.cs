using Microsoft.Playwright;

namespace ShopClass.EndToEnd.Privacy;

/// <summary>
/// An instructor's and a student's evening on live pages, with slips and a store that breaks; then everything the app and
/// its circuits logged, from Debug up, is read.
/// </summary>
public sealed class LiveLogsHoldNothingPersonalTests(LoggedApp app) : IClassFixture<LoggedApp>
{
    private const string Password = "slow strokes grizzlemoor";

    // Words nobody else writes: what was typed is known again wherever it turns up.
    private readonly HashSet<string> secrets = new(StringComparer.Ordinal)
    {
        "grizzlemoor",
        "Quillfeather",
        "Wobblestone",
        "Mirkwood",
        "Nettlewick",
        "Thistledown",
        "Fernhollow",
        "Larkspur",
        "sawmistress",
    };

    [Fact]
    public async Task No_name_note_password_or_code_typed_on_a_live_page_is_in_any_line()
    {
        await using var person = await Person.AtADesk(app);
        var page = person.Page;
        var course = await BeginAsync(person);
        var project = await BuildAsync(person, course);
        await StudentsAsync(person, course);
        await BoardAsync(person, course, project);
        await CodesAsync(person, course);
        await JoinAsync(course);
        await BreakAsync(person, course);

        // The circuits were logged, and so was the failure with its exception: there is something to read.
        Assert.Contains(
            app.Lines,
            l => l.Contains("Components.Server.Circuits", StringComparison.Ordinal)
        );
        Assert.Contains(
            app.Lines,
            l =>
                l.StartsWith("Error", StringComparison.Ordinal)
                && l.Contains("SqliteException", StringComparison.Ordinal)
        );
        Assert.True(!Telling().Any(), string.Join('\n', Telling().Take(5)));
        // And a line that tells would have been found.
        app.Write("Quillfeather");
        Assert.Single(Telling());
        Assert.NotNull(page);
    }

    private IEnumerable<string> Telling() =>
        app.Lines.Where(l => secrets.Any(s => l.Contains(s, StringComparison.OrdinalIgnoreCase)));

    private static async Task<string> BeginAsync(Person person)
    {
        await person.Open("/account/first");
        var page = person.Page;
        await page.GetByLabel("Name to sign in with").FillAsync("sawmistress");
        await page.GetByLabel("Password", new() { Exact = true }).FillAsync(Password);
        await page.GetByLabel("The same password again").FillAsync(Password);
        await Press(page, "Create the account");
        await page.WaitForURLAsync("**/courses");
        await person.Settle();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Fernhollow evenings");
        await Press(page, "Begin the course");
        await page.GetByRole(AriaRole.Link, new() { Name = "Fernhollow evenings" })
            .First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Fernhollow evenings" }))
            .ToBeVisibleAsync();
        return new Uri(page.Url).AbsolutePath;
    }

    private static async Task<string> BuildAsync(Person person, string course)
    {
        var page = person.Page;
        await page.GetByLabel("New project").FillAsync("Larkspur shelf");
        await Press(page, "Begin the parts list");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Larkspur shelf" }))
            .ToBeVisibleAsync();
        var project = new Uri(page.Url).AbsolutePath;
        await Press(page, "Paste from a spreadsheet");
        await page.GetByLabel("Rows of the parts list")
            .FillAsync(
                "Letter\tPart\tQty\tThickness\tWidth\tLength\tNotes\nA\tside\t2\t3/4\t5\t12\tThistledown note\nB\tshelf\t1\t3/4\t5\t16"
            );
        await Press(page, "Show what it says");
        await Press(page, "Add these 2 parts");
        await Expect(page.GetByText("3 pieces")).ToBeVisibleAsync();
        // A joint that cannot be, with a note.
        await page.Locator("#add-joint").ClickAsync();
        await page.GetByLabel("Note: new joint").FillAsync("Thistledown again");
        await page.GetByLabel("Note: new joint").BlurAsync();
        await person.Open(course);
        return project;
    }

    private static async Task StudentsAsync(Person person, string course)
    {
        var page = person.Page;
        await page.GetByLabel("New student").FillAsync("Quillfeather");
        await page.GetByLabel("Alias (if they prefer one)").FillAsync("Wobblestone");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Wobblestone" }))
            .ToBeVisibleAsync();
        // A name too long is refused, and the same name twice may be.
        await page.GetByLabel("New student").EvaluateAsync("i => i.removeAttribute('maxlength')");
        await page.GetByLabel("New student")
            .FillAsync(string.Concat(Enumerable.Repeat("Nettlewick ", 30)));
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Expect(page.Locator("#student-name-problem")).Not.ToBeEmptyAsync();
        await person.Open(course + "/techniques");
        await page.GetByLabel("In your words: Rip", new() { Exact = true })
            .FillAsync("Thistledown strokes");
        await page.GetByLabel("In your words: Rip", new() { Exact = true }).BlurAsync();
        await person.Open(course);
    }

    private static async Task BoardAsync(Person person, string course, string project)
    {
        var page = person.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Wobblestone" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Log a board" }).First.ClickAsync();
        async Task Fill(string label, string text) =>
            await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        await Fill("What you call it", "Mirkwood plank");
        await Fill("Wood", "eastern white pine");
        await Fill("Thickness, at the thinnest place", "3/4");
        await Fill("Length", "96");
        await page.GetByLabel("Same width all along").SetCheckedAsync(true);
        await Fill("Width", "7 1/4");
        await Fill("Trim at the start", "1");
        await Fill("Trim at the far end", "1");
        await Press(page, "Log this board");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Boards for Larkspur shelf" }))
            .ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Make the plan" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        Assert.NotEqual(course, project);
    }

    private string oneTime = "";

    private async Task CodesAsync(Person person, string course)
    {
        var page = person.Page;
        await person.Open(course + "/joining");
        await Press(page, "Open with a new code");
        Remember(await page.Locator(".door .door-code").InnerTextAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Code for a phone of Wobblestone" })
            .ClickAsync();
        oneTime = await page.Locator(".note .door-code").InnerTextAsync();
        Remember(oneTime);
        await person.Open(course + "/people");
        await Press(page, "Invite a helper");
        Remember(await page.Locator(".invitation-code").InnerTextAsync());
    }

    private async Task JoinAsync(string course)
    {
        await using var phone = await Person.OnAPhone(app);
        await phone.Open("/join");
        await phone.Page.GetByRole(AriaRole.Textbox).First.FillAsync(oneTime);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Go on" }).ClickAsync();
        await phone
            .Page.GetByRole(AriaRole.Button, new() { Name = "Yes, I am Wobblestone" })
            .ClickAsync();
        await phone.Page.WaitForURLAsync("**/my/steps**");
        // A live page of the student's own.
        await phone.Open(course);
        await Expect(phone.Page.Locator("h1")).ToBeVisibleAsync();
    }

    private async Task BreakAsync(Person person, string course)
    {
        var page = person.Page;
        await person.Open(course);
        await page.GetByLabel("New student").FillAsync("Nettlewick");
        await app.BreakAsync("Students");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        for (
            var tries = 0;
            tries < 100 && !app.Lines.Any(l => l.StartsWith("Error", StringComparison.Ordinal));
            tries++
        )
            await Task.Delay(100, TestContext.Current.CancellationToken);
    }

    /// <summary>A code as it is shown, and as it is kept: without its gap.</summary>
    private void Remember(string code) =>
        secrets.UnionWith([code.Trim(), string.Concat(code.Where(char.IsLetterOrDigit))]);

    private static Task Press(IPage page, string name) =>
        page.GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}

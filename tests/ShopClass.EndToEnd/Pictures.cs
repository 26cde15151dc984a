using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>
/// Takes pictures of the running app: the README's when <c>docs/pictures/make</c> asks, and of every page at both widths
/// and in both lights when SHOPCLASS_LOOK names a folder (SHOPCLASS_PAGE, one page's name, takes that page only).
/// </summary>
[Collection(OneApp.Name)]
public sealed class Pictures(RunningApp app)
{
    [Fact(Explicit = true)]
    public async Task Every_page_at_both_widths_and_in_both_lights()
    {
        var folder = FolderNamedBy("SHOPCLASS_LOOK");
        foreach (var dark in (bool[])[false, true])
        {
            await using var desk = await Person.AtADesk(app, dark);
            await using var phone = await Person.OnAPhone(app, dark);
            foreach (var person in (Person[])[desk, phone])
            {
                var name = $"{(person == desk ? "desk" : "phone")}-{(dark ? "dark" : "light")}";
                await person.OpenDemoAsInstructor();
                var only = Environment.GetEnvironmentVariable("SHOPCLASS_PAGE");
                foreach (
                    var (page, path) in (await DemoPages.All(person)).Where(p =>
                        only is null || p.Name == only
                    )
                )
                {
                    await person.Open(path);
                    await person.WaitUntilQuiet();
                    await person.Page.ScreenshotAsync(
                        new() { Path = Path.Combine(folder, $"{page}-{name}.png"), FullPage = true }
                    );
                }
            }
        }
    }

    [Fact(Explicit = true)]
    public async Task The_pictures_of_the_readme()
    {
        var folder = FolderNamedBy("SHOPCLASS_PICTURES");
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var pages = (await DemoPages.All(desk, "Priya Ramanathan")).ToDictionary(
            p => p.Name,
            p => p.Path
        );
        await desk.Open(pages["course"]);
        await desk
            .Page.GetByRole(AriaRole.Button, new() { NameRegex = new("Plan everyone") })
            .ClickAsync();
        await Assertions
            .Expect(
                desk.Page.GetByRole(AriaRole.Button, new() { Name = "Every plan is up to date" })
            )
            .ToBeVisibleAsync(new() { Timeout = 60_000 });
        foreach (var page in (string[])["course", "project", "board", "plan"])
        {
            await desk.Open(pages[page]);
            await desk.WaitUntilQuiet();
            if (page == "course")
                await desk
                    .Page.Locator("#class")
                    .EvaluateAsync("heading => heading.scrollIntoView()");
            await desk.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, page + ".png") });
        }

        var sheet = await desk
            .Page.GetByRole(AriaRole.Link, new() { Name = "Kit sheet, A4" })
            .GetAttributeAsync("href");
        var pdf = await desk.Page.APIRequest.GetAsync(desk.AddressOf(sheet!));
        File.WriteAllBytes(Path.Combine(folder, "kit-sheet.pdf"), await pdf.BodyAsync());

        await using var phone = await Person.OnAPhone(app);
        await phone.OpenDemoAsStudent("Priya Ramanathan");
        await phone.Open(pages["plan"]);
        await phone.WaitUntilQuiet();
        await phone.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, "phone-plan.png") });
    }

    private static string FolderNamedBy(string variable) =>
        Environment.GetEnvironmentVariable(variable)
        ?? throw new InvalidOperationException($"Set {variable} to the folder the pictures go to.");
}

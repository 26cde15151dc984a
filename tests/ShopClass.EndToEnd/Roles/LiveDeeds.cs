using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopClass.Data.Access;

namespace ShopClass.EndToEnd.Roles;

/// <summary>How a deed is done on a live page.</summary>
/// <param name="Path">The page, below the course's own: "{project}" and "{student}" are filled in.</param>
/// <param name="Control">What only who may do it finds there.</param>
/// <param name="Do">Does it, with words that were not used before; null where the deed is to see the page.</param>
/// <param name="ByStudents">Whether a student may, of their own class.</param>
internal sealed record LiveDeed(
    string Path,
    Func<IPage, ILocator> Control,
    Func<IPage, string, Task>? Do,
    bool ByStudents = false
);

/// <summary>Every deed with the live page it is done on. A new deed without a row here fails.</summary>
internal static class LiveDeeds
{
    public static IReadOnlyDictionary<Deed, LiveDeed> All { get; } =
        new Dictionary<Deed, LiveDeed>
        {
            [Deed.SeeCourse] = new("", Heading, null, ByStudents: true),
            [Deed.SeeLessons] = new("/lessons", Heading, null, ByStudents: true),
            [Deed.SeeClass] = new("/students/{student}", Heading, null, ByStudents: true),
            [Deed.WorkTheRoom] = new(
                "/room",
                Heading,
                async (page, _) =>
                {
                    await page.Locator(".ruled-table input[type=checkbox]:enabled")
                        .First.CheckAsync();
                    await page.GetByRole(
                            AriaRole.Button,
                            new() { Name = "Check off the step of 1 student" }
                        )
                        .ClickAsync();
                }
            ),
            [Deed.LogWork] = new(
                "/students/{student}/projects/{project}/boards/new",
                p => Button(p, "Log this board"),
                LogABoard,
                ByStudents: true
            ),
            [Deed.ChangeClass] = new(
                "",
                p => p.GetByLabel("New student"),
                async (page, fresh) =>
                {
                    await page.GetByLabel("New student").FillAsync(fresh);
                    await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true })
                        .ClickAsync();
                }
            ),
            [Deed.RunTheDoor] = new("/joining", NewCode, (page, _) => NewCode(page).ClickAsync()),
            [Deed.ChangeProjects] = new(
                "/projects/{project}",
                p => p.GetByLabel(new Regex("^Note: ")).First,
                (page, fresh) => Type(page.GetByLabel(new Regex("^Note: ")).First, fresh)
            ),
            [Deed.PlanLessons] = new(
                "/lessons",
                p => Button(p, "Save the stations"),
                async (page, _) =>
                {
                    var benches = page.GetByLabel("Saw benches").First;
                    var now = await benches.InputValueAsync();
                    await Type(benches, now == "3" ? "4" : "3");
                    await Button(page, "Save the stations").ClickAsync();
                }
            ),
            [Deed.BuyMaterials] = new(
                "/materials",
                p => p.GetByLabel("New seller"),
                async (page, fresh) =>
                {
                    await page.GetByLabel("New seller").FillAsync(fresh);
                    await Button(page, "Begin the list").ClickAsync();
                }
            ),
            [Deed.PrintForClass] = new(
                "/print",
                p => Button(p, "Make the print set"),
                async (page, fresh) =>
                {
                    await page.GetByText("Labels and codes").ClickAsync();
                    await page.GetByLabel("Address of this app in the shop")
                        .FillAsync($"http://{fresh.ToLowerInvariant()}.test");
                    await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true })
                        .ClickAsync();
                }
            ),
            [Deed.ChangeSettings] = new(
                "/techniques",
                p => p.GetByLabel("In your words: Crosscut"),
                (page, fresh) => Type(page.GetByLabel("In your words: Crosscut"), fresh)
            ),
            [Deed.CarryFiles] = new(
                "/file",
                p => p.GetByLabel("Project file"),
                (page, fresh) =>
                    page.GetByLabel("Project file")
                        .SetInputFilesAsync(
                            new FilePayload
                            {
                                Name = $"{fresh}.json",
                                MimeType = "application/json",
                                Buffer = System.Text.Encoding.UTF8.GetBytes(ProjectFile!),
                            }
                        )
            ),
            [Deed.KeepAndErase] = new(
                "/joining",
                p => Button(p, "Keep this day"),
                async (page, _) =>
                {
                    var day = page.GetByLabel("The course's last day");
                    await day.FillAsync(
                        await day.InputValueAsync() == "2031-05-06" ? "2031-05-07" : "2031-05-06"
                    );
                    await Button(page, "Keep this day").ClickAsync();
                }
            ),
            [Deed.ChoosePeople] = new(
                "/people",
                p => Button(p, "Invite a helper"),
                (page, _) => Button(page, "Invite a helper").ClickAsync()
            ),
        };

    /// <summary>A project file that can be brought in.</summary>
    public static string? ProjectFile { get; set; }

    private static async Task LogABoard(IPage page, string fresh)
    {
        async Task Fill(string label, string text) =>
            await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        await Fill("What you call it", fresh);
        await Fill("Wood", "eastern white pine");
        await Fill("Thickness, at the thinnest place", "3/4");
        await Fill("Length", "60");
        await page.GetByLabel("Same width all along").SetCheckedAsync(true);
        await Fill("Width", "7 1/4");
        await Fill("Trim at the start", "1");
        await Fill("Trim at the far end", "1");
        await Button(page, "Log this board").ClickAsync();
    }

    private static async Task Type(ILocator field, string text)
    {
        await field.FillAsync(text);
        await field.BlurAsync();
    }

    private static ILocator Heading(IPage page) =>
        page.Locator("h1").Filter(new() { HasNotText = "There is no such page" });

    private static ILocator NewCode(IPage page) =>
        page.GetByRole(AriaRole.Button, new() { NameRegex = new("new code$") }).First;

    private static ILocator Button(IPage page, string name) =>
        page.GetByRole(AriaRole.Button, new() { Name = name });
}

using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>The demo class's materials: what to buy, who gets what, and everything for the first evening in one file.</summary>
[Collection(OneApp.Name)]
public sealed class MaterialsTests(RunningApp app)
{
    [Fact]
    public async Task An_instructor_orders_wood_keeps_the_order_and_prints_the_set()
    {
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var course = (await DemoPages.All(desk)).Single(p => p.Name == "course").Path;
        await desk.Open(course + "/materials");
        await desk.WaitUntilQuiet();
        await LookAsync(desk, "materials");
        var order = (
            await desk
                .Page.GetByRole(AriaRole.Link, new() { Name = "Bench hook" })
                .First.GetAttributeAsync("href")
        )!;
        await LookAtSellerAsync(desk, course);
        await ToolsAsync(desk, course);

        await desk.Open(order);
        await desk.Page.GetByText("Spare parts and practice pieces").ClickAsync();
        await desk.Page.GetByLabel("Spares of C, hook").FillAsync("2");
        await desk.Page.GetByLabel("Practice pieces in each kit").FillAsync("1");
        await desk.Page.GetByLabel("Their width").FillAsync("1 1/2");
        await desk.Page.GetByLabel("Their length").FillAsync("8");
        await desk.Page.GetByLabel("Their length").BlurAsync();
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Work out what to buy" })
            .ClickAsync();
        var keep = desk.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it as order 1" });
        await Assertions.Expect(keep).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await keep.ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Order 1" }))
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
        await LookAsync(desk, "order");
        await ReceiveAsync(desk);

        await desk.Open(order.Replace("/orders/", "/kits/", StringComparison.Ordinal));
        await desk.WaitUntilQuiet();
        await PutBackAsync(desk, course);
        await LookAsync(desk, "kits");
        await PrintAsync(desk, course, order[(order.LastIndexOf('/') + 1)..]);
        desk.SawNothingStrange();

        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is null)
            return;
        await using var phone = await Person.OnAPhone(app, dark: true);
        await phone.OpenDemoAsInstructor();
        foreach (
            var (name, path) in new[]
            {
                ("materials-phone", course + "/materials"),
                ("tools-phone", course + "/materials/tools"),
                ("order-phone", order),
                ("print-phone", course + "/print"),
            }
        )
        {
            await phone.Open(path);
            await phone.WaitUntilQuiet();
            await LookAsync(phone, name);
        }
    }

    private static async Task PutBackAsync(Person desk, string course)
    {
        var kits = desk.Page.Locator("select[aria-label^='Kit of ']");
        for (var i = 0; i < await kits.CountAsync(); i++)
        {
            await kits.Nth(i).SelectOptionAsync("Ready");
            await Assertions.Expect(kits.Nth(i)).ToHaveValueAsync("Ready");
        }

        await desk.Page.GetByLabel("Where they are put").FillAsync("Rack 3");
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Put them on the rack" })
            .ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByText("Put on the rack on"))
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
        var here = desk.Page.Url;
        await desk.Open(course + "/materials");
        await desk.WaitUntilQuiet();
        await Assertions
            .Expect(desk.Page.GetByText("Rack 3").First)
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
        await LookAsync(desk, "put-back");
        await desk.Open(new Uri(here).AbsolutePath);
        await Assertions
            .Expect(desk.Page.GetByText("Put on the rack on"))
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
    }

    // All boards of the first line come narrower than listed: the kits move, and what is short is bought.
    private static async Task ReceiveAsync(Person desk)
    {
        await desk.Page.GetByText("What has come").ClickAsync();
        var width = desk.Page.GetByLabel("Measured width");
        await width.FillAsync("3");
        await width.BlurAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByText("smaller than listed").First)
            .ToBeVisibleAsync();
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Do the kits still fit?" })
            .ClickAsync();
        var keep = desk.Page.GetByRole(
            AriaRole.Button,
            new() { Name = "Keep these kits as order 2" }
        );
        await Assertions.Expect(keep).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await LookAsync(desk, "received");
        await keep.ClickAsync();
        var kept = desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Order 2" });
        await Assertions.Expect(kept).ToBeVisibleAsync();
        await desk.Open(new Uri(desk.Page.Url).AbsolutePath);
        await Assertions.Expect(kept).ToBeVisibleAsync();
        await Assertions
            .Expect(desk.Page.GetByText("laid out again on what came of order 1"))
            .ToBeVisibleAsync();
        await desk.WaitUntilQuiet();
        Assert.Empty(await AccessibilityTests.FaultsOf(desk, "order laid out again"));
        await LookAsync(desk, "replanned");
    }

    private static async Task ToolsAsync(Person desk, string course)
    {
        await desk.Open(course + "/materials/tools");
        await desk.WaitUntilQuiet();
        await desk.Page.GetByLabel("Tool", new() { Exact = true }).SelectOptionAsync("bevel");
        await desk.Page.GetByLabel("How many", new() { Exact = true }).First.FillAsync("3");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Add" }).First.ClickAsync();
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "back saw sharpened today" })
            .ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByText(new Regex("^Last sharpened")))
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
        await desk.Open(course + "/materials/tools");
        await Assertions
            .Expect(desk.Page.GetByLabel("How many: bevel"))
            .ToHaveValueAsync("3", new() { Timeout = RunningApp.Patience });
        await Assertions
            .Expect(desk.Page.GetByText(new Regex("^Last sharpened")))
            .ToHaveCountAsync(1);
        await LookAsync(desk, "tools");
    }

    private static async Task LookAtSellerAsync(Person desk, string course)
    {
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Quern Lane Timber" }).ClickAsync();
        await Assertions
            .Expect(desk.Page.Locator(".stock-table"))
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
        Assert.Contains(course, desk.Page.Url, StringComparison.Ordinal);
        await LookAsync(desk, "seller");
    }

    private static async Task PrintAsync(Person desk, string course, string project)
    {
        await desk.Open($"{course}/print?project={project}");
        await desk.WaitUntilQuiet();
        foreach (
            var sheet in new[]
            {
                "Project sheet",
                "Materials order",
                "Receiving sheet",
                "Preparation list",
                "Cost sheet",
                "Kit labels",
                "Stock guide",
                "Step cards",
            }
        )
            await desk.Page.GetByText(sheet).First.ClickAsync();
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Look at it first" })
            .ClickAsync();
        await Assertions
            .Expect(desk.Page.Locator("svg.sheet-page"))
            .ToBeVisibleAsync(new() { Timeout = 60_000 });
        await desk
            .Page.GetByLabel("Sheet", new() { Exact = true })
            .SelectOptionAsync(new SelectOptionValue { Label = "Bench hook: preparation list" });
        await Assertions
            .Expect(desk.Page.Locator("svg.sheet-page"))
            .ToContainTextAsync("Preparation list", new() { Timeout = RunningApp.Patience });
        await LookAsync(desk, "preview");
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Make the print set" })
            .ClickAsync();
        var open = desk.Page.GetByRole(AriaRole.Link, new() { Name = "Open it to print" });
        await Assertions.Expect(open).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await LookAsync(desk, "print");
        var set = await desk.Page.APIRequest.GetAsync(
            desk.AddressOf((await open.GetAttributeAsync("href"))!)
        );
        Assert.Equal("application/pdf", set.Headers["content-type"]);
        var pdf = await set.BodyAsync();
        Assert.StartsWith("%PDF", Encoding.ASCII.GetString(pdf, 0, 4), StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await File.WriteAllBytesAsync(
                Path.Combine(folder, "set.pdf"),
                pdf,
                TestContext.Current.CancellationToken
            );
    }

    private static async Task LookAsync(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await person.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
            );
    }
}

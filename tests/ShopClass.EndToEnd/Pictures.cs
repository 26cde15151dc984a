namespace ShopClass.EndToEnd;

/// <summary>
/// Takes pictures of the running app: the README's when <c>docs/pictures/make</c> asks, and of every page at both widths
/// and in both lights when SHOPCLASS_LOOK names a folder.
/// </summary>
[Collection(OneApp.Name)]
public sealed class Pictures(RunningApp app)
{
    [Fact]
    public async Task Every_page_at_both_widths_and_in_both_lights()
    {
        var folder = Environment.GetEnvironmentVariable("SHOPCLASS_LOOK");
        Assert.SkipWhen(folder is null, "Only on request.");
        foreach (var dark in (bool[])[false, true])
        {
            await using var desk = await Person.AtADesk(app, dark);
            await using var phone = await Person.OnAPhone(app, dark);
            foreach (var person in (Person[])[desk, phone])
            {
                var name = $"{(person == desk ? "desk" : "phone")}-{(dark ? "dark" : "light")}";
                await person.OpenDemoAsInstructor();
                foreach (var (page, path) in await DemoPages.All(person))
                {
                    await person.Open(path);
                    await person.WaitUntilQuiet();
                    await person.Page.ScreenshotAsync(
                        new()
                        {
                            Path = Path.Combine(folder!, $"{page}-{name}.png"),
                            FullPage = true,
                        }
                    );
                }
            }
        }
    }
}

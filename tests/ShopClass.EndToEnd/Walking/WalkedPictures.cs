using System.Text.RegularExpressions;

namespace ShopClass.EndToEnd.Walking;

/// <summary>
/// Pictures of every page of the app in the middle of an evening, for whoever looks them through: SHOPCLASS_LOOK names the
/// folder, SHOPCLASS_PAGE a part of the addresses wanted.
/// </summary>
public sealed partial class WalkedPictures(WalkedApp app) : IClassFixture<WalkedApp>
{
    [Fact(Explicit = true)]
    public async Task Every_page_at_a_desk_on_a_tablet_and_on_a_phone()
    {
        var folder =
            Environment.GetEnvironmentVariable("SHOPCLASS_LOOK")
            ?? throw new InvalidOperationException("Set SHOPCLASS_LOOK to a folder.");
        var wanted = Environment.GetEnvironmentVariable("SHOPCLASS_PAGE") ?? "";
        foreach (var walker in Enum.GetValues<Walker>())
        {
            var pages = WalkedPages
                .Of(app)
                .Where(p => p.Walker == walker && Regex.IsMatch(p.Path, wanted))
                .ToList();
            if (pages.Count > 0)
                await TakeAsync(walker, pages, folder);
        }
    }

    private async Task TakeAsync(Walker walker, List<WalkedPage> pages, string folder)
    {
        foreach (var dark in (bool[])[false, true])
        foreach (var width in (int[])[1280, 820, 390])
        {
            await using var person = width switch
            {
                390 => await Person.OnAPhone(app, dark),
                820 => await Person.WithATablet(app),
                _ => await Person.AtADesk(app, dark),
            };
            if (dark && width == 820)
                continue;
            await app.ComeInAsync(person, walker);
            foreach (var page in pages)
            {
                await person.Open(page.Path);
                await person.Page.WaitForTimeoutAsync(400);
                var name = Keys().Replace(page.Path, "").Replace('/', '-').Replace('?', '-');
                await person.Page.ScreenshotAsync(
                    new()
                    {
                        Path = Path.Combine(
                            folder,
                            $"{walker}{name}-{width}{(dark ? "-dark" : "")}.png".ToLowerInvariant()
                        ),
                        FullPage = true,
                    }
                );
            }
        }
    }

    [GeneratedRegex("/?[0-9a-f]{8}-[0-9a-f-]{27}|=.*$")]
    private static partial Regex Keys();
}

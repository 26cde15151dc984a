namespace ShopClass.Web.Features.Joining;

/// <summary>What sort of device it is, as far as it says so itself: enough to tell two apart, no more is kept.</summary>
public static class DeviceKind
{
    private static readonly (string Sign, string Kind)[] Signs =
    [
        ("iPhone", "iPhone"),
        ("iPad", "iPad"),
        ("Android", "Android phone or tablet"),
        ("Windows", "Windows computer"),
        ("Macintosh", "Mac"),
        ("CrOS", "Chromebook"),
        ("Linux", "Linux computer"),
    ];

    public static string Of(HttpRequest request)
    {
        var says = request.Headers.UserAgent.ToString();
        return Signs.FirstOrDefault(s => says.Contains(s.Sign, StringComparison.Ordinal)).Kind
            ?? "Some device";
    }
}

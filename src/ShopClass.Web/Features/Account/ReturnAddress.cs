namespace ShopClass.Web.Features.Account;

/// <summary>Where to go after signing in: only ever to one of our own pages.</summary>
public static class ReturnAddress
{
    public static string Of(string? asked) =>
        asked is ['/', ..] and not ['/', '/' or '\\', ..] && !asked.Any(char.IsControl)
            ? asked
            : "/courses";
}

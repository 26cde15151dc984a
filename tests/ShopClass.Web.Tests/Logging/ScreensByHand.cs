using AngleSharp.Html.Dom;
using ShopClass.Web.Features.Logging;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Logging;

/// <summary>Answers the screens about a board as a browser without scripts does.</summary>
internal static class ScreensByHand
{
    /// <summary>Sends one screen's form.</summary>
    public static async Task<HttpResponseMessage> AnswerAsync(
        this Visitor visitor,
        Guid project,
        EntryScreen screen,
        params (string Name, string Value)[] filled
    )
    {
        var address = EntryScreens.Address(project, screen);
        var page = await visitor.Read(address);
        var fields = page.QuerySelector("form[data-logging]:has([name=_handler][value=screen])")!
            .QuerySelectorAll("input[type=hidden]")
            .OfType<IHtmlInputElement>()
            .Where(i =>
                !i.Name!.StartsWith("Entry.", StringComparison.Ordinal) || i.Name == "Entry.Board"
            )
            .ToDictionary(i => i.Name!, i => i.Value, StringComparer.Ordinal);
        foreach (var (name, value) in filled)
            fields[name] = value;
        return await visitor.Post(address, fields);
    }

    /// <summary>Answers every screen up to the last, which logs the board.</summary>
    public static async Task AnswerAllAsync(this Visitor visitor, Guid project)
    {
        await Answer(EntryScreen.Length, ("Entry.Text", "60"), ("Entry.Fraction", "1/2"));
        await Answer(EntryScreen.Start, ("Entry.Text", "9"), ("Entry.Fraction", "1/4"));
        await Answer(EntryScreen.Middle, ("Entry.Go", "same"));
        await Answer(EntryScreen.End, ("Entry.Text", "9 3/16"));
        await Answer(EntryScreen.Thickness, ("Entry.Fraction", "3/4"));
        await Answer(EntryScreen.Surface, ("Entry.Choice", "S4S"));
        await Answer(EntryScreen.Flat, ("Entry.Go", "flat"));
        await Answer(EntryScreen.Wood, ("Entry.Choice", "eastern-white-pine"));
        await Answer(EntryScreen.Bad);
        var last = await Answer(EntryScreen.Photo);
        Assert.EndsWith("/log", last.Headers.Location!.OriginalString, StringComparison.Ordinal);

        Task<HttpResponseMessage> Answer(
            EntryScreen screen,
            params (string Name, string Value)[] filled
        ) => visitor.AnswerAsync(project, screen, filled);
    }
}

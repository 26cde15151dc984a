using ShopClass.Print.Sheets;

namespace ShopClass.Print.Pages;

/// <summary>What every page of a sheet has about its edges.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Title">The document's title.</param>
/// <param name="RunningHead">Repeated at the top of every page after the first.</param>
/// <param name="Foot">At the bottom of every page, before "Page x of y".</param>
/// <param name="TextSize">Size of ordinary text, points.</param>
internal sealed record PageFrame(
    Paper Paper,
    string Title,
    string RunningHead,
    string Foot,
    double TextSize = Sheet.TextSize
)
{
    /// <summary>Whether nothing stands about the edges: labels fill the paper themselves.</summary>
    public bool IsBare { get; init; }

    /// <summary>Clear on all four sides: most printers cannot print nearer to the edge.</summary>
    public const double Margin = 40;

    /// <summary>Page width, points.</summary>
    public double Width => Paper is Paper.A4 ? 210 / 25.4 * 72 : 8.5 * 72;

    /// <summary>Page height, points.</summary>
    public double Height => Paper is Paper.A4 ? 297 / 25.4 * 72 : 11 * 72;

    /// <summary>Width between the margins.</summary>
    public double BodyWidth => Width - 2 * Margin;

    /// <summary>Where the body must end; the foot stands below.</summary>
    public double BodyBottom => Height - Margin - 18;
}

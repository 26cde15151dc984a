namespace ShopClass.Web.Features.Logging;

/// <summary>What one screen sends. Everything is as typed; nothing is trusted.</summary>
public sealed class ScreenEntry
{
    /// <summary>Which entry is logged: sent twice, its board is there once.</summary>
    public Guid? Board { get; set; }

    /// <summary>A length, a name or a wood.</summary>
    public string? Text { get; set; }

    /// <summary>The fraction that was tapped.</summary>
    public string? Fraction { get; set; }

    /// <summary>What was chosen from a list.</summary>
    public string? Choice { get; set; }

    /// <summary>The button that was pressed, where there are several.</summary>
    public string? Go { get; set; }

    /// <summary>Where the drawing was tapped, in shares of its width and height.</summary>
    public string? X { get; set; }

    public string? Y { get; set; }

    /// <summary>How many bad places there were when the drawing was tapped: a tap sent twice marks one place.</summary>
    public int? Count { get; set; }

    public string? Reach { get; set; }

    public string? From { get; set; }

    public string? To { get; set; }

    public string? Near { get; set; }

    public string? Far { get; set; }

    /// <summary>The hollow across, as typed; nothing for none.</summary>
    public string? Cup { get; set; }

    /// <summary>How far a corner stands off, as typed; nothing for not at all.</summary>
    public string? Twist { get; set; }
}

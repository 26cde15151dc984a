namespace ShopClass.Print.Pages;

/// <summary>A sheet that is written and not printed yet: alone, in a set, or looked at page by page.</summary>
public sealed class Manuscript
{
    private readonly Action<Sheet> write;

    internal Manuscript(PageFrame frame, Action<Sheet> write)
    {
        Frame = frame;
        this.write = write;
    }

    /// <summary>What it is called: "Wall shelf: kit sheet for Mira".</summary>
    public string Title => Frame.Title;

    internal PageFrame Frame { get; }

    /// <summary>It alone as a PDF.</summary>
    public byte[] ToPdf() => Printer.Print(this);

    /// <summary>Its pages as they come out on paper, as SVG.</summary>
    public IReadOnlyList<PaperPage> Pages() => Printer.Preview(this);

    /// <summary>What is to be said of letters its typeface lacks, each printed as a question mark; null when it has them all.</summary>
    public string? LettersMissing => Printer.NoteOn(this);

    internal void WriteOn(Sheet sheet) => write(sheet);
}

/// <summary>A page as it comes out on paper.</summary>
/// <param name="Width">Its width, points.</param>
/// <param name="Height">Its height, points.</param>
/// <param name="Svg">A whole <c>svg</c> element; its looks come from drawing.css.</param>
public sealed record PaperPage(double Width, double Height, string Svg);

using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace ShopClass.Print.Pages;

/// <summary>Says what each drawn thing is, so that a screen reader can read the sheet in order.</summary>
internal sealed class Tags
{
    private readonly StructureBuilder? builder;
    private readonly PdfDocument? document;

    /// <summary>For each page so far what is on it: number and pieces by turns.</summary>
    private readonly List<PdfItem> onPages = [];
    private bool isArtifact;

    /// <summary>For a trial that nobody reads: says nothing.</summary>
    public Tags() { }

    public Tags(PdfDocument document)
    {
        this.document = document;
        var manager = UAManager.ForDocument(document);
        manager.SetDocumentLanguage("en");
        builder = manager.StructureBuilder;
    }

    /// <summary>Draws one sheet of a set.</summary>
    public void AsSheet(Action draw)
    {
        builder?.BeginElement(PdfGroupingElementTag.Part);
        draw();
        builder?.End();
        PutAside();
    }

    /// <summary>To be called before the document is saved: puts back what was put aside.</summary>
    public void Finish()
    {
        PutAside();
        if (NumbersOfPages() is not { } numbers)
            return;
        foreach (var item in onPages)
            numbers.Elements.Add(item);
        onPages.Clear();
    }

    // For each tagged piece PDFsharp looks through all pages so far for the piece's own; a finished sheet's pages it need
    // not look through again.
    private void PutAside()
    {
        if (NumbersOfPages() is not { } numbers)
            return;
        onPages.AddRange(numbers.Elements);
        numbers.Elements.Clear();
    }

    private PdfArray? NumbersOfPages() =>
        document
            ?.Internals.Catalog.Elements.GetDictionary("/StructTreeRoot")
            ?.Elements.GetDictionary("/ParentTree")
            ?.Elements.GetArray("/Nums");

    /// <summary>Draws something as a paragraph, heading, table part or list part.</summary>
    public void As(PdfBlockLevelElementTag tag, Action draw)
    {
        builder?.BeginElement(tag);
        draw();
        builder?.End();
    }

    /// <summary>Draws a figure with its alternative text.</summary>
    public void AsFigure(string words, XRect bounds, Action draw)
    {
        builder?.BeginElement(PdfIllustrationElementTag.Figure, words, bounds);
        draw();
        builder?.End();
    }

    /// <summary>
    /// Draws letter forms and says which words they are: a form may stand for several letters, and be drawn before them.
    /// </summary>
    public void AsWords(string words, Action draw)
    {
        if (builder is null || isArtifact)
        {
            draw();
            return;
        }

        builder.BeginElement(PdfInlineLevelElementTag.Span);
        builder.CurrentStructureElement.Elements["/ActualText"] = new PdfString(
            words,
            PdfStringEncoding.Unicode
        );
        draw();
        builder.End();
    }

    /// <summary>Draws what carries no meaning of its own: rules, running heads, repeated table heads.</summary>
    public void AsArtifact(Action draw)
    {
        isArtifact = true;
        builder?.BeginArtifact();
        draw();
        builder?.End();
        isArtifact = false;
    }
}

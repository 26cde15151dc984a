using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace ShopClass.Print.Pages;

/// <summary>Says what each drawn thing is, so that a screen reader can read the sheet in order.</summary>
internal sealed class Tags
{
    private readonly StructureBuilder? builder;
    private bool isArtifact;

    /// <summary>For a trial that nobody reads: says nothing.</summary>
    public Tags() { }

    public Tags(PdfDocument document)
    {
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
    }

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

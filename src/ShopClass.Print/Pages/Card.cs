using ShopClass.Core.Drawings;
using ShopClass.Print.Lettering;

namespace ShopClass.Print.Pages;

/// <summary>One thing to do, on a card of its own.</summary>
/// <param name="Heading">What to do; a box to tick stands before it.</param>
/// <param name="Picture">How it looks, made for the card's width; null where there is nothing to see.</param>
/// <param name="Lines">What else to know.</param>
/// <param name="Foot">Whose card it is and which, for when it has been cut off the sheet.</param>
internal sealed record Card(
    string Heading,
    Drawing? Picture,
    IReadOnlyList<CardLine> Lines,
    string Foot
)
{
    /// <summary>Whether it stands in two columns, the picture at the head of the first.</summary>
    public bool IsInTwoColumns { get; init; }
}

/// <summary>A paragraph of a card.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Face">Its letters.</param>
internal sealed record CardLine(string Text, Face Face = Face.Text);

namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>How a crosscut in a strip can be moved.</summary>
internal enum MarkMoves
{
    /// <summary>Not at all: its blanks lie end to end from the section's beginning.</summary>
    Not,

    /// <summary>With the section's end.</summary>
    WithEnd,

    /// <summary>Toward the section's end, as far as there is room.</summary>
    Freely,
}

/// <summary>A crosscut's place.</summary>
/// <param name="At">Where it lies.</param>
/// <param name="From">The nearest place it can have while the section ends where it does.</param>
/// <param name="To">The farthest such place of one that moves with the end.</param>
/// <param name="Moves">How it can be moved.</param>
internal readonly record struct Mark(long At, long From, long To, MarkMoves Moves);

/// <summary>A strip's blanks in their places, in order along the board.</summary>
/// <param name="Blanks">The blanks.</param>
/// <param name="Marks">Where the crosscuts lie.</param>
internal sealed record StripLayout(IReadOnlyList<DraftBlank> Blanks, Mark[] Marks)
{
    /// <summary>Crosscuts it takes.</summary>
    public int Cuts => Marks.Length;
}

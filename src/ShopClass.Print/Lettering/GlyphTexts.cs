namespace ShopClass.Print.Lettering;

/// <summary>
/// What the letter forms of a font say when text is taken from the PDF. PDFsharp keeps one form for each sign, and one sign
/// for each form, so every form needs a sign of its own: the letter where it is the letter's usual form, Unicode's
/// presentation form where it is one of those, else one of its letters behind a joiner.
/// </summary>
/// <param name="usualForm">The form of a sign that the font's own table gives; zero for none.</param>
internal sealed class GlyphTexts(Func<int, ushort> usualForm)
{
    private readonly Dictionary<ushort, int> signs = [];
    private readonly HashSet<int> taken = [];

    // Arabic Presentation Forms A and B (Unicode code charts): the forms of one letter are signs of their own.
    private readonly Lazy<ILookup<ushort, int>> presentation = new(() =>
        Enumerable
            .Range(0xFB50, 0xFDFF - 0xFB50)
            .Concat(Enumerable.Range(0xFE70, 0xFEFD - 0xFE70))
            .Select(sign => (Form: usualForm(sign), Sign: sign))
            .Where(f => f.Form != 0)
            .ToLookup(f => f.Form, f => f.Sign)
    );

    /// <summary>The sign of a form that was learnt.</summary>
    public int Of(ushort form) => signs[form];

    /// <summary>Notes a form that was chosen for some letters; gives its sign.</summary>
    public int Learn(ushort form, string letters)
    {
        if (signs.TryGetValue(form, out var known))
            return known;
        var sign = Candidates(form, letters).First(s => !taken.Contains(s));
        taken.Add(sign);
        return signs[form] = sign;
    }

    private IEnumerable<int> Candidates(ushort form, string letters)
    {
        foreach (var letter in letters.Concat("()[]<>{}«»"))
            if (usualForm(letter) == form)
                yield return letter;
        foreach (var sign in presentation.Value[form])
            yield return sign;
        // A joiner before a letter, as one number of two signs: nothing a reader would see, and another number.
        foreach (var joiner in "\u200D\u200C\u2060")
        foreach (var letter in letters)
            yield return (joiner << 16) | letter;
        // Nothing is left that would read right: signs for private use, which at least collide with nothing.
        for (var sign = 0xE000; sign < 0xF8FF; sign++)
            yield return sign;
    }
}

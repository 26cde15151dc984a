namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>One board with bad places, with what is worked out about it as searches go on and serves them all.</summary>
/// <param name="bench">What is asked.</param>
/// <param name="lattice">Its choices of blanks.</param>
/// <param name="clear">What they cost at least on clear wood.</param>
/// <param name="stock">The board.</param>
/// <param name="options">The sections that may be used.</param>
/// <param name="steps">Counts the looks.</param>
internal sealed class BadBoard(
    Bench bench,
    Lattice lattice,
    BoardTable clear,
    Stock stock,
    IReadOnlyList<SectionOption> options,
    Steps steps
)
{
    private readonly SectionFit fit = new(bench, stock, steps);
    private SectionLayouts? layouts;

    /// <summary>The same board, with lines counted of all strips of a section together.</summary>
    public BadBoard CountingLines()
    {
        var board = new BadBoard(bench, lattice, clear, stock, options, steps);
        board.Fit.CountLines();
        return board;
    }

    /// <summary>The choices of blanks.</summary>
    public Lattice Lattice => lattice;

    /// <summary>What they cost at least on clear wood.</summary>
    public BoardTable Clear => clear;

    /// <summary>The board.</summary>
    public Stock Stock => stock;

    /// <summary>The order of the goals.</summary>
    public Taste Taste { get; } = new(bench);

    /// <summary>What sections cost by where they begin and end.</summary>
    public SectionFit Fit => fit;

    /// <summary>How sections are laid out.</summary>
    public SectionLayouts Layouts => layouts ??= new(bench, stock, fit);

    /// <summary>The sections that hold nothing but these blanks.</summary>
    public IReadOnlyList<SectionOption> OptionsFor(int target)
    {
        if (target == lattice.All)
            return options;
        var whole = lattice.Packed(target);
        steps.Take(1 + options.Count / 16);
        return [.. options.Where(o => lattice.Holds(whole, o.Packed))];
    }
}

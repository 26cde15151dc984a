using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>A blank where the plan puts it.</summary>
internal readonly record struct LaidBlank(BlankKey Key, BoardRect Rect)
{
    public Stretch Along => new(Rect.From, Rect.To);

    public Stretch Across => new(Rect.Near, Rect.Far);
}

/// <summary>A length of board that leaves the board in one piece: sections ripped together, or a blank that needs no rip.</summary>
/// <param name="Along">Where it lies along the board.</param>
/// <param name="RipLines">The rips it gets; none for a blank of the board's full width.</param>
/// <param name="Sections">How many sections it joins.</param>
/// <param name="KeepsWaste">Whether waste stays on it to give length to hold.</param>
internal sealed record BoardLength(
    Stretch Along,
    IReadOnlyList<SawLine> RipLines,
    int Sections,
    bool KeepsWaste = false
);

/// <summary>Finds the lengths that a board is first crosscut to.</summary>
internal sealed class BoardLengths(Board board, CourseRules rules, BoardLayout layout)
{
    /// <summary>The lengths, from the board's start.</summary>
    public IReadOnlyList<BoardLength> Find()
    {
        var found = new List<BoardLength>();
        var sections = layout
            .Sections.Where(s => s.Strips.Any(t => t.Blanks.Count > 0))
            .OrderBy(s => s.From);
        foreach (var section in sections)
        {
            var rips = RipLinesOf(section);
            if (rips.Count == 0)
                found.AddRange(Blanks(section).Select(b => new BoardLength(b.Along, [], 1)));
            else if (found.Count > 0 && StayTogether(found[^1], section, rips))
                found[^1] = found[^1] with
                {
                    Along = new(found[^1].Along.From, section.To),
                    Sections = found[^1].Sections + 1,
                };
            else
                found.Add(new(new(section.From, section.To), rips, 1));
        }

        return KeepWasteWhereShort([.. found.OrderBy(l => l.Along.From)]);
    }

    /// <summary>The blanks of a section where they lie, from its beginning.</summary>
    public static IReadOnlyList<LaidBlank> Blanks(Section section) =>
        [
            .. section
                .Strips.SelectMany(s => s.Blanks.Select(b => new LaidBlank(b.Key, b.In(s))))
                .OrderBy(b => b.Rect.From)
                .ThenBy(b => b.Rect.Near),
        ];

    private IReadOnlyList<SawLine> RipLinesOf(Section section)
    {
        var strips = section
            .Strips.Where(s => s.Blanks.Count > 0)
            .OrderBy(s => s.Near)
            .Select(s => new Stretch(s.Near, s.Far));
        return SawLines.Freeing(
            new(Length.Zero, board.SmallestWidth),
            [.. strips],
            rules.RipKerf,
            edge => HasDefect(new(section.From, section.To, edge.From, edge.To))
        );
    }

    private bool StayTogether(BoardLength before, Section next, IReadOnlyList<SawLine> rips)
    {
        if (!before.RipLines.SequenceEqual(rips))
            return false;
        var gap = new Stretch(before.Along.To, next.From);
        var eitherIsShort =
            before.Along.Long < rules.SawBenchLimit || next.To - next.From < rules.SawBenchLimit;
        return !IsWorthKeeping(gap) && (eitherIsShort || !HasDefect(FullWidth(gap)));
    }

    private List<BoardLength> KeepWasteWhereShort(List<BoardLength> lengths)
    {
        for (var i = 0; i < lengths.Count; i++)
        {
            var length = lengths[i];
            if (length.RipLines.Count == 0 || length.Along.Long >= rules.SawBenchLimit)
                continue;
            var before = i == 0 ? board.TrimStart : lengths[i - 1].Along.To + rules.CrosscutKerf;
            var after =
                i == lengths.Count - 1
                    ? board.Length - board.TrimEnd
                    : lengths[i + 1].Along.From - rules.CrosscutKerf;
            var from = MayKeep(new(before, length.Along.From)) ? before : length.Along.From;
            var to = MayKeep(new(length.Along.To, after)) ? after : length.Along.To;
            lengths[i] = WithWaste(length, from, to);
        }

        return lengths;
    }

    /// <summary>The length with the waste after it, or before it, or both: the first that is long enough; else as it was.</summary>
    private BoardLength WithWaste(BoardLength length, Length from, Length to)
    {
        Stretch[] ways = [new(length.Along.From, to), new(from, length.Along.To), new(from, to)];
        foreach (var way in ways.Where(w => w.Long >= rules.SawBenchLimit))
            return length with { Along = way, KeepsWaste = true };
        return length;
    }

    private bool MayKeep(Stretch waste) =>
        waste.Long > Length.Zero && !IsWorthKeeping(waste) && !HasDefect(FullWidth(waste));

    /// <summary>Whether a length of waste, once sawn out on both sides, would make an offcut.</summary>
    private bool IsWorthKeeping(Stretch waste) =>
        waste.Long - 2 * rules.CrosscutKerf >= rules.ShortestOffcut
        && board.SmallestWidth >= rules.NarrowestOffcut
        && !board.Defects.Any(d =>
            d.Reach is DefectReach.Through && d.Place.Overlaps(FullWidth(waste))
        );

    private bool HasDefect(BoardRect place) => board.Defects.Any(d => d.Place.Overlaps(place));

    private BoardRect FullWidth(Stretch along) =>
        new(along.From, along.To, Length.Zero, board.SmallestWidth);
}

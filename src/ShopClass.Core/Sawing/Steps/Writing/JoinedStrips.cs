using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>A strip whose blanks stay joined until it is at width, and the cuts that take it apart then.</summary>
internal sealed record JoinedStrip(
    BoardRect Rect,
    IReadOnlyList<LaidBlank> Blanks,
    IReadOnlyList<Cut> Cuts
);

/// <summary>Finds the strips of short parts among a board's cuts.</summary>
internal sealed class JoinedStrips(Job job, BoardLayout layout, BreakdownSteps breakdown)
{
    public List<JoinedStrip> In(List<Cut> cuts)
    {
        var found = new List<JoinedStrip>();
        for (var i = 0; i < cuts.Count; i++)
        {
            var first = cuts[i];
            if (found.Exists(f => f.Rect.Contains(first.Piece)) || !breakdown.PartsBlanks(first))
                continue;
            var within = cuts.Skip(i).Where(c => first.Piece.Contains(c.Piece)).ToList();
            if (StaysJoined(first.Piece, within))
                found.Add(new(first.Piece, breakdown.In(first.Piece), within));
        }

        return found;
    }

    private bool StaysJoined(BoardRect strip, List<Cut> within)
    {
        var blanks = breakdown.In(strip);
        var parts = blanks.Select(b => PartOf(b.Key)).ToList();
        return within.TrueForAll(c => c.Kind is CutKind.Crosscut && !breakdown.FreesAnOffcut(c))
            && blanks.All(b => b.Key.Strip == 0 && IsAsWideAs(strip, b) && !IsTurned(b.Key))
            && !parts.Contains(null)
            && breakdown.LeavesThickness(strip, parts.OfType<Part>())
            && WorkRules.StayJoinedUntilTheirStripIsAtWidth([.. parts.OfType<Part>()], job.Rules);
    }

    private bool IsAsWideAs(BoardRect strip, LaidBlank blank) =>
        strip.Across - blank.Rect.Across < job.Rules.RipKerf;

    private bool IsTurned(BlankKey key) =>
        layout
            .Sections.SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks)
            .Any(b => b.Key == key && b.Turned);

    private Part? PartOf(BlankKey key) =>
        job.Project.Parts.FirstOrDefault(p => p.Letter == key.Part);
}

/// <summary>Takes strips of short parts apart, now that they are at width.</summary>
internal sealed class StripSteps(Job job)
{
    public void Write()
    {
        foreach (var (breakdown, piece, strip) in job.Strips)
        {
            foreach (var cut in strip.Cuts)
                breakdown.Cut(cut, piece.Last, piece);
            job.Pieces.Remove(piece);
            job.Pieces.AddRange(breakdown.Blanks(strip, piece));
        }

        job.Pieces.Sort((a, b) => a.Key.CompareTo(b.Key));
    }
}

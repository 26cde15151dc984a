using ShopClass.Core.Measure;

namespace ShopClass.Core.Tests.Planning;

/// <summary>
/// The least sawing on one clear board by trying every division of a few blanks into sections and strips. Works from the
/// written definition: rips weigh 3 and crosscuts 4, times thickness; one crosscut for each section, one rip between two
/// strips and one more where an offcut wide enough to keep lies beside them; crosscuts in a strip as wide as it needs.
/// </summary>
internal sealed class LeastSawing(
    (long Along, long Across)[] blanks,
    long usable,
    long width,
    long kerf,
    long narrowest
)
{
    private readonly List<List<List<int>>> sections = [];
    private Int128? best;

    /// <summary>In square ticks of sawn length; null when nothing fits.</summary>
    public Int128? Find()
    {
        Place(0);
        return best;
    }

    private void Place(int blank)
    {
        if (blank == blanks.Length)
        {
            Judge();
            return;
        }

        foreach (var section in sections.ToList())
        {
            foreach (var strip in section.ToList())
            {
                strip.Add(blank);
                Place(blank + 1);
                strip.RemoveAt(strip.Count - 1);
            }

            section.Add([blank]);
            Place(blank + 1);
            section.RemoveAt(section.Count - 1);
        }

        sections.Add([
            [blank],
        ]);
        Place(blank + 1);
        sections.RemoveAt(sections.Count - 1);
    }

    private void Judge()
    {
        Int128 sawn = 0;
        var along = -kerf;
        foreach (var section in sections)
        {
            long StripLength(List<int> strip) => strip.Sum(b => blanks[b].Along + kerf) - kerf;
            long StripWidth(List<int> strip) => strip.Max(b => blanks[b].Across);
            var length = section.Max(StripLength);
            var across = section.Sum(s => StripWidth(s) + kerf) - kerf;
            if (across > width)
                return;
            along += length + kerf;
            var beside = width - across;
            var rips = section.Count - 1 + (beside > 0 && beside >= kerf + narrowest ? 1 : 0);
            sawn += 3 * (Int128)rips * length + 4 * (Int128)width;
            foreach (var strip in section)
                sawn +=
                    4
                    * (Int128)StripWidth(strip)
                    * (strip.Count - (StripLength(strip) == length ? 1 : 0));
        }

        if (along <= usable && (best is null || sawn < best))
            best = sawn;
    }
}

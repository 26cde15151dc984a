using Google.OrTools.Sat;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Tests.Planning;

/// <summary>
/// The least sawing on one clear board, by the written definition: rips weigh 3 and crosscuts 4; one crosscut for each
/// section, one rip between two strips and one more where an offcut wide enough to keep lies beside them; crosscuts in a
/// strip as wide as it needs, one less in a strip as long as its section.
/// </summary>
internal sealed partial class SmallOracle
{
    /// <summary>In units of sawn length, weighed; null when the blanks do not fit.</summary>
    public long? LeastSawing(Length narrowest, Length unit)
    {
        var beside = narrowest.Ticks / unit.Ticks;
        var sawn = new List<LinearExpr>();
        for (var i = 0; i < blanks.Length; i++)
        {
            sawn.Add(3 * RipsOf(i, beside) + 4 * boards[0].Width * inSection[i, i]);
            sawn.Add(4 * CrosscutsOf(i));
        }

        model.Minimize(LinearExpr.Sum(sawn));
        return Solve();
    }

    /// <summary>Rips of a section by its length.</summary>
    private IntVar RipsOf(int section, long narrowest)
    {
        var n = blanks.Length;
        var (width, usable) = (boards[0].Width, boards[0].Usable);
        var used = inSection[section, section];
        var strips = Enumerable.Range(section, n - section).ToArray();
        // What lies beside the strips is ripped off where it is worth keeping.
        var offcut = model.NewBoolVar("");
        var across = LinearExpr.Sum(strips.Select(s => Share(s, section)));
        model.Add(across - kerf > width - kerf - narrowest).OnlyEnforceIf([offcut.Not(), used]);
        var rips = model.NewIntVar(0, n, "");
        model
            .Add(rips >= LinearExpr.Sum(strips.Select(s => inSection[s, section])) - 1 + offcut)
            .OnlyEnforceIf(used);
        var length = model.NewIntVar(0, usable, "");
        model.Add(length >= sectionLength[section] - kerf);
        var product = model.NewIntVar(0, n * usable, "");
        model.AddMultiplicationEquality(product, [rips, length]);
        return product;
    }

    /// <summary>A strip's width and a kerf where it lies in the section, else nothing.</summary>
    private IntVar Share(int strip, int section)
    {
        var share = model.NewIntVar(0, boards[0].Width + kerf, "");
        var lies = inSection[strip, section];
        model.Add(share == Width(strip) + kerf).OnlyEnforceIf(lies);
        model.Add(share == 0).OnlyEnforceIf(lies.Not());
        return share;
    }

    /// <summary>As wide as its widest blank and no wider.</summary>
    private IntVar Width(int strip)
    {
        if (exactWidth.TryGetValue(strip, out var known))
            return known;
        var width = model.NewIntVar(0, boards[0].Width, "");
        model.AddMaxEquality(
            width,
            Enumerable
                .Range(strip, blanks.Length - strip)
                .Select(i => inStrip[i, strip] * blanks[i].Across)
        );
        exactWidth.Add(strip, width);
        return width;
    }

    private readonly Dictionary<int, IntVar> exactWidth = [];

    /// <summary>Crosscuts in a strip by its width.</summary>
    private IntVar CrosscutsOf(int strip)
    {
        var n = blanks.Length;
        var isWhole = model.NewBoolVar("");
        var along = LinearExpr.Sum(
            Enumerable
                .Range(strip, n - strip)
                .Select(i => inStrip[i, strip] * (blanks[i].Along + kerf))
        );
        for (var c = 0; c <= strip; c++)
            model.Add(along == sectionLength[c]).OnlyEnforceIf([isWhole, inSection[strip, c]]);
        model.AddImplication(isWhole, inStrip[strip, strip]);
        var cuts = model.NewIntVar(0, n, "");
        model.Add(
            cuts
                == LinearExpr.Sum(Enumerable.Range(strip, n - strip).Select(i => inStrip[i, strip]))
                    - isWhole
        );
        var product = model.NewIntVar(0, n * boards[0].Width, "");
        model.AddMultiplicationEquality(product, [cuts, Width(strip)]);
        return product;
    }
}

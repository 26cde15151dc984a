using ShopClass.Core.Lumber;

namespace ShopClass.Core.Drawings;

/// <summary>
/// The grain of a plainsawn board. Growth rings are cylinders about the tree's centre; a face that cuts them at a
/// slowly changing depth shows them as long lines, and as arches where the depth passes a ring. Round a knot the lines
/// part. The same board always gets the same grain.
/// </summary>
internal sealed class Grain
{
    private readonly BoardScale scale;
    private readonly Board board;
    private readonly double length;
    private readonly double width;
    private readonly double tilt;
    private readonly double liveliness;
    private readonly double shift;
    private readonly double drift;
    private readonly double phase;
    private readonly ShopDice dice;
    private readonly IReadOnlyList<(double Along, double Across, double A, double C)> knots;

    private Grain(Board board, BoardScale scale)
    {
        (this.board, this.scale) = (board, scale);
        (length, width) = (scale.LengthDrawn, scale.WidthDrawn);
        dice = new(board.Id);
        // Short boards show less of the tree's taper than long ones.
        liveliness = Math.Clamp(length / (5 * width), 0.15, 1);
        tilt = liveliness * dice.Next(0.45, 0.95) * (dice.Next(0, 1) < 0.5 ? -1 : 1);
        shift = dice.Next(-0.16, 0.16);
        drift = dice.Next(-0.1, 0.1);
        phase = dice.Next(0, 6.28);
        knots = [.. board.Defects.Where(d => d.Kind is DefectKind.Knot).Select(KnotAt)];
    }

    /// <summary>Draws it on the board's wood, or on one piece of it.</summary>
    public static void AddTo(Sketch sketch, Board board, BoardRect? piece = null)
    {
        var grain = new Grain(board, sketch.Scale);
        foreach (var line in grain.Lines())
        foreach (
            var run in piece is { } rect
                ? Clip.Within(line, rect, sketch.Scale.PointsPerTick)
                : [line]
        )
            sketch.Through(run, Ink.Grain);
    }

    private IEnumerable<List<(double Along, double Across)>> Lines()
    {
        var half = width / 2;
        var step = Math.Clamp(half * 0.14, 2.8, 10);
        var farthest = 2.3 * half;
        for (var radius = 0.3 * half; radius < farthest; radius += step * dice.Next(0.6, 1.4))
            foreach (var ring in Rings(radius))
            foreach (var run in WithinBoard(ring))
                yield return run;
    }

    /// <summary>Where a ring of this radius comes to the face: one line on either side, joined where it arches over.</summary>
    private IEnumerable<List<(double Along, double Across)>> Rings(double radius)
    {
        var run = new List<(double Along, double Out)>();
        var startsAtTip = false;
        var grid = Places();
        for (var i = 0; i < grid.Count; i++)
        {
            var shows = radius > Depth(grid[i]);
            var shown = i > 0 && radius > Depth(grid[i - 1]);
            if (i > 0 && shows != shown)
            {
                var tip = Tip(radius, grid[i - 1], grid[i]);
                var inner = shows ? grid[i] : grid[i - 1];
                startsAtTip |= shows;
                run.AddRange(NearTip(radius, tip, inner, shows));
                if (!shows)
                {
                    foreach (var line in Sides(run, startsAtTip, endsAtTip: true))
                        yield return line;
                    (run, startsAtTip) = ([], false);
                }
            }

            if (shows)
                run.Add((grid[i], Out(radius, grid[i])));
        }

        foreach (var line in Sides(run, startsAtTip, endsAtTip: false))
            yield return line;
    }

    private IEnumerable<(double Along, double Out)> NearTip(
        double radius,
        double tip,
        double inner,
        bool opening
    )
    {
        double[] shares = opening ? [0, 0.03, 0.16, 0.45] : [0.45, 0.16, 0.03, 0];
        return shares.Select(s => tip + (inner - tip) * s).Select(a => (a, Out(radius, a)));
    }

    private IEnumerable<List<(double Along, double Across)>> Sides(
        List<(double Along, double Out)> run,
        bool startsAtTip,
        bool endsAtTip
    )
    {
        var far = run.ConvertAll(p => Warped(p.Along, p.Out));
        var near = run.ConvertAll(p => Warped(p.Along, -p.Out));
        if (startsAtTip)
        {
            near.Reverse();
            yield return [.. near, .. far.Skip(1)];
        }
        else if (endsAtTip)
        {
            near.Reverse();
            yield return [.. far, .. near.Skip(1)];
        }
        else
        {
            yield return far;
            yield return near;
        }
    }

    private IEnumerable<List<(double Along, double Across)>> WithinBoard(
        List<(double Along, double Across)> line
    )
    {
        var run = new List<(double Along, double Across)>();
        foreach (var place in line)
        {
            var share = place.Across / LocalWidth(place.Along);
            if (share is > 0.012 and < 0.988)
            {
                run.Add(place);
                continue;
            }

            if (run.Count > 1)
                yield return run;
            run = [];
        }

        if (run.Count > 1)
            yield return run;
    }

    /// <summary>How deep the face cuts below the tree's centre, here.</summary>
    private double Depth(double along)
    {
        var share = along / length;
        var waves =
            0.07 * Math.Sin(share * 5.1 + phase) + 0.03 * Math.Sin(share * 11.3 + 2 * phase);
        return width / 2 * Math.Max(0.05, 0.85 + tilt * (share - 0.5) + waves);
    }

    private double Out(double radius, double along)
    {
        var depth = Depth(along);
        return Math.Sqrt(Math.Max(0, radius * radius - depth * depth));
    }

    private double Tip(double radius, double a, double b)
    {
        var hiddenFirst = radius <= Depth(a);
        for (var i = 0; i < 24; i++)
        {
            var middle = (a + b) / 2;
            if ((radius <= Depth(middle)) == hiddenFirst)
                a = middle;
            else
                b = middle;
        }

        return hiddenFirst ? b : a;
    }

    private (double Along, double Across) Warped(double along, double outward)
    {
        var share = along / length;
        var middle =
            0.5
            + shift
            + drift * (share - 0.5)
            + 0.025 * liveliness * Math.Sin(share * 7.7 + phase);
        var across = (width * middle + outward) * LocalWidth(along) / width;
        foreach (var knot in knots)
        {
            var off = across - knot.Across;
            var side = off < 0 ? -1 : 1;
            var reach = (along - knot.Along) / (1.5 * knot.A + 0.5 * knot.C);
            var fade = Math.Exp(-reach * reach) * Math.Exp(-off * off / (5.3 * knot.C * knot.C));
            across += side * 1.12 * knot.C * fade;
        }

        return (along, across);
    }

    private double LocalWidth(double along) =>
        BoardScale
            .WidthAt(board, Measure.Length.FromTicks((long)(along / scale.PointsPerTick)))
            .Ticks * scale.PointsPerTick;

    private List<double> Places()
    {
        var steps = Math.Clamp((int)(length / 30), 6, 60);
        var even = Enumerable.Range(0, steps + 1).Select(i => length * i / steps);
        double[] about = [-2.6, -1.7, -1, -0.45, 0, 0.45, 1, 1.7, 2.6];
        var round = knots.SelectMany(k => about.Select(s => k.Along + s * (k.A + 0.3 * k.C)));
        return [.. even.Concat(round).Where(a => a >= 0 && a <= length).Distinct().Order()];
    }

    private (double Along, double Across, double A, double C) KnotAt(Defect knot)
    {
        var s = scale.PointsPerTick;
        var p = knot.Place;
        return (
            (p.From.Ticks + p.To.Ticks) / 2.0 * s,
            (p.Near.Ticks + p.Far.Ticks) / 2.0 * s,
            Math.Max(1, p.Along.Ticks / 2.0 * s),
            Math.Max(1, p.Across.Ticks / 2.0 * s)
        );
    }
}

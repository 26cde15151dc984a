using ShopClass.Core.Lumber;

namespace ShopClass.Core.Drawings;

/// <summary>Bad places drawn as they look: knots as knots, splits as cracks, wane along its edge.</summary>
internal static class DefectMarks
{
    /// <summary>Draws all of a board's defects.</summary>
    public static void AddTo(Sketch sketch, Board board)
    {
        var dice = new ShopDice(board.Id + " defects");
        foreach (var defect in board.Defects)
            Add(new Spot(sketch, defect.Place), board, defect, dice);
    }

    private static void Add(Spot spot, Board board, Defect defect, ShopDice dice)
    {
        switch (defect.Kind)
        {
            case DefectKind.Knot:
                spot.Rings();
                break;
            case DefectKind.Hole:
                spot.Ring(0.7);
                break;
            case DefectKind.Split:
                AddSplit(spot, board, defect, dice);
                break;
            case DefectKind.Check:
                AddChecks(spot, dice);
                break;
            case DefectKind.Wane:
                AddWane(spot, board, defect, dice);
                break;
            case DefectKind.Pith:
                spot.Curve([(0, 0.5), (0.3, 0.42), (0.7, 0.58), (1, 0.5)]);
                break;
            case DefectKind.PitchPocket:
                spot.Curve([(0, 0.5), (0.5, 0.12), (1, 0.5)]);
                spot.Curve([(0, 0.5), (0.5, 0.88), (1, 0.5)]);
                break;
            case DefectKind.Stain:
                AddStain(spot, dice);
                break;
            default:
                spot.Curve([(0, 0), (1, 1)]);
                spot.Curve([(0, 1), (1, 0)]);
                break;
        }
    }

    // A split opens towards the nearer end of the board.
    private static void AddSplit(Spot spot, Board board, Defect defect, ShopDice dice)
    {
        var opensAtEnd = defect.Place.From.Ticks + defect.Place.To.Ticks > board.Length.Ticks;
        double At(double share) => opensAtEnd ? 1 - share : share;
        var (a, b) = (dice.Next(0.38, 0.46), dice.Next(0.54, 0.62));
        spot.Curve([(At(0), 0.3), (At(0.3), a), (At(0.62), b), (At(1), 0.5)]);
        spot.Curve([(At(0), 0.7), (At(0.3), a + 0.18), (At(0.62), b + 0.05), (At(1), 0.5)]);
    }

    private static void AddChecks(Spot spot, ShopDice dice)
    {
        foreach (var across in (double[])[0.2, 0.5, 0.8])
        {
            var from = dice.Next(0, 0.25);
            var to = dice.Next(0.7, 1);
            spot.Curve([
                (from, across),
                ((from + to) / 2, across + dice.Next(-0.08, 0.08)),
                (to, across),
            ]);
        }
    }

    private static void AddWane(Spot spot, Board board, Defect defect, ShopDice dice)
    {
        var middle = defect.Place.Near.Ticks + defect.Place.Far.Ticks;
        var atNear = middle < BoardScale.GreatestWidth(board).Ticks;
        double At(double depth) => atNear ? depth : 1 - depth;
        List<(double, double)> corners = [(0, At(0))];
        for (var i = 0; i <= 8; i++)
            corners.Add((i / 8.0, At(i is 0 or 8 ? dice.Next(0.5, 0.7) : dice.Next(0.72, 1))));
        corners.Add((1, At(0)));
        spot.Shape(corners);
    }

    private static void AddStain(Spot spot, ShopDice dice)
    {
        List<(double, double)> corners = [];
        for (var i = 0; i < 12; i++)
        {
            var reach = dice.Next(0.38, 0.5);
            corners.Add(
                (0.5 + reach * Math.Cos(i * Math.PI / 6), 0.5 + reach * Math.Sin(i * Math.PI / 6))
            );
        }

        spot.Shape(corners);
    }

    /// <summary>A rectangle of the board, its places given as shares along and across it.</summary>
    private sealed class Spot(Sketch sketch, BoardRect place)
    {
        private readonly double s = sketch.Scale.PointsPerTick;

        // Small knots get no rings: on paper they would run together.
        public void Rings()
        {
            var radius = Math.Min(place.Along.Ticks, place.Across.Ticks) / 2.0 * s;
            foreach (var share in radius < 5 ? [0.92] : (double[])[0.92, 0.6, 0.28])
                Ring(share);
        }

        public void Ring(double share) =>
            sketch.Ring(
                (place.From.Ticks + place.To.Ticks) / 2.0 * s,
                (place.Near.Ticks + place.Far.Ticks) / 2.0 * s,
                Math.Max(0.6, place.Along.Ticks / 2.0 * s * share),
                Math.Max(0.6, place.Across.Ticks / 2.0 * s * share),
                Ink.Defect
            );

        public void Curve(IReadOnlyList<(double Along, double Across)> shares) =>
            sketch.Through([.. shares.Select(At)], Ink.Defect);

        public void Shape(IEnumerable<(double Along, double Across)> shares) =>
            sketch.Shape(shares.Select(At), Ink.Defect);

        private (double, double) At((double Along, double Across) share) =>
            (
                (place.From.Ticks + share.Along * place.Along.Ticks) * s,
                (place.Near.Ticks + share.Across * place.Across.Ticks) * s
            );
    }
}

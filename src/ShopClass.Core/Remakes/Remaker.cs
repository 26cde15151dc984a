namespace ShopClass.Core.Remakes;

/// <summary>Finds every legal way to get a spoiled part back, and says why the other ways are closed.</summary>
/// <remarks>
/// Each way that saws wood is a whole plan of its own, laid out by the planner on the pieces at hand and passed by the
/// rehearsal; a layout the rehearsal refuses is not offered.
/// </remarks>
public static class Remaker
{
    /// <summary>All ways, least disturbance first.</summary>
    /// <exception cref="ArgumentException">The plan has no such blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More cuts are said to be made than the plan has.</exception>
    public static RemakeAnswer Options(Mishap mishap, Supplies supplies)
    {
        var bench = new RemakeBench(mishap, new(mishap));
        TriedWay[] tried =
        [
            WaysFromTheWood.FromOffcut(bench),
            WaysFromTheWood.GluedUp(bench),
            WaysFromTheWood.LaidOutAgain(bench),
            WaysFromTheShop.FromRack(bench, supplies),
            WaysFromTheShop.ClassSpare(bench, supplies),
            WaysFromTheShop.NewBoard(bench, supplies),
        ];
        var smaller = tried[0].Option is null ? WaysFromTheWood.Smaller(bench) : null;
        TriedWay[] all = smaller is null ? tried : [.. tried, smaller];
        return new(
            [.. all.Select(t => t.Option).OfType<RemakeOption>()],
            [.. all.Select(t => t.Reason).OfType<ClosedWay>()]
        );
    }
}

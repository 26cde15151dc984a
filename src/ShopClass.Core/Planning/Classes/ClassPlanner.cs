using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes;

/// <summary>Chooses what to buy for a class, and lays all kits out.</summary>
public static class ClassPlanner
{
    /// <summary>
    /// The cheapest way found within the request's step limit, with a proven bound. Never throws for wood that will not
    /// do: what no board yields is named in <see cref="ClassPlan.Missing"/>.
    /// </summary>
    /// <param name="request">Everything the plan depends on.</param>
    /// <param name="progress">Told of cheaper ways.</param>
    /// <param name="cancel">Stops the search; the cheapest way so far is returned.</param>
    /// <exception cref="ArgumentOutOfRangeException">A price, a value, a count of kits or of spares is negative.</exception>
    public static ClassPlan Plan(
        ClassRequest request,
        IProgress<ClassProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        Check(request);
        var wood = new ClassWood(request);
        var search = new ClassSearch(
            request,
            wood,
            new Effort(request.StepLimit, cancel),
            progress
        );
        var result = request.Way is KitWay.Pooled ? search.Pooled() : search.WholeBoards();
        return new ClassWriter(request, wood).Write(result);
    }

    private static void Check(ClassRequest request)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(request.Kits);
        ArgumentOutOfRangeException.ThrowIfNegative(request.SpareKits);
        foreach (var size in request.Stock)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(size.Price);
            ArgumentOutOfRangeException.ThrowIfNegative(size.Available ?? 0);
        }

        foreach (var board in request.Rack)
            ArgumentOutOfRangeException.ThrowIfNegative(board.Value);
        foreach (var count in request.SpareParts.Values)
            ArgumentOutOfRangeException.ThrowIfNegative(count);
    }
}

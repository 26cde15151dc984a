namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>The steps in order, found again by their ids.</summary>
internal sealed class StepList
{
    private readonly List<Step> steps = [];
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);

    public IReadOnlyList<Step> All => steps;

    public bool Has(string id) => numbers.ContainsKey(id);

    /// <summary>Whichever of two steps comes later.</summary>
    public string Later(string? one, string other) =>
        one is not null && numbers[one] > numbers[other] ? one : other;

    /// <summary>Adds a step after those it waits for, and gives back its id. A second step of one id gets a mark to tell it by.</summary>
    public string Add(string id, Step step, IEnumerable<string?> after)
    {
        var unique = id;
        for (var again = 2; numbers.ContainsKey(unique); again++)
            unique = $"{id}~{again}";
        var number = steps.Count + 1;
        numbers[unique] = number;
        steps.Add(
            step with
            {
                Id = unique,
                Number = number,
                After = [.. after.OfType<string>().Select(a => numbers[a]).Distinct().Order()],
            }
        );
        return unique;
    }
}

using ShopClass.Core.Paces;
using ShopClass.Core.Projects;
using ShopClass.Data.Learning;
using ShopClass.Data.Orders;

namespace ShopClass.Web.Features.Orders;

/// <summary>What an order takes from the course this one began with: the waste of the rule of thumb, and spares.</summary>
/// <param name="Source">The earlier course's name; empty for a course file.</param>
/// <param name="Figures">What it has learned of this project.</param>
public sealed record LastCourse(string Source, LearnedProject Figures)
{
    /// <summary>Of this project; null where the course began with the usual rates or knows nothing of it.</summary>
    public static LastCourse? Of(StartView? start, string project) =>
        start?.Taken is { } taken && taken.Figures.Find(project) is { } figures
            ? new(taken.Source, figures)
            : null;

    /// <summary>The choices with its figures filled in. A part of which none was spoiled gets no spare.</summary>
    public OrderChoices In(OrderChoices choices, IEnumerable<Part> parts, int kits)
    {
        var spares = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var (part, count) in Spares(parts, kits))
            spares[part.Letter] = count;
        return choices with
        {
            WastePercent = Figures.Waste?.Percent ?? choices.WastePercent,
            SpareParts = spares,
        };
    }

    /// <summary>What the figures rest on, in a sentence.</summary>
    public string Basis(IEnumerable<Part> parts, int kits)
    {
        var from = Source.Length > 0 ? $"the last course, “{Source}”" : "the last course";
        string[] words =
        [
            .. Figures.Waste is { } waste ? [PaceWords.Of(waste)] : Array.Empty<string>(),
            .. Spares(parts, kits)
                .Select(s =>
                    $"{(s.Count == 1 ? "1 spare" : $"{s.Count} spares")} of {s.Part.Letter}, since {PaceWords.Of(Figures.Spoiled.First(f => f.Part == s.Part.Letter))}"
                ),
        ];
        return words.Length == 0
            ? $"From {from}: nothing was spoiled, so no spares."
            : $"From {from}: {string.Join("; ", words)}.";
    }

    private IEnumerable<(Part Part, int Count)> Spares(IEnumerable<Part> parts, int kits) =>
        from part in parts
        let share = Figures.Spoiled.FirstOrDefault(s => s.Part == part.Letter)
        where share is { Spoiled: > 0 }
        let count = Math.Min(
            OrderChoices.MostSpareParts,
            share.SparesFor(part.Quantity * Math.Max(0, kits))
        )
        where count > 0
        select (part, count);
}

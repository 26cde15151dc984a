using System.Globalization;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Web.Features.Lessons;

/// <summary>Counts of stations as typed; what cannot be read stays as it was typed, with a sentence.</summary>
public sealed class StationsDraft
{
    private readonly SortedDictionary<Station, string> _texts = [];
    private readonly Dictionary<string, string> _problems = new(StringComparer.Ordinal);

    public StationsDraft(StationCounts counts)
    {
        foreach (var station in StationCounts.Counted)
            _texts[station] = Text(counts.PlacesAt(station) ?? 0);
    }

    public string this[Station station]
    {
        get => _texts[station];
        set
        {
            _texts[station] = value;
            _problems.Remove(LessonChecks.FieldOf(station));
        }
    }

    public string? ProblemWith(Station station) =>
        _problems.GetValueOrDefault(LessonChecks.FieldOf(station));

    public void Show(IEnumerable<(string Field, string Sentence)> problems)
    {
        foreach (var (field, sentence) in problems)
            _problems[field] = sentence;
    }

    /// <summary>The counts, or null while one cannot be read.</summary>
    public StationCounts? ToCounts()
    {
        _problems.Clear();
        foreach (var (station, text) in _texts)
        {
            if (!IsCount(text, out _))
                _problems[LessonChecks.FieldOf(station)] =
                    $"“{text}” is no count. Type a whole number, such as 4.";
        }

        return _problems.Count > 0
            ? null
            : new(
                Count(Station.SawBench),
                Count(Station.Vise),
                Count(Station.BenchHook),
                Count(Station.Sharpening)
            );
    }

    internal static bool IsCount(string? text, out int count) =>
        int.TryParse(
            text,
            NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite,
            CultureInfo.InvariantCulture,
            out count
        );

    internal static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    private int Count(Station station) => IsCount(_texts[station], out var count) ? count : 0;
}

using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Courses;

/// <summary>
/// A course's settings while they are being changed. What cannot be read or is out of bounds stays as typed, with its
/// sentence, until it is put right or taken back.
/// </summary>
public sealed class RulesDraft
{
    private readonly Dictionary<string, Length?> lengths = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> problems = new(StringComparer.Ordinal);

    public RulesDraft(CourseRules stored) => Take(stored);

    public UnitSystem Unit { get; private set; }

    public Precision Precision { get; set; }

    public bool PlaningTaught { get; set; }

    public bool EdgeGluingTaught { get; set; }

    public int MostGlueUpStrips { get; set; }

    /// <summary>Hundredths, as stored; null while it cannot be read.</summary>
    public int? HardGoingAbove { get; private set; }

    public string HardGoingText { get; private set; } = "";

    /// <summary>Per cent, as typed.</summary>
    public string ShopHumidityText { get; private set; } = "";

    /// <summary>Per cent, as typed.</summary>
    public string RoomHumidityText { get; private set; } = "";

    public int? ShopHumidity => Percent(ShopHumidityText);

    public int? RoomHumidity => Percent(RoomHumidityText);

    public Length? this[LengthRule rule] => lengths[rule.Key];

    public void Set(LengthRule rule, Length? value)
    {
        lengths[rule.Key] = value;
        problems.Remove(rule.Key);
    }

    public void SetHardGoing(string? text)
    {
        HardGoingText = text ?? "";
        HardGoingAbove = SpecificGravity.Read(HardGoingText);
        problems.Remove(RuleBook.HardGoingKey);
    }

    public void SetShopHumidity(string? text)
    {
        ShopHumidityText = text ?? "";
        problems.Remove(RuleBook.ShopHumidityKey);
    }

    public void SetRoomHumidity(string? text)
    {
        RoomHumidityText = text ?? "";
        problems.Remove(RuleBook.RoomHumidityKey);
    }

    public string? ProblemWith(string key) => problems.GetValueOrDefault(key);

    /// <summary>The other unit: lengths stay what they are, and are shown and read in it from now on.</summary>
    public void Switch(UnitSystem unit)
    {
        if (unit == Unit)
            return;
        Unit = unit;
        Precision = CourseRules.DefaultsFor(unit).Precision;
    }

    /// <summary>All lengths as the unit's own defaults have them; the rest stays.</summary>
    public void TakeDefaultLengths()
    {
        foreach (var rule in RuleBook.Lengths)
            Set(rule, rule.DefaultFor(Unit));
    }

    /// <summary>Whether every length is the unit's default.</summary>
    public bool HasDefaultLengths =>
        RuleBook.Lengths.All(rule => lengths[rule.Key] == rule.DefaultFor(Unit));

    /// <summary>The settings as typed, or null when something is not right; then each field has its sentence.</summary>
    public CourseRules? ToRules()
    {
        problems.Clear();
        var rules = CourseRules.DefaultsFor(Unit) with
        {
            Precision = Precision,
            PlaningTaught = PlaningTaught,
            EdgeGluingTaught = EdgeGluingTaught,
            MostGlueUpStrips = MostGlueUpStrips,
        };
        foreach (var rule in RuleBook.Lengths)
        {
            if (lengths[rule.Key] is { } length)
                rules = rule.With(rules, length);
            else
                problems[rule.Key] = "Type a length here, or take the default back.";
        }
        if (HardGoingAbove is { } hardGoing)
            rules = rules with { HardGoingAbove = hardGoing };
        else
            problems[RuleBook.HardGoingKey] =
                $"\"{HardGoingText}\" is not a specific gravity. Expected is a number such as 0.55.";
        rules = rules with
        {
            ShopHumidity = Humidity(RuleBook.ShopHumidityKey, ShopHumidityText),
            RoomHumidity = Humidity(RuleBook.RoomHumidityKey, RoomHumidityText),
        };
        Show(RuleBook.ProblemsIn(rules).Where(p => !problems.ContainsKey(p.Key)));
        return problems.Count == 0 ? rules : null;
    }

    private int Humidity(string key, string text)
    {
        if (Percent(text) is { } humidity)
            return humidity;
        problems[key] =
            $"\"{text}\" is not a humidity. Expected is a whole number of per cent, such as 50.";
        return RuleBook.UsualShopHumidity;
    }

    private static int? Percent(string text) =>
        int.TryParse(
            text.Trim().TrimEnd('%').TrimEnd(),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var percent
        )
            ? percent
            : null;

    /// <summary>Where settings that are no lengths differ from what is stored, one sentence each.</summary>
    public IReadOnlyList<string> OtherDifferences(CourseRules stored)
    {
        List<string> found = [];
        if ((stored.Unit, stored.Precision) != (Unit, Precision))
            found.Add($"Stored now: {UnitWords.Of(stored)}.");
        if (stored.PlaningTaught != PlaningTaught)
            found.Add($"Stored now: planing is {(stored.PlaningTaught ? "" : "not ")}taught.");
        if (stored.EdgeGluingTaught != EdgeGluingTaught)
            found.Add(
                $"Stored now: edge gluing is {(stored.EdgeGluingTaught ? "" : "not ")}taught."
            );
        if (stored.MostGlueUpStrips != MostGlueUpStrips)
            found.Add($"Stored now: at most {stored.MostGlueUpStrips} strips in a glue-up.");
        if (stored.HardGoingAbove != HardGoingAbove)
            found.Add(
                $"Stored now: hard going above {SpecificGravity.Write(stored.HardGoingAbove)}."
            );
        if (stored.ShopHumidity != ShopHumidity || stored.RoomHumidity != RoomHumidity)
            found.Add(
                $"Stored now: {stored.ShopHumidity} % humidity in the shop, {stored.RoomHumidity} % in the room."
            );
        return found;
    }

    /// <summary>Sentences the store found.</summary>
    public void Show(IEnumerable<(string Key, string Sentence)> found)
    {
        foreach (var (key, sentence) in found.ToList())
            problems.TryAdd(key, sentence);
    }

    /// <summary>Starts over from these settings.</summary>
    public void Take(CourseRules stored)
    {
        problems.Clear();
        Unit = stored.Unit;
        Precision = stored.Precision;
        PlaningTaught = stored.PlaningTaught;
        EdgeGluingTaught = stored.EdgeGluingTaught;
        MostGlueUpStrips = stored.MostGlueUpStrips;
        SetHardGoing(SpecificGravity.Write(stored.HardGoingAbove));
        SetShopHumidity(stored.ShopHumidity.ToString(CultureInfo.InvariantCulture));
        SetRoomHumidity(stored.RoomHumidity.ToString(CultureInfo.InvariantCulture));
        foreach (var rule in RuleBook.Lengths)
            lengths[rule.Key] = rule.Get(stored);
    }
}

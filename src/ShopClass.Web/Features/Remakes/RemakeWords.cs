using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing;

namespace ShopClass.Web.Features.Remakes;

/// <summary>Remakes in the words of their cards.</summary>
public static class RemakeWords
{
    public static string Of(RemakeWay way) =>
        way switch
        {
            RemakeWay.Offcut => "From an offcut",
            RemakeWay.GluedUp => "Glued up",
            RemakeWay.LaidOutAgain => "Laid out again",
            RemakeWay.Rack => "From the rack",
            RemakeWay.ClassSpare => "The class’s spare",
            RemakeWay.NewBoard => "A new board",
            RemakeWay.SmallerDesign => "A smaller piece",
            _ => throw new ArgumentOutOfRangeException(nameof(way), way, "Not a way."),
        };

    /// <summary>What it takes, in a few words each.</summary>
    public static IEnumerable<(string Label, string Value)> Numbers(RemakeOption option)
    {
        if (option.Cost is { } cost)
            yield return ("Costs", Written(cost));
        if (option.Plan is not { } plan)
        {
            yield return ("Cuts", "none");
            yield break;
        }

        yield return ("Cuts", $"{plan.Sequence.Cuts.Count}");
        var rips = plan.Sequence.Cuts.Where(c => c.Kind is CutKind.Rip);
        var ripped = rips.Aggregate(Length.Zero, (sum, c) => sum + c.SawnLength);
        if (ripped > Length.Zero)
            yield return (
                "To rip",
                LengthWriter.WriteWithUnit(ripped, plan.Request.Rules.Precision)
            );
        if (plan.Plan.GlueUps.Count > 0)
            yield return ("Glue", "an hour in clamps at least, work it next day");
    }

    /// <summary>The blanks it makes, by the names they have in the first plan.</summary>
    public static string Makes(RemakeOption option) =>
        string.Join(
            ", ",
            option.Blanks.Select(b =>
                b.Here == b.InFirstPlan ? $"{b.Here}" : $"{b.Here} (which is {b.InFirstPlan})"
            )
        );

    public static string Of(BlankKey key, CheckedPlan plan) =>
        $"{key}, {plan.Request.Project.Parts.First(p => p.Letter == key.Part).Name}";

    private static string Written(Money money) =>
        FormattableString.Invariant(
            $"{money.MinorUnits / 100}.{money.MinorUnits % 100:00} {money.Currency}"
        );
}

using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;

namespace ShopClass.Web.Features.Remakes;

/// <summary>What is left of a spoiled blank.</summary>
public enum WhatIsLeft
{
    /// <summary>None of it is any use.</summary>
    Nothing,

    /// <summary>A sound length at the end nearest the board's start.</summary>
    TheStart,

    /// <summary>A sound length at its other end.</summary>
    TheEnd,
}

/// <summary>What somebody says about a spoiled part, before the ways out are looked for.</summary>
public sealed class SpoiledDraft(CheckedPlan plan, IReadOnlyList<RemakeMade>? remakes = null)
{
    private readonly IReadOnlyList<RemakeMade> made = remakes ?? [];
    private BlankKey? spoiled;

    /// <summary>Where each blank lies, by its name, in the plan it comes from now.</summary>
    public IReadOnlyDictionary<BlankKey, BoardRect> Places { get; } =
        (
            from source in (remakes ?? []).Select(r => r.Plan).OfType<CheckedPlan>().Prepend(plan)
            from layout in source.Plan.Boards
            from section in layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            where ReferenceEquals(Mishaps.PlanOf(plan, remakes ?? [], blank.Key), source)
            orderby blank.Key
            select (blank.Key, Rect: blank.In(strip))
        ).ToDictionary(b => b.Key, b => b.Rect);

    /// <summary>The plan the spoiled blank comes from: the first, or the remake that made it.</summary>
    public CheckedPlan Plan => Spoiled is { } key ? Mishaps.PlanOf(plan, made, key) : plan;

    public BlankKey? Spoiled
    {
        get => spoiled;
        set
        {
            var before = Plan;
            spoiled = value;
            if (!ReferenceEquals(before, Plan))
                CutsMade = Plan.Sequence.Cuts.Count;
        }
    }

    public int CutsMade { get; set; } = plan.Sequence.Cuts.Count;

    public WhatIsLeft Left { get; set; }

    public Length? SoundLength { get; set; }

    /// <summary>Whether what is not sawn out yet of the blank's board still matters: all cuts but some are made.</summary>
    public bool AsksForLength => Left is not WhatIsLeft.Nothing;

    /// <summary>What is wrong with the sound length, as a sentence; null when nothing is.</summary>
    public string? LengthProblem =>
        (AsksForLength, SoundLength, Spoiled) switch
        {
            (false, _, _) or (_, _, null) => null,
            (_, null, _) =>
                "Measure how long the sound piece is, or say that none of it is any use.",
            (_, { } sound, _) when sound <= Length.Zero =>
                "The sound length must be more than zero.",
            (_, { } sound, { } key) when sound >= Places[key].Along =>
                $"{key} was laid out {Write(Places[key].Along)} long, so the sound piece must be shorter than that. If nothing is missing, it is not spoiled.",
            _ => null,
        };

    /// <summary>The mishap, or null while something is missing or not right.</summary>
    public Mishap? Mishap =>
        Spoiled is { } key && LengthProblem is null
            ? Mishaps.Now(plan, made, key, CutsMade, Lost(Places[key]))
            : null;

    private BoardRect? Lost(BoardRect place) =>
        Left switch
        {
            WhatIsLeft.TheStart => place with { From = place.From + SoundLength!.Value },
            WhatIsLeft.TheEnd => place with { To = place.To - SoundLength!.Value },
            _ => null,
        };

    private string Write(Length length) =>
        LengthWriter.WriteWithUnit(length, plan.Request.Rules.Precision);
}

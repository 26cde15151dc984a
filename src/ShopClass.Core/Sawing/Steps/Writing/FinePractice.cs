namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Practising a knife-line crosscut, once, on waste that is there by then.</summary>
internal static class FinePractice
{
    private const string Id = "practise:crosscut";

    /// <summary>
    /// What the first cut of the breakdown to a knife line waits for: practice on the waste of a cut before it. Null for
    /// rough cuts and trims, and while no waste is there yet.
    /// </summary>
    public static string? Before(Job job, Cut cut) =>
        cut is { Line: LineKind.Knife, Kind: CutKind.Crosscut } ? Write(job) : null;

    /// <summary>The step, written at the first call; null while there is no waste to practise on.</summary>
    public static string? Write(Job job)
    {
        if (job.Steps.Has(Id))
            return Id;
        if (job.WasteFrom is null)
            return null;
        return job.Steps.Add(
            Id,
            new()
            {
                Id = "",
                Number = 0,
                Kind = StepKind.Practise,
                Skill = Skill.FineCrosscutting,
                Station = Station.BenchHook,
                Title = "Practise a knife-line crosscut on your own waste",
                Pieces = [],
                Class = CutClass.Second,
                Saw = Saws.For(SawKind.BackSaw, job.Rules),
                Support = Support.BenchHook,
                Line = LineKind.Knife,
                MarkedFrom = "the straighter edge",
                WasteSide = Side.Right,
                Hold = Holds.EndCut(Support.BenchHook, "the waste"),
                Technique = $"{job.Technique("Practise")} {job.Technique("CutToLength")}",
                Reason = "The first knife-line cut should not be one that counts.",
                Needs = [job.WasteNeeded],
                Tools = ["back saw", "bench hook", "marking knife", "square", "chisel"],
                Time = job.Pace.Flat(10, "to practise a cut and look at it"),
            },
            [job.WasteFrom]
        );
    }
}

using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>The dry fit, the open dimensions after their events, putting together and finishing.</summary>
internal sealed class AssemblySteps(Job job)
{
    // An hour in the clamps at least (common practice).
    private const int InClamps = 60 * 60;

    private readonly ClosingSteps closing = new(job);

    public void Write()
    {
        if (!IsWhole())
            return;
        var pieces = job.Parts.ToList();
        CloseAll(OpenStage.Chosen, null);
        var dry = DryFit(pieces);
        CloseAll(OpenStage.DryFit, dry);
        // A single piece, or one that waits for others that wait for it, is closed as soon as all is fitted.
        if (pieces.TrueForAll(WaitsForTheRest))
            CloseAll(OpenStage.RestStands, dry);
        if (pieces.Count > 1)
            PutTogether(pieces, dry);
        else
            CloseAll(OpenStage.Together, dry);
        Finish(pieces);
    }

    private bool IsWhole() =>
        job.Plan.Plan.IsComplete
        && job.Project.Parts.Any(p => p.Quantity > 0)
        && job.Project.Parts.All(p => job.Of(p.Letter).Count == p.Quantity);

    private void CloseAll(OpenStage stage, string? eventStep)
    {
        foreach (var part in job.Project.Parts)
            closing.Close(part, stage, eventStep);
    }

    private static bool WaitsForTheRest(Workpiece piece) =>
        piece.StillOpen.Any(o => OpenEvents.When(o) is OpenStage.RestStands);

    private string? DryFit(List<Workpiece> pieces)
    {
        var there = pieces.Where(p => !StaysOut(p)).ToList();
        if (job.Fits.Count == 0 || there.Count < 2)
            return null;
        return job.Steps.Add(
            "dryfit",
            Plain(StepKind.Fit, "DryFit") with
            {
                Title =
                    there.Count == pieces.Count
                        ? "Put everything together dry"
                        : $"Put everything together dry, without {Words.List([.. pieces.Except(there).Select(p => p.Part.Letter).Distinct()])}",
                Pieces = [.. there.Select(p => p.Name)],
                Reason = "What still has to be measured is measured now, from the thing itself.",
                Needs = ["Every joint is fitted."],
                Leaves = [.. there.Select(p => p.AsItIs)],
                Open = [.. there.SelectMany(OpenOf)],
                Tools = ["square", "rule", "clamps"],
                Time = job.Pace.Flat(10 + there.Count, "to put together dry and try for square"),
            },
            [.. there.Select(p => p.Last), .. job.Fits]
        );
    }

    /// <summary>A part whose length is still over, and that is held by no joint, has no room yet.</summary>
    private bool StaysOut(Workpiece piece) =>
        piece.StillOpen.Any(o =>
            o.Dimension is PartDimension.Length && OpenEvents.When(o) is not OpenStage.Together
        )
        && !job.Project.Joints.Any(j =>
            j.Kind is not JointKind.Nailed
            && (j.Part == piece.Part.Letter || j.Mate == piece.Part.Letter)
        );

    private void PutTogether(List<Workpiece> pieces, string? dry)
    {
        var later = pieces.Where(WaitsForTheRest).ToList();
        var first = pieces.Except(later).ToList();
        string? stands = null;
        if (first.Count > 0)
            stands = Assemble(
                "assemble",
                first,
                later.Count > 0
                    ? "Put the rest together, so that it stands"
                    : "Put everything together",
                [dry]
            );
        if (later.Count > 0)
        {
            CloseAll(OpenStage.RestStands, stands);
            stands = Assemble(
                "assemble:rest",
                later,
                $"Put {Words.Short([.. later.Select(p => p.Name)])} in",
                [stands]
            );
        }

        CloseAll(OpenStage.Together, stands);
    }

    private string Assemble(
        string id,
        List<Workpiece> pieces,
        string title,
        IEnumerable<string?> after
    )
    {
        var (isGlued, isNailed) = HowHeld();
        var made = job.Steps.Add(
            id,
            Plain(StepKind.Assemble, "Assemble") with
            {
                Title = title,
                Pieces = [.. pieces.Select(p => p.Name)],
                Reason = "Everything has been tried dry, so nothing is found out with glue on it.",
                Needs = ["Everything that meets fits."],
                Leaves = [.. pieces.Select(p => p.AsItIs)],
                Open = [.. pieces.SelectMany(OpenOf)],
                Tools =
                [
                    "clamps",
                    "square",
                    "rule",
                    .. isGlued ? ["glue"] : Array.Empty<string>(),
                    .. isNailed
                        ? ["hammer and nail set, or drill and screwdriver"]
                        : Array.Empty<string>(),
                ],
                Marks = [.. NailedOf(pieces)],
                Time = job.Pace.Flat(
                    10 + 3 * pieces.Count,
                    isGlued
                        ? "to put together, three for each piece; common practice: at least an hour in the clamps"
                        : "to put together, three for each piece",
                    isGlued ? InClamps : 0
                ),
            },
            [.. after, .. pieces.Select(p => p.Last)]
        );
        foreach (var piece in pieces)
            piece.Last = made;
        return made;
    }

    /// <summary>Joints that are cut are glued; where there is none, nails or screws hold it, unless a note says glue.</summary>
    private (bool Glued, bool Nailed) HowHeld()
    {
        var cut = job.Project.Joints.Any(j => j.Kind is not JointKind.Nailed);
        var said = job.Project.Parts.Any(p =>
            p.JointNotes.Contains("glue", StringComparison.OrdinalIgnoreCase)
        );
        return (cut || said, !cut || job.Project.Joints.Any(j => j.Kind is JointKind.Nailed));
    }

    private IEnumerable<string> NailedOf(List<Workpiece> pieces)
    {
        var letters = pieces.Select(p => p.Part.Letter).ToHashSet(StringComparer.Ordinal);
        foreach (
            var joint in job.Project.Joints.Where(j =>
                j.Kind is JointKind.Nailed && j.Mate is not null
            )
        )
        {
            if (IsFixedNow(joint, letters))
                yield return joint.Note.Length > 0
                    ? $"{joint.Mate} to {joint.Part}: {joint.Note}"
                    : $"{joint.Mate} to {joint.Part}, nailed or screwed";
        }
    }

    /// <summary>Whether one of its parts goes on now, and the other does too or is there already.</summary>
    private bool IsFixedNow(Joint joint, HashSet<string> now)
    {
        var waits = job
            .Project.Parts.Where(p => p.Open.Any(o => OpenEvents.When(o) is OpenStage.RestStands))
            .Select(p => p.Letter)
            .ToHashSet(StringComparer.Ordinal);
        return (now.Contains(joint.Part) || now.Contains(joint.Mate!))
            && (
                waits.Overlaps(now) || !(waits.Contains(joint.Part) || waits.Contains(joint.Mate!))
            );
    }

    private static IEnumerable<OpenNow> OpenOf(Workpiece piece) =>
        piece.StillOpen.Select(o => new OpenNow(
            piece.Name,
            o.Dimension,
            OpenState.Open,
            o.Extra,
            o.Until
        ));

    private void Finish(List<Workpiece> pieces) =>
        job.Steps.Add(
            "finish",
            Plain(StepKind.Finish, "Finish") with
            {
                Skill = Skill.Finishing,
                Title = "Clean up and finish",
                Pieces = [.. pieces.Select(p => p.Name)],
                Reason =
                    "Last, when nothing more is marked or glued: finish keeps glue out and lines from showing.",
                Needs = ["Glue is dry.", "No dimension is open any more."],
                Leaves = [.. pieces.Select(p => p.AsItIs)],
                Tools = ["smoothing plane or scraper", "brush or cloth", "finish"],
                Caution =
                    "Rags with oil can take fire by themselves: spread them out flat to dry, or keep them in water, as your shop's rules say.",
                Time = job.Pace.Flat(15 + 2 * pieces.Count, "to clean up and finish"),
            },
            pieces.Select(p => p.Last)
        );

    private Step Plain(StepKind kind, string technique) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = kind,
            Skill = Skill.Assembly,
            Station = Station.BenchTop,
            Title = "",
            Pieces = [],
            Technique = job.Technique(technique),
            Reason = "",
            Time = Pace.Prepared,
        };
}

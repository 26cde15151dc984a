using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Joints are marked together, cut to knife and gauge lines, and fitted one by one.</summary>
internal sealed class JointSteps(Job job)
{
    // Square inches of wall and floor a beginner saws and pares a minute in white pine (our proposal).
    private const int JointRate = 1;

    private readonly JointLines lines = new(job);

    public void Write()
    {
        foreach (var joint in job.Project.Joints)
            Write(joint);
        foreach (var part in job.Project.Parts.Where(IsOnlyNoted))
            AsNoted(part);
    }

    private void Write(Joint joint)
    {
        var parts = job.Of(joint.Part);
        var mates = joint.Mate is null ? [] : job.Of(joint.Mate);
        var stages = JointStage.Of(
            joint,
            parts.Count > 0 ? parts[0].Part : null,
            mates.Count > 0 ? mates[0].Part : null
        );
        if (parts.Count == 0 || stages.Count == 0 || (joint.Mate is not null && mates.Count == 0))
            return;
        var thickness = mates.Count > 0 ? mates[0].Thickness : joint.Width ?? parts[0].Thickness;
        foreach (var stage in stages)
        {
            var own = stage.OnMate ? mates : parts;
            var other = stage.OnMate ? parts : mates;
            if (own.Count > 0)
                Write(new JointCut(joint, stage, own, other, thickness));
        }

        if (mates.Count > 0)
            Fit(joint, parts, mates);
    }

    private void Write(JointCut cut)
    {
        var gauge =
            cut.Joint.Depth > Length.Zero && cut.Joint.Kind is not JointKind.ThroughPeg
                ? job.Gauge("depth of the joints", cut.Joint.Depth)
                : null;
        var across = JointLines.SettingsAcross(cut);
        string[] gaugesAcross =
        [
            .. across.Select(a => job.Gauge("joints' distance from the reference edge", a)),
        ];
        var marked = job.Steps.Add(
            $"mark:{cut.Id}",
            Mark(cut, gauge is null ? null : cut.Joint.Depth, across),
            [
                .. cut.Own.Select(p => p.Last),
                .. cut.Other.Select(p => p.Last),
                gauge,
                .. gaugesAcross,
            ]
        );
        var practised = Practise(cut);
        foreach (var piece in cut.Own)
            piece.Last = job.Steps.Add(
                $"{cut.Stage.Word}:{piece.Name}:{cut.With}",
                Cut(cut, piece),
                [piece.Last, marked, practised]
            );
    }

    private Step Mark(JointCut cut, Length? depth, IReadOnlyList<Length> across)
    {
        var names = cut.Own.Select(p => p.Name).ToList();
        var settings = depth is { } deep ? across.Prepend(deep).ToList() : [.. across];
        return new()
        {
            Id = "",
            Number = 0,
            Kind = StepKind.MarkJoint,
            Skill = Skill.Joinery,
            Station = Station.BenchTop,
            Title =
                $"Mark the {cut.Stage.Word} on {Words.Short(names)}{(names.Count > 1 ? " together" : "")}",
            Pieces = names,
            Line = LineKind.Knife,
            MarkedFrom = cut.Stage.FromMate
                ? $"{cut.Other[0].Name} itself; the square on the reference face and edge"
                : "the squared ends, all flush; the square on the reference edge, the gauge on the reference face"
                    + (
                        across.Count > 0
                            ? " for the depth and on the reference edge for the rest"
                            : ""
                    ),
            Gauge = depth,
            GaugesAcross = across,
            Marks = [.. lines.Of(cut)],
            Technique = job.Technique("MarkJoint"),
            Reason = cut.Stage.FromMate
                ? "Marked from the part it must fit, not from a rule."
                : "Marked together from the reference end, face and edge, so that parts that must agree do.",
            Needs = settings.Count switch
            {
                0 => ["The pieces are at length."],
                1 => ["The pieces are at length.", "The gauge is set."],
                _ => ["The pieces are at length.", "Each gauge is set, and stays so."],
            },
            Leaves = [.. cut.Own.Select(p => p.AsItIs)],
            Tools = ["marking knife", "square", .. Job.GaugesFor(settings), "pencil"],
            Time = job.Pace.Flat(
                3 + 2 * cut.Own.Count * Count(cut.Joint),
                "to mark, two for each joint"
            ),
        };
    }

    private string? Practise(JointCut cut)
    {
        // Sawing a corner off is nothing new to who has sawn the dado.
        var id = $"practise:{cut.Stage.Word}";
        if (cut.Stage.Word is "shoulder")
            return null;
        if (job.WasteFrom is null || job.Steps.Has(id))
            return job.Steps.Has(id) ? id : null;
        return job.Steps.Add(
            id,
            Plain(StepKind.Practise, cut.Stage.Technique, cut.Stage.Tools) with
            {
                Title = $"Practise the {cut.Stage.Word} on your own waste",
                Class = CutClass.First,
                Hold = HoldFor("the waste"),
                Technique = $"{job.Technique("Practise")} {job.Technique(cut.Stage.Technique)}",
                Reason = "The first of its kind should not be one that counts.",
                Needs = [job.WasteNeeded],
                Time = job.Pace.Flat(20, "to practise a joint and look at it"),
            },
            [job.WasteFrom]
        );
    }

    private Step Cut(JointCut cut, Workpiece piece)
    {
        var count = cut.Stage.OnMate
            ? Math.Max(1, cut.Other.Count * Count(cut.Joint) / cut.Own.Count)
            : Count(cut.Joint);
        var worked = Enumerable
            .Range(0, count)
            .Aggregate(
                Area.Zero,
                (sum, _) => sum + cut.Stage.Worked(cut.Joint, piece, cut.MateThickness)
            );
        return Plain(StepKind.CutJoint, cut.Stage.Technique, cut.Stage.Tools) with
        {
            Title =
                count == 1
                    ? $"Cut the {cut.Stage.Word} in {piece.Name}"
                    : $"Cut the {count} {Many(cut.Stage.Word)} in {piece.Name}",
            Pieces = [piece.Name],
            Class = CutClass.First,
            Saw = cut.Stage.Tools.Any(t => t.EndsWith("saw", StringComparison.Ordinal))
                ? Saws.For(SawKind.BackSaw, job.Rules)
                : null,
            Line = LineKind.Knife,
            MarkedFrom = "the knife and gauge lines",
            Marks = [.. lines.Of(cut)],
            Hold = HoldFor(piece.Name),
            Reason = "A first-class cut: the chiselled knife line is the finished surface.",
            Needs = [$"The {cut.Stage.Word} is marked."],
            Leaves = [piece.AsItIs],
            Caution = "Both hands behind the edge of the chisel; nothing of you in front of it.",
            Open = [.. Enum.GetValues<PartDimension>().SelectMany(d => piece.OpenOf(d))],
            Time = job.Pace.Worked(5, worked, JointRate, "sawn and pared", piece.Board),
        };
    }

    private void Fit(Joint joint, IReadOnlyList<Workpiece> parts, IReadOnlyList<Workpiece> mates)
    {
        List<string> names = [.. parts.Concat(mates).Select(p => p.Name)];
        var id = job.Steps.Add(
            $"fit:{JointCut.WordOf(joint.Kind)}:{joint.Part}-{joint.Mate}",
            Plain(StepKind.Fit, "Fit", ["chisels", "shoulder plane", "pencil"]) with
            {
                Skill = Skill.Assembly,
                Title =
                    $"Fit {Words.Short([.. mates.Select(p => p.Name)])} to {Words.Short([.. parts.Select(p => p.Name)])}",
                Pieces = names,
                Hold = "",
                Support = null,
                Reason =
                    "Each joint is tried while it can still be pared; write on both pieces which goes where.",
                Marks =
                [
                    .. mates.Select(m => m.Part.JointNotes).Distinct().Where(n => n.Length > 0),
                ],
                Caution = job.MovementOf(parts.Concat(mates)) ?? "",
                Needs = ["Both sides of the joint are cut."],
                Leaves = [.. parts.Concat(mates).Select(p => p.AsItIs)],
                Time = job.Pace.Flat(5 * parts.Count * Count(joint), "to fit, five for each joint"),
            },
            parts.Concat(mates).Select(p => p.Last)
        );
        foreach (var piece in parts.Concat(mates))
            piece.Last = id;
        job.Fits.Add(id);
    }

    private bool IsOnlyNoted(Part part) =>
        part.JointNotes.Length > 0
        && !job.Project.Joints.Any(j => j.Part == part.Letter || j.Mate == part.Letter);

    private void AsNoted(Part part)
    {
        var pieces = job.Of(part.Letter);
        if (pieces.Count == 0)
            return;
        var names = pieces.Select(p => p.Name).ToList();
        var id = job.Steps.Add(
            $"joints:{part.Letter}",
            Plain(
                StepKind.CutJoint,
                "JointAsNoted",
                ["back saw", "chisels", "mallet", "marking knife", "square", "marking gauge"]
            ) with
            {
                Title =
                    $"Cut the joints of {Words.Short(names)} as noted: {part.JointNotes.TrimEnd('.')}",
                Pieces = names,
                Class = CutClass.First,
                Saw = Saws.For(SawKind.BackSaw, job.Rules),
                Line = LineKind.Knife,
                MarkedFrom = "the reference face and edge",
                Marks = [part.JointNotes],
                Hold = HoldFor(Words.Short(names)),
                Reason =
                    "Joints come when the pieces are at width and length, marked on like pieces together.",
                Needs = ["The pieces are at length."],
                Leaves = [.. pieces.Select(p => p.AsItIs)],
                Open =
                [
                    .. pieces.SelectMany(p =>
                        Enum.GetValues<PartDimension>().SelectMany(d => p.OpenOf(d))
                    ),
                ],
                Time = job.Pace.Flat(
                    15 * pieces.Count,
                    "for joints given only in words, fifteen for each piece"
                ),
            },
            pieces.Select(p => p.Last)
        );
        foreach (var piece in pieces)
            piece.Last = id;
        job.Fits.Add(id);
    }

    private Step Plain(StepKind kind, string technique, IReadOnlyList<string> tools) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = kind,
            Skill = Skill.Joinery,
            Station = Station.Vise,
            Title = "",
            Pieces = [],
            Support = Support.Vise,
            Technique = job.Technique(technique),
            Reason = "",
            Tools = tools,
            Time = Pace.Prepared,
        };

    private static string HoldFor(string pieces) =>
        $"Clamp {pieces} so that the work stands just above the jaws or flat on the bench; the left hand guides the blade of the chisel and stays behind its edge.";

    private static int Count(Joint joint) =>
        Math.Max(1, joint.Positions.Count) * (joint.Side is JointSide.Both ? 2 : 1);

    private static string Many(string word) =>
        word switch
        {
            "notch" => "notches",
            "tails" or "sockets" => word,
            _ => $"{word}s",
        };
}

using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Reference faces and edges are marked, then the surplus width comes off, gauge setting by gauge setting.</summary>
internal sealed class WidthSteps(Job job)
{
    public void Write()
    {
        foreach (var part in job.Project.Parts)
            MarkReference(job.Of(part.Letter));
        var bySetting = job
            .Parts.GroupBy(p => WorkRules.BeforeItsEvent(p.Part, PartDimension.Width))
            .OrderByDescending(g => g.Key);
        foreach (var setting in bySetting)
        foreach (var piece in setting.Where(p => p.Width > setting.Key))
            BringToWidth(piece, setting.Key);
    }

    private static string? Chosen(Part part) =>
        part.ReferenceFace switch
        {
            ReferenceFace.Inside =>
                "reference face: the face that will look inward, where the joints meet",
            ReferenceFace.Outside => "reference face: the face that will show",
            _ when part.ShowFace =>
                "reference face: the face that will show, unless it is the worse of the two",
            _ => null,
        };

    private void MarkReference(IReadOnlyList<Workpiece> pieces)
    {
        if (pieces.Count == 0)
            return;
        var names = pieces.SelectMany(p => p.Names).ToList();
        var part = pieces[0].Part;
        var id = job.Steps.Add(
            $"reference:{part.Letter}",
            new()
            {
                Id = "",
                Number = 0,
                Kind = StepKind.MarkReference,
                Skill = Skill.MarkingOut,
                Station = Station.BenchTop,
                Title = $"Mark the reference face and edge of {Words.Short(names)}",
                Pieces = names,
                Line = LineKind.Pencil,
                Marks = Chosen(part) is { } face ? [face] : [],
                Technique = job.Technique("MarkReference"),
                Reason =
                    "From here on everything is measured and squared from this face and this edge alone, so that errors do not add up.",
                Needs = ["One face is true.", "One edge is straight and square to it."],
                Leaves = [.. pieces.Select(p => p.AsItIs)],
                Tools = ["pencil", "square", "straightedge"],
                Time = job.Pace.Flat(pieces.Count, "to try a face and an edge, one for each piece"),
            },
            pieces.Select(p => p.Last)
        );
        foreach (var piece in pieces)
            piece.Last = id;
    }

    private void BringToWidth(Workpiece piece, Length target)
    {
        var over = piece.Width - target;
        var planing = job.Rules.PlaningTaught;
        var sawn = planing
            ? WorkRules.IsMuchToPlane(over, job.Rules)
            : WorkRules.IsEnoughToSaw(over, job.Rules.RipKerf);
        var prepared = !planing && !sawn;
        var gauge = prepared ? null : job.Gauge("width", target);
        var before = piece.AsItIs;
        piece.Width = target;
        var step = planing ? Planed(piece, over, sawn) : Ripped(piece, over);
        piece.Last = job.Steps.Add(
            $"width:{piece.Name}",
            (prepared ? Prepared(step) : step) with
            {
                Leaves = sawn ? [piece.AsItIs, OffStrip(before, over, planing)] : [piece.AsItIs],
                Open = [.. piece.OpenOf(PartDimension.Width)],
            },
            [piece.Last, gauge]
        );
    }

    /// <summary>What the saw leaves of the surplus; beside a plane it keeps a shaving's width (1/16 in) off the line.</summary>
    private PieceLeft OffStrip(PieceLeft before, Length over, bool planing) =>
        before with
        {
            Name = "waste",
            Use = PieceUse.Waste,
            Width = Length.Max(
                Length.Zero,
                over - job.Rules.RipKerf - (planing ? Length.FromInches(0, 1, 16) : Length.Zero)
            ),
        };

    private Step Planed(Workpiece piece, Length over, bool sawn) =>
        Bring(piece, over) with
        {
            Skill = Skill.Planing,
            Title = $"Bring {piece.Called} to {job.Say(piece.Width)} wide",
            Saw = sawn ? Saws.For(SawKind.HandRip, job.Rules) : null,
            Class = sawn ? CutClass.Third : null,
            WasteSide = sawn ? Side.Right : null,
            Hold = sawn
                ? $"{Holds.RipToWidth(piece.Called)} Then turn it edge up and lower it in the jaws to plane."
                : Holds.Edge(piece.Called),
            Technique = sawn ? job.Technique("RipAndPlaneToWidth") : job.Technique("BringToWidth"),
            Tools = sawn ? ["hand rip saw", "bench plane", "square"] : ["bench plane", "square"],
            Time = job.Pace.Worked(
                sawn ? 5 : 3,
                piece.Thickness * piece.Length,
                sawn ? 2 : Pace.PlaneEdge,
                sawn ? "ripped and planed" : "planed to width",
                piece.Board
            ),
        };

    private Step Ripped(Workpiece piece, Length over) =>
        Bring(piece, over) with
        {
            Skill = Skill.Ripping,
            Title = $"Rip {piece.Called} to {job.Say(piece.Width)} wide",
            Saw = Saws.For(SawKind.HandRip, job.Rules),
            Class = CutClass.Second,
            WasteSide = Side.Right,
            Hold = Holds.RipToWidth(piece.Called),
            Technique = job.Technique("RipToWidth"),
            Tools = ["hand rip saw"],
            Time = job.Pace.Worked(
                5,
                piece.Thickness * piece.Length,
                Pace.Rip,
                "ripped",
                piece.Board
            ),
        };

    private static Step Prepared(Step step) =>
        step with
        {
            Skill = Skill.Planing,
            Title = $"{step.Title}: prepared by the instructor",
            Saw = null,
            Class = null,
            Support = null,
            WasteSide = null,
            Hold = "",
            IsPrepared = true,
            Time = Pace.Prepared,
        };

    private Step Bring(Workpiece piece, Length over) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = StepKind.BringToWidth,
            Skill = Skill.Planing,
            Station = Station.Vise,
            Title = "",
            Pieces = piece.Names,
            Support = Support.Vise,
            Line = LineKind.Gauge,
            Gauge = piece.Width,
            MarkedFrom = "the reference edge",
            Marks = [.. Marks(piece, over)],
            Reason =
                "The second edge is gauged from the first, so the two are parallel whatever the saw left.",
            Needs = ["The reference edge is marked.", "The gauge is set."],
            Time = Pace.Prepared,
        };

    private IEnumerable<string> Marks(Workpiece piece, Length over)
    {
        yield return $"{job.Say(piece.Width)} from the reference edge, on both faces; {job.Say(over)} comes off";
        foreach (var open in piece.OpenOf(PartDimension.Width))
            yield return $"this keeps {job.Say(open.Extra)} on the width until {open.Until}";
    }
}

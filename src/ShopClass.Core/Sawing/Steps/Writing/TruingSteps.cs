using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Rough pieces get a flat face, narrow ones are glued up, and thick ones are brought to thickness.</summary>
internal sealed class TruingSteps(Job job)
{
    private bool Planing => job.Rules.PlaningTaught;

    public void Write()
    {
        foreach (var piece in job.Pieces.Where(p => p.IsRough || p.IsHollow).ToList())
            Flatten(piece);
        foreach (var strips in Glued())
            GlueUp(strips);
        // Strips that found no partner stay as they are: their part is missing.
        foreach (var piece in job.Parts.ToList())
        {
            BringToThickness(piece);
            if (!piece.HasStraightEdge)
                Straighten(piece);
        }
    }

    private void Flatten(Workpiece piece)
    {
        piece.Last = job.Steps.Add(
            $"flatten:{piece.Name}",
            Plane(StepKind.FlattenFace, piece, $"Plane one face of {piece.Called} flat") with
            {
                Technique = job.Technique("FlattenFace"),
                Hold = Planing ? Holds.Face(piece.Called) : "",
                Support = Planing ? Support.Bench : null,
                Marks = piece.IsHollow ? [Hollow(piece)] : [],
                Reason = piece.IsHollow
                    ? "The board was not flat. Sawn out first, a piece loses far less to the plane than the whole board would."
                    : "Nothing can be squared or gauged from a face that is not true. Short pieces lose less to it than the whole board would.",
                Leaves = [piece.AsItIs],
                Tools = ["bench plane", "straightedge", "two straight sticks"],
                Time = Taking(10, piece.Width * piece.Length, Pace.PlaneFace, "planed flat", piece),
            },
            [piece.Last]
        );
    }

    private static string Hollow(Workpiece piece)
    {
        var high =
            Warp.CupOver(piece.Board, piece.Width) >= Warp.TakenAsFlat
                ? "hollow side down, the middle of the upper face stands high along the whole piece"
                : "two corners across from each other stand high";
        return $"{high}: take only that down until the face is flat, then stop";
    }

    private List<List<Workpiece>> Glued() =>
        [
            .. job
                .Pieces.Where(p => p.Key.Strip > 0)
                .GroupBy(p => (p.Key.Part, p.Key.Copy))
                .Where(g =>
                    job.Plan.Plan.GlueUps.TryGetValue(g.Key.Part, out var n) && g.Count() == n
                )
                .Select(g => g.OrderBy(p => p.Key.Strip).ToList()),
        ];

    private void GlueUp(List<Workpiece> strips)
    {
        var name = $"{strips[0].Key.Part}{strips[0].Key.Copy}";
        var names = strips.Select(s => s.Name).ToList();
        var joints = strips.Count - 1;
        foreach (var (strip, i) in strips.Select((s, i) => (s, i)))
            strip.Width -= job.Rules.EdgeJointAllowance * (i == 0 || i == joints ? 1 : 2);
        var thinnest = strips.Min(s => s.Thickness);
        var shortest = strips.Min(s => s.Length);
        var jointed = job.Steps.Add(
            $"joint:{name}",
            Glue(StepKind.JointEdges, Skill.Planing, Planing && job.Rules.EdgeGluingTaught) with
            {
                Station = Station.Vise,
                Title = $"Plane the edges of {Words.List(names)} to meet",
                Pieces = names,
                Marks =
                [
                    $"{joints} {Words.Them(joints, "joint", "joints")}; about {job.Say(job.Rules.EdgeJointAllowance)} comes off each edge that is glued",
                    "lay the strips side by side with the best faces up, grain running the same way, and draw a large V across all of them",
                ],
                Hold =
                    $"Fold {names[0]} and {names[1]} together like a book and clamp them in the vise with both edges up; the left hand guides the front of the plane.",
                Support = Support.Vise,
                Technique = job.Technique("JointEdges"),
                Reason =
                    "The part is wider than the board, and glue holds only where wood touches wood.",
                Leaves = [.. strips.Select(s => s.AsItIs)],
                Tools = ["jointer or bench plane", "straightedge", "pencil"],
                Time = Taking(
                    10,
                    shortest * (thinnest * (2 * joints)),
                    Pace.PlaneEdge,
                    "planed to meet",
                    strips[0]
                ),
            },
            strips.Select(s => s.Last)
        );
        var whole = Whole(strips, thinnest, shortest);
        whole.Last = job.Steps.Add(
            $"glue:{name}",
            Glue(StepKind.GlueUp, Skill.EdgeGluing, job.Rules.EdgeGluingTaught) with
            {
                Station = Station.Gluing,
                Title = $"Glue {Words.List(names)} up to {name}",
                Pieces = names,
                Technique = job.Technique("GlueUp"),
                Reason =
                    "Glued before anything is marked, so that the panel is squared and measured as one piece.",
                Needs = ["The edges meet without a gap.", "The strips are trued."],
                Leaves = [whole.AsItIs],
                Tools = ["glue", "at least three clamps", "two battens", "damp rag"],
                Caution =
                    "Leave it alone: at least an hour in the clamps, and work it the next day.",
                Time = job.Pace.Flat(
                    15 + 5 * joints,
                    "to glue and clamp; common practice: an hour in clamps, worked the next day",
                    Overnight
                ),
            },
            [jointed]
        );
        Level(whole);
        job.Pieces.RemoveAll(strips.Contains);
        job.Pieces.Add(whole);
        job.Pieces.Sort((a, b) => a.Key.CompareTo(b.Key));
    }

    private void Level(Workpiece panel) =>
        panel.Last = job.Steps.Add(
            $"level:{panel.Name}",
            Plane(StepKind.FlattenFace, panel, $"Plane the joint of {panel.Name} level") with
            {
                Technique = job.Technique("LevelPanel"),
                Hold = Planing ? Holds.Face(panel.Name) : "",
                Support = Planing ? Support.Bench : null,
                Reason =
                    "Two strips never come out of the clamps quite level, and the face has to be true before anything is marked from it.",
                Needs = ["The glue is dry."],
                Leaves = [panel.AsItIs],
                Tools = ["scraper", "bench plane", "straightedge"],
                Time = Taking(
                    5,
                    panel.Length * Length.FromInches(2),
                    Pace.PlaneFace,
                    "planed level",
                    panel
                ),
            },
            [panel.Last]
        );

    // Sixteen hours: glued in the evening, worked the next day.
    private const int Overnight = 16 * 60 * 60;

    private static Workpiece Whole(List<Workpiece> strips, Length thickness, Length length) =>
        new(strips[0].Key with { Strip = 0 }, strips[0].Part, strips[0].Board)
        {
            Thickness = thickness,
            Width = strips.Aggregate(Length.Zero, (sum, s) => sum + s.Width),
            Length = length,
            IsRough = strips.Exists(s => s.IsRough),
            IsHollow = strips.Exists(s => s.IsHollow),
            HasStraightEdge = strips[0].HasStraightEdge || strips[^1].HasStraightEdge,
        };

    private void BringToThickness(Workpiece piece)
    {
        var target = WorkRules.BeforeItsEvent(piece.Part, PartDimension.Thickness);
        var isPlaned = !piece.IsRough && !piece.IsHollow;
        if (!WorkRules.HasToBePlanedThinner(piece.Thickness, target, isPlaned, job.Rules))
            return;
        var gauge = Planing ? job.Gauge("thickness", target) : null;
        var off = piece.Thickness - target;
        piece.Thickness = target;
        piece.Last = job.Steps.Add(
            $"thickness:{piece.Name}",
            Plane(
                StepKind.PlaneToThickness,
                piece,
                $"Plane {piece.Called} to {job.Say(target)} thick"
            ) with
            {
                Line = LineKind.Gauge,
                Gauge = target,
                MarkedFrom = "the true face",
                Marks =
                [
                    $"{job.Say(target)} all round, from the true face; {job.Say(off)} comes off",
                ],
                Technique = job.Technique("PlaneToThickness"),
                Hold = Planing ? Holds.Face(piece.Called) : "",
                Support = Planing ? Support.Bench : null,
                Reason =
                    "The gauge runs on the true face, so the second face comes out parallel to it.",
                Needs = ["One face is true."],
                Leaves = [piece.AsItIs],
                Tools = ["bench plane", "marking gauge"],
                Open = [.. piece.OpenOf(PartDimension.Thickness)],
                Time = Taking(
                    5,
                    piece.Width * piece.Length,
                    Pace.PlaneFace,
                    "planed to thickness",
                    piece
                ),
            },
            [piece.Last, gauge]
        );
        (piece.IsRough, piece.IsHollow) = (false, false);
    }

    private void Straighten(Workpiece piece)
    {
        piece.HasStraightEdge = true;
        piece.Last = job.Steps.Add(
            $"straighten:{piece.Name}",
            Plane(
                StepKind.StraightenEdge,
                piece,
                $"Plane one edge of {piece.Called} straight and square"
            ) with
            {
                MarkedFrom = "the true face",
                Technique = job.Technique("StraightenEdge"),
                Hold = Planing ? Holds.Edge(piece.Called) : "",
                Support = Planing ? Support.Vise : null,
                Reason =
                    "Every knife line and gauge line is taken from this edge, so it comes before any of them. Take only what makes it straight: the width is gauged from it later.",
                Needs = ["One face is true."],
                Leaves = [piece.AsItIs],
                Tools = ["bench plane", "straightedge", "square"],
                Time = Taking(
                    3,
                    piece.Thickness * piece.Length,
                    Pace.PlaneEdge,
                    "planed straight",
                    piece
                ),
            },
            [piece.Last]
        );
    }

    private StepTime Taking(int setUp, Area area, int rate, string verb, Workpiece piece) =>
        Planing ? job.Pace.Worked(setUp, area, rate, verb, piece.Board) : Pace.Prepared;

    /// <summary>A planing step; where planing is not taught, the instructor does it before class.</summary>
    private Step Plane(StepKind kind, Workpiece piece, string title) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = kind,
            Skill = Skill.Planing,
            Station = Station.Vise,
            Title = Planing ? title : $"{title}: prepared by the instructor",
            Pieces = piece.Names,
            Reason = "",
            Time = Pace.Prepared,
            IsPrepared = !Planing,
        };

    private static Step Glue(StepKind kind, Skill skill, bool isTaught) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = kind,
            Skill = skill,
            Station = Station.Gluing,
            Title = "",
            Pieces = [],
            Reason = "",
            Time = Pace.Prepared,
            IsPrepared = !isTaught,
        };
}

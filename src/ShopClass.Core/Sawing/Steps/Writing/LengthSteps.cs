using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>One end is squared, like lengths are marked together, and each piece is cut to length.</summary>
internal sealed class LengthSteps(Job job)
{
    private string? practised;

    public void Write()
    {
        var pieces = job.Parts.ToList();
        practised = Practise(pieces);
        foreach (var piece in pieces)
            SquareEnd(piece);
        var groups = pieces
            .GroupBy(p => WorkRules.BeforeItsEvent(p.Part, PartDimension.Length))
            .OrderByDescending(g => g.Key)
            .Select(g => (Length: g.Key, Pieces: g.ToList()))
            .ToList();
        foreach (var (length, like) in groups.Where(g => g.Pieces.Count > 1))
            GangMark(length, like);
        foreach (var (length, like) in groups)
        foreach (var piece in like)
            CutToLength(piece, length, like.Count > 1);
    }

    private string? Practise(List<Workpiece> pieces)
    {
        return pieces.Exists(IsSawnAtAll) ? FinePractice.Write(job) : null;
    }

    private bool IsSawnAtAll(Workpiece piece) =>
        WorkRules.IsEnoughToSaw(
            piece.Length - WorkRules.BeforeItsEvent(piece.Part, PartDimension.Length),
            job.Rules.BackSawKerf
        );

    private void SquareEnd(Workpiece piece)
    {
        var over = piece.Length - WorkRules.BeforeItsEvent(piece.Part, PartDimension.Length);
        var off = WorkRules.TakenByTheFirstEnd(over, job.Rules);
        var step = EndCut(piece, off) with
        {
            Kind = StepKind.SquareEnd,
            Title =
                off > Length.Zero
                    ? $"Knife one end of {piece.Name} all round and saw it square"
                    : $"Try one end of {piece.Name} for square, and plane it if it is not",
            Marks =
                off > Length.Zero
                    ?
                    [
                        $"about {job.AtTape(off)} from the better end, all round; the lines must meet",
                    ]
                    : [],
            Reason =
                "Lengths are measured from a true end. It is squared from the reference face and edge.",
            Needs = ["The reference face and edge are marked."],
        };
        piece.Last = job.Steps.Add(
            $"square:{piece.Name}",
            step,
            [piece.Last, off > Length.Zero ? practised : null]
        );
    }

    private void GangMark(Length length, List<Workpiece> like)
    {
        var names = like.Select(p => p.Name).ToList();
        var id = job.Steps.Add(
            $"gang:{names[0]}-{names[^1]}",
            new()
            {
                Id = "",
                Number = 0,
                Kind = StepKind.GangMark,
                Skill = Skill.MarkingOut,
                Station = Station.Vise,
                Title = $"Mark {Words.Short(names)} to length together",
                Pieces = names,
                Support = Support.Vise,
                Line = LineKind.Knife,
                MarkedFrom = "the squared ends, all flush",
                Marks =
                [
                    $"{job.Say(length)} from the squared ends",
                    .. Kept(like, PartDimension.Length),
                ],
                Technique = job.Technique("GangMark"),
                Reason =
                    "Pieces that must be equal are marked at one stroke: equal first, then exact.",
                Needs = ["Every one of them has a squared end."],
                Leaves = [.. like.Select(p => p.AsItIs)],
                Tools = ["rule", "square", "marking knife", "clamp"],
                Time = job.Pace.Flat(3 + like.Count, "to mark, one for each piece"),
            },
            like.Select(p => p.Last)
        );
        foreach (var piece in like)
            piece.Last = id;
    }

    private void CutToLength(Workpiece piece, Length target, bool isMarked)
    {
        var over = piece.Length - target;
        var isThere = over == Length.Zero;
        var step = EndCut(piece, over) with
        {
            Kind = StepKind.CutToLength,
            Title = isThere
                ? $"Try the other end of {piece.Name} for square: it is {job.Say(target)} long as sawn"
                : $"Cut {piece.Name} to {job.Say(target)} long",
            MarkedFrom = isMarked
                ? "the line marked with its fellows, carried round with the square on the reference face and edge"
                : "the squared end; the square on the reference face and edge",
            Marks =
            [
                $"{job.Say(target)} from the squared end, knifed all round",
                .. Kept([piece], PartDimension.Length),
            ],
            Reason =
                isThere ? "It was sawn to its length in one cut; the plane only trues the end."
                : isMarked
                    ? "Each is cut to the line it shares; test the pair against each other before testing the size."
                : "The second end decides the length.",
            Needs = isMarked
                ? ["Its length is marked together with its fellows."]
                : ["One end is squared."],
            Open = [.. piece.OpenOf(PartDimension.Length)],
        };
        piece.Last = job.Steps.Add($"length:{piece.Name}", step, [piece.Last]);
    }

    private IEnumerable<string> Kept(List<Workpiece> pieces, PartDimension dimension) =>
        pieces
            .SelectMany(p => p.OpenOf(dimension).Select(o => (p.Part.Letter, Open: o)))
            .DistinctBy(x => x.Letter)
            .Select(x => $"this keeps {job.Say(x.Open.Extra)} on {x.Letter} until {x.Open.Until}");

    /// <summary>A cut through an end to a knife line; where there is too little to saw, the end is planed.</summary>
    private Step EndCut(Workpiece piece, Length off)
    {
        var before = piece.Length;
        piece.Length -= off;
        var sawn = WorkRules.IsEnoughToSaw(off, job.Rules.BackSawKerf);
        var support = WorkRules.WhatHoldsForAnEndCut(job.Rules, piece.Length);
        var plain = new Step
        {
            Id = "",
            Number = 0,
            Kind = StepKind.CutToLength,
            Skill = Skill.FineCrosscutting,
            Station = Station.Vise,
            Title = "",
            Pieces = [piece.Name],
            Support = Support.Vise,
            Line = LineKind.Knife,
            MarkedFrom = "the square on the reference face, then on the reference edge",
            Hold = Holds.EndPlaned(piece.Name),
            Technique = job.Technique("PlaneEnd"),
            Reason = "",
            Leaves = [piece.AsItIs],
            Tools = ["marking knife", "square", "block plane"],
            Time = job.Pace.Flat(Pace.KnifeSetUp, "to knife an end all round and true it"),
        };
        if (sawn)
            return Sawn(plain, piece, support, before - piece.Length);
        return job.Rules.PlaningTaught ? plain : Prepared(plain);
    }

    private static Step Prepared(Step step) =>
        step with
        {
            Support = null,
            Hold = "",
            Skill = Skill.Planing,
            Technique = "Prepared by the instructor.",
            IsPrepared = true,
            Time = Pace.Prepared,
        };

    private Step Sawn(Step plain, Workpiece piece, Support support, Length off) =>
        plain with
        {
            Station = CutSteps.StationFor(support),
            Class = CutClass.Second,
            Saw = Saws.For(SawKind.BackSaw, job.Rules),
            Support = support,
            WasteSide = Side.Right,
            Hold = Holds.EndCut(support, piece.Name),
            Technique = job.Technique("CutToLength"),
            Leaves =
            [
                piece.AsItIs,
                new(
                    "waste",
                    piece.Thickness,
                    piece.Width,
                    off - job.Rules.BackSawKerf,
                    PieceUse.Waste
                ),
            ],
            Tools =
                support is Support.BenchHook
                    ? ["back saw", "bench hook", "marking knife", "square", "chisel"]
                    : ["back saw", "marking knife", "square", "chisel"],
            Time = job.Pace.Worked(
                Pace.KnifeSetUp,
                piece.Width * piece.Thickness,
                Pace.BackSaw,
                "sawn with the back saw",
                piece.Board
            ),
        };
}

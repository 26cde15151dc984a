using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>An open dimension, after its event: taken from its place, cut, and tried there.</summary>
internal sealed class ClosingSteps(Job job)
{
    /// <summary>Closes what this part has open until this stage.</summary>
    public void Close(Part part, OpenStage stage, string? eventStep)
    {
        foreach (var open in part.Open.Where(o => OpenEvents.When(o) == stage))
        {
            var pieces = job.Of(part.Letter);
            if (pieces.Count == 0)
                continue;
            if (stage is OpenStage.Together)
                foreach (var piece in pieces)
                    Flush(piece, open, eventStep);
            else if (stage is OpenStage.Chosen)
                FromItsPlace(pieces, open, [.. Chosen(open.Event!), .. TakenFrom(open)]);
            else
                FromItsPlace(pieces, open, eventStep is null ? TakenFrom(open) : [eventStep]);
        }
    }

    /// <summary>
    /// The steps of an event that was chosen; of one that does not happen here, all that is fitted. Two parts that each hold
    /// a joint of the other are fitted when both joints are.
    /// </summary>
    private List<string> Chosen(OpenEvent chosen)
    {
        List<string> steps =
            chosen.Kind is OpenEventKind.GluedUp
                ? [.. job.Of(chosen.Part).Select(p => $"glue:{p.Name}").Where(job.Steps.Has)]
                : job.Fits.FindAll(f =>
                    f.Split('~')[0].Split(':')[^1] is var parts
                    && (
                        parts == $"{chosen.Part}-{chosen.Mate}"
                        || parts == $"{chosen.Mate}-{chosen.Part}"
                    )
                );
        return steps.Count > 0 ? steps : job.Fits;
    }

    /// <summary>Where no joint is fitted first, what it is taken from must at least be at its own size.</summary>
    private IEnumerable<string?> TakenFrom(OpenDimension open) =>
        open.TakenFrom is { } taken ? job.Of(taken).Select(p => p.Last) : [];

    private void FromItsPlace(
        IReadOnlyList<Workpiece> pieces,
        OpenDimension open,
        IEnumerable<string?> eventSteps
    )
    {
        List<string?> after = [.. eventSteps];
        var names = pieces.Select(p => p.Name).ToList();
        var word = Word(open.Dimension);
        var letter = pieces[0].Part.Letter;
        Together(
            pieces,
            $"take:{word}:{letter}",
            Plain(StepKind.GangMark, open) with
            {
                Skill = Skill.MarkingOut,
                Title =
                    $"Take the {word} of {Words.Short(names)} from {(names.Count == 1 ? "its" : "their")} place",
                Pieces = names,
                Line = LineKind.Knife,
                MarkedFrom = open.TakenFrom is { } place
                    ? $"{place}, in place"
                    : "the parts it must meet",
                Marks = Noted(pieces[0].Part),
                Technique = job.Technique("TakeLength"),
                Reason =
                    $"It stayed {job.Say(open.Extra)} over until {open.Until}; now its place can be measured itself.",
                Tools = ["marking knife", "square"],
                Open = [.. pieces.Select(p => Now(p, open, OpenState.TakenFromMate))],
                Time = job.Pace.Flat(2 + pieces.Count, "to hold in place and mark"),
            },
            after
        );
        foreach (var piece in pieces)
            Cut(piece, open);
        Together(
            pieces,
            $"fit:{word}:{letter}",
            Plain(StepKind.Fit, open) with
            {
                Title = $"Try {Words.Short(names)} in {(names.Count == 1 ? "its" : "their")} place",
                Pieces = names,
                Technique = job.Technique("Fit"),
                Reason =
                    "It was taken from its place, so it should go home by hand; a shaving now is easier than a gap later.",
                Tools = ["block plane"],
                Open = [.. pieces.Select(p => Now(p, open, OpenState.Fitted))],
                Time = job.Pace.Flat(3 * pieces.Count, "to try, three for each piece"),
            },
            []
        );
    }

    private void Cut(Workpiece piece, OpenDimension open)
    {
        var isLength = open.Dimension is PartDimension.Length;
        var over = piece.Close(open.Dimension);
        var isSawn = isLength && WorkRules.IsEnoughToSaw(over, job.Rules.BackSawKerf);
        var isPrepared = !isSawn && !job.Rules.PlaningTaught;
        var support = isSawn
            ? WorkRules.WhatHoldsForAnEndCut(job.Rules, piece.Length)
            : Support.Vise;
        var word = Word(open.Dimension);
        var title = isLength
            ? $"Cut {piece.Name} to the length taken"
            : $"Plane {piece.Name} to the {word} taken";
        piece.Last = job.Steps.Add(
            $"close:{word}:{piece.Name}",
            Plain(StepKind.CloseDimension, open) with
            {
                Skill = isSawn ? Skill.FineCrosscutting : Skill.Planing,
                Station = CutSteps.StationFor(support),
                Title = isPrepared ? $"{title}: prepared by the instructor" : title,
                Pieces = [piece.Name],
                Class = isSawn ? CutClass.Second : null,
                Saw = isSawn ? Saws.For(SawKind.BackSaw, job.Rules) : null,
                Support = isPrepared ? null : support,
                WasteSide = isSawn ? Side.Right : null,
                Line = LineKind.Knife,
                MarkedFrom =
                    "the line taken from its place; the square on the reference face and edge",
                Marks =
                [
                    $"{job.Say(piece.SizeOf(open.Dimension))} by the parts list; the line taken from its place comes first",
                    .. Noted(piece.Part),
                ],
                Hold =
                    isPrepared ? ""
                    : isSawn ? Holds.EndCut(support, piece.Name)
                    : isLength ? Holds.EndPlaned(piece.Name)
                    : Holds.Edge(piece.Name),
                Technique = job.Technique(
                    isSawn ? "CutToLength"
                    : isLength ? "PlaneEnd"
                    : "BringToWidth"
                ),
                Reason = $"Not before now: it had to wait until {open.Until}.",
                Needs = [$"{Words.Sentence(open.Until)}."],
                Leaves = [piece.AsItIs, .. Waste(piece, over, isSawn)],
                Tools = isSawn
                    ? ["back saw", "bench hook", "marking knife", "square", "chisel"]
                    : ["plane", "square"],
                Open = [Now(piece, open, OpenState.Cut)],
                IsPrepared = isPrepared,
                Time = isPrepared
                    ? Pace.Prepared
                    : job.Pace.Flat(Pace.KnifeSetUp + 2, "to cut to a line and clean up"),
            },
            [piece.Last]
        );
    }

    private IEnumerable<PieceLeft> Waste(Workpiece piece, Length over, bool isSawn) =>
        isSawn
            ?
            [
                new(
                    "waste",
                    piece.Thickness,
                    piece.Width,
                    over - job.Rules.BackSawKerf,
                    PieceUse.Waste
                ),
            ]
            : [];

    private void Flush(Workpiece piece, OpenDimension open, string? eventStep)
    {
        var over = piece.Close(open.Dimension);
        var isSawn =
            open.Dimension is PartDimension.Length
            && WorkRules.IsEnoughToSaw(over, job.Rules.BackSawKerf);
        var isPrepared = !isSawn && !job.Rules.PlaningTaught;
        var word = Word(open.Dimension);
        var title = $"Bring the {word} of {piece.Name} flush";
        piece.Last = job.Steps.Add(
            $"close:{word}:{piece.Name}",
            Plain(StepKind.CloseDimension, open) with
            {
                Skill = isSawn ? Skill.FineCrosscutting : Skill.Planing,
                Station = Station.Vise,
                Title = isPrepared ? $"{title}: prepared by the instructor" : title,
                Pieces = [piece.Name],
                Class = isSawn ? CutClass.First : null,
                Saw = isSawn ? Saws.For(SawKind.BackSaw, job.Rules) : null,
                Support = isPrepared ? null : Support.Bench,
                Marks =
                [
                    open.TakenFrom is { } place
                        ? $"until it is flush with {place}"
                        : "until it is flush with the parts beside it",
                ],
                Hold = isPrepared
                    ? ""
                    : "Clamp the whole thing to the bench with the surface that stands proud up or outwards; the left hand leads the front of the plane.",
                Technique = job.Technique("Flush"),
                Reason =
                    $"It stood {job.Say(open.Extra)} proud so that it could be brought level with its neighbours in place.",
                Needs = ["Everything is together, and any glue is dry."],
                Leaves = [piece.AsItIs],
                Tools = isSawn
                    ? ["back saw", "block plane", "straightedge"]
                    : ["block plane", "straightedge"],
                Open = [Now(piece, open, OpenState.Fitted)],
                IsPrepared = isPrepared,
                Time = isPrepared ? Pace.Prepared : job.Pace.Flat(6, "to bring one surface flush"),
            },
            [piece.Last, eventStep]
        );
    }

    private void Together(
        IReadOnlyList<Workpiece> pieces,
        string id,
        Step step,
        IEnumerable<string?> after
    )
    {
        var made = job.Steps.Add(
            id,
            step with
            {
                Leaves = [.. pieces.Select(p => p.AsItIs)],
            },
            [.. after, .. pieces.Select(p => p.Last)]
        );
        foreach (var piece in pieces)
            piece.Last = made;
    }

    private static Step Plain(StepKind kind, OpenDimension open) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = kind,
            Skill = Skill.Assembly,
            Station = Station.BenchTop,
            Title = "",
            Pieces = [],
            Reason = "",
            Needs = [$"{Words.Sentence(open.Until)}."],
            Time = Pace.Prepared,
        };

    private static IReadOnlyList<string> Noted(Part part) =>
        part.JointNotes.Length > 0 ? [part.JointNotes] : [];

    private static OpenNow Now(Workpiece piece, OpenDimension open, OpenState state) =>
        new(piece.Name, open.Dimension, state, open.Extra, open.Until);

    private static string Word(PartDimension dimension) => dimension.ToString().ToLowerInvariant();
}

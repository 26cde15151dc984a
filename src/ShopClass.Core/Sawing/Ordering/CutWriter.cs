using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>Writes cuts down: what is sawn, what holds it, what it leaves and why it comes here.</summary>
internal sealed class CutWriter(Board board, CourseRules rules, IReadOnlyList<LaidBlank> blanks)
{
    private readonly SideNames names = new(board, rules, blanks);

    /// <summary>No allowance and a true board: what the saw leaves is the finished length.</summary>
    private bool IsSawnStraightToLength => rules.LengthAllowance == Length.Zero && board.IsTrue;

    /// <summary>A crosscut that brings the board down to lengths.</summary>
    public Cut ToLength(BoardRect piece, TurnOf turn, BoardLength beside, bool isEndTrim) =>
        Crosscut(
            piece,
            turn,
            isEndTrim ? CutKind.EndTrim : CutKind.Crosscut,
            (isEndTrim, turn.Why) switch
            {
                (true, _) =>
                    "A bad end goes first: it may hide splits and dirt that no blank should have.",
                (_, Turn.LongLeftover) => LeftoverFirst(turn),
                (_, Turn.ToKeepLength) => KeepsLength(turn),
                _ when beside.RipLines.Count == 0 =>
                    $"It takes the board's full width and needs no rip: a crosscut of {Say(piece.Across)} is all it gets.",
                _ when beside.Sections > 1 =>
                    $"Its parts have the same rip lines, so they leave the board in one length of {Say(beside.Along.Long)}: {Count(beside.RipLines.Count, "rip")} instead of {beside.RipLines.Count * beside.Sections}.",
                _ =>
                    $"Brings the board down from {Say(turn.Piece.Long)} to {Say(beside.Along.Long)}, which is handier to rip.",
            }
        );

    /// <summary>A rip that takes a strip off.</summary>
    public Cut Rip(BoardRect piece, SawLine line, BoardLength length)
    {
        var kerf = piece with { Near = line.Kerf.From, Far = line.Kerf.To };
        var near = piece with { Far = kerf.Near };
        var far = piece with { Near = kerf.Far };
        var support = Holding.ForRip(rules, piece.Along);
        return Write(CutKind.Rip, piece, kerf, line.Position, support, near, far) with
        {
            Reason = length switch
            {
                { KeepsWaste: true } =>
                    $"The waste beside it stays on until it is ripped: that gives {Say(piece.Along)} to hold.",
                { Sections: > 1 } =>
                    $"Ripped while still joined: {Say(piece.Along)} to hold, one setting, one line to mark instead of {length.Sections}.",
                _ =>
                    $"Ripped before it is crosscut shorter, while there is a length of {Say(piece.Along)} to hold.",
            },
        };
    }

    /// <summary>A crosscut that sets blanks of a strip free.</summary>
    public Cut ToBlank(BoardRect strip, TurnOf turn, BoardLength length) =>
        Crosscut(
            strip,
            turn,
            CutKind.Crosscut,
            turn.Why switch
            {
                Turn.LongLeftover => LeftoverFirst(turn),
                Turn.ToKeepLength => KeepsLength(turn),
                _ when length.Sections > 1 =>
                    $"The rip is done, so the {Say(length.Along.Long)} kept joined for it can come apart.",
                _ =>
                    $"Crosscut after the rip, which needed the length of {Say(length.Along.Long)} to hold.",
            }
        );

    private string LeftoverFirst(TurnOf turn)
    {
        var (near, far) = Sides(turn);
        var (off, stays) = blanks.Any(b => near.Holds(b.Along)) ? (far, near) : (near, far);
        return $"The leftover of {Say(off.Long)} comes off first: the {Say(stays.Long)} that stay are lighter and easier to hold.";
    }

    private string KeepsLength(TurnOf turn)
    {
        var (near, far) = Sides(turn);
        return $"Sawn in this order so that {Say(Length.Max(near.Long, far.Long))} stay together, long enough to hold.";
    }

    private static (Stretch Near, Stretch Far) Sides(TurnOf turn) =>
        (new(turn.Piece.From, turn.Line.Kerf.From), new(turn.Line.Kerf.To, turn.Piece.To));

    private string Say(Length length) => LengthWriter.WriteWithUnit(length, rules.Precision);

    private static string Count(int number, string what) =>
        number == 1 ? $"1 {what}" : $"{number} {what}s";

    private Cut Crosscut(BoardRect whole, TurnOf turn, CutKind kind, string reason)
    {
        var piece = whole with { From = turn.Piece.From, To = turn.Piece.To };
        var kerf = piece with { From = turn.Line.Kerf.From, To = turn.Line.Kerf.To };
        var start = piece with { To = kerf.From };
        var end = piece with { From = kerf.To };
        var support = Holding.ForCrosscut(rules, piece.Along, Length.Max(start.Along, end.Along));
        return Write(kind, piece, kerf, turn.Line.Position, support, start, end) with
        {
            Reason = reason,
        };
    }

    private Cut Write(
        CutKind kind,
        BoardRect piece,
        BoardRect kerf,
        Length position,
        Support support,
        BoardRect one,
        BoardRect other
    )
    {
        var isFine = IsSawnStraightToLength && kind is not CutKind.Rip;
        var sides = new[] { one, other }.Where(s => s.Area > Area.Zero).ToList();
        if (sides.Count == 0)
            sides.Add(piece);
        var called = sides.Select(s => names.Of(s, kind)).ToList();
        var held = sides.Count > 1 && other.Area > one.Area ? 1 : 0;
        return new()
        {
            Number = 0,
            BoardId = board.Id,
            Kind = kind,
            Class = isFine ? CutClass.Second : CutClass.Third,
            Saw = kind is CutKind.Rip ? SawKind.HandRip : SawKind.HandCrosscut,
            Support = support,
            Line = isFine ? LineKind.Knife : LineKind.Pencil,
            Piece = piece,
            Position = position,
            Kerf = kerf,
            SawnLength = kind is CutKind.Rip ? piece.Along : piece.Across,
            Leaves = Both(called),
            Hold = Holding.Words(kind, support, Definite(called[held]), Falling(called, held)),
            Reason = "",
            HoldNote = Holding.Note(kind, support, rules),
        };
    }

    private static string Both(List<string> called) =>
        called is [var one, var other]
            ? one == other
                ? $"two pieces: {one} on both sides"
                : $"{one} and {other}"
            : called[0];

    private static string Falling(List<string> called, int held) =>
        called.Count > 1 ? Definite(called[1 - held]) : "the sliver";

    /// <summary>"a strip for A1" becomes "the strip for A1"; an offcut needs no length once it is in hand.</summary>
    private static string Definite(string name)
    {
        if (name.StartsWith("an offcut", StringComparison.Ordinal))
            return "the offcut";
        if (name.StartsWith("a ", StringComparison.Ordinal))
            return $"the {name[2..]}";
        return name is "waste" ? "the waste" : name;
    }
}

namespace ShopClass.Core.Lessons.Filling;

/// <summary>How far everybody is: which turns are done, what may be worked on when, who has seen what.</summary>
internal sealed class Ledger
{
    private readonly bool[] done;
    private readonly long[] ready;
    private readonly int[] ahead;
    private readonly bool[] seen;
    private readonly bool[] shown;

    public Ledger(Roster roster)
    {
        done = new bool[roster.Turns.Count];
        ready = new long[roster.Turns.Count];
        ahead = [.. roster.TurnsOf.Select(own => own.Sum(t => roster.Turns[t].Turn.Minutes))];
        seen = new bool[roster.Students.Length * Skills];
        shown = new bool[Skills];
    }

    private Ledger(Ledger other)
    {
        done = [.. other.done];
        ready = [.. other.ready];
        ahead = [.. other.ahead];
        seen = [.. other.seen];
        shown = [.. other.shown];
    }

    public static int Skills { get; } = SkillBook.Entries.Count;

    public Ledger Copy() => new(this);

    public bool IsDone(int turn) => done[turn];

    /// <summary>Minutes of work a student has ahead.</summary>
    public int Ahead(int student) => ahead[student];

    public bool HasSeen(int student, int skill) => seen[student * Skills + skill];

    public bool WasShown(int skill) => shown[skill];

    public void Shows(int skill) => shown[skill] = true;

    public void Sees(int student, int skill) => seen[student * Skills + skill] = true;

    /// <summary>When all that a turn waits for is done, in calendar minutes; null while something is not.</summary>
    public long? ReadyAt(TurnToPlace turn)
    {
        var at = 0L;
        foreach (var before in turn.After)
        {
            if (!done[before])
                return null;
            at = Math.Max(at, ready[before]);
        }

        return at;
    }

    public void Finish(int turn, int student, TurnToPlace what, long end)
    {
        done[turn] = true;
        ready[turn] = end + what.Waiting;
        ahead[student] -= what.Turn.Minutes;
    }
}

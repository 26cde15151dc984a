using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Filling;

/// <summary>
/// One lesson run minute by minute: demonstrations first, then whoever is free takes the next turn that is ready and whose
/// station has a place.
/// </summary>
internal sealed class LessonFill
{
    private readonly Roster roster;
    private readonly int lesson;
    private readonly Habit habit;
    private readonly Order order;
    private readonly int[] freeAt;
    private readonly (Station Station, int Place)?[] stands;
    private readonly int[][] places;
    private int instructorFreeAt;

    public LessonFill(
        Roster roster,
        Ledger before,
        int lesson,
        Habit habit,
        IReadOnlyList<Skill> shows
    )
    {
        (this.roster, this.lesson, this.habit) = (roster, lesson, habit);
        Ledger = before.Copy();
        order = new(roster, lesson, habit);
        freeAt = new int[roster.Students.Length];
        stands = new (Station, int)?[roster.Students.Length];
        places = [.. Enum.GetValues<Station>().Select(Places)];
        Show(shows);
        Work();
    }

    /// <summary>How far everybody is at the end.</summary>
    public Ledger Ledger { get; }

    /// <summary>Turns done.</summary>
    public List<(int Turn, PlacedTurn Placed)> Placed { get; } = [];

    /// <summary>Demonstrations given.</summary>
    public List<Showing> Showings { get; } = [];

    /// <summary>Minutes of work done.</summary>
    public int Worked { get; private set; }

    /// <summary>Minutes students spent working or watching.</summary>
    public int Used { get; private set; }

    private int Length => roster.Minutes[lesson];

    private int[] Places(Station station) =>
        roster.Request.StationsIn(lesson).PlacesAt(station) is { } count ? new int[count] : [];

    private void Show(IReadOnlyList<Skill> shows)
    {
        var t = 0;
        foreach (var skill in shows)
        {
            var minutes = roster.Request.MinutesToShow(skill);
            if (t + minutes > Length)
                continue;
            Showings.Add(new(skill, t, minutes));
            t += minutes;
            Ledger.Shows((int)skill);
            for (var s = 0; s < freeAt.Length; s++)
            {
                if (!roster.Attends(s, lesson))
                    continue;
                Ledger.Sees(s, (int)skill);
                Used += minutes;
            }
        }

        Array.Fill(freeAt, t);
        instructorFreeAt = t;
    }

    private void Work()
    {
        var t = instructorFreeAt;
        while (t < Length)
        {
            var next = Length;
            foreach (var s in order.At(Ledger, t, freeAt, stands))
                next = Math.Min(next, Take(s, t));
            foreach (var free in freeAt.Where(f => f > t))
                next = Math.Min(next, free);
            t = next;
        }
    }

    // Returns when something this student waits for may become ready.
    private int Take(int student, int t)
    {
        var soonest = Length;
        var again = -1;
        foreach (var turn in roster.TurnsOf[student])
        {
            if (Ledger.IsDone(turn) || Ledger.ReadyAt(roster.Turns[turn]) is not { } ready)
                continue;
            var at = ready - roster.Begins[lesson];
            var what = roster.Turns[turn].Turn;
            if (at > t)
            {
                soonest = (int)Math.Min(soonest, at);
                continue;
            }

            if (t + what.Minutes > Length || PlaceFor(student, what.Station, t) is not { } place)
                continue;
            if (Ledger.HasSeen(student, (int)what.Skill))
            {
                Begin(student, turn, t, place);
                return Length;
            }

            if (again < 0 && CanShowAgain(what, t))
                again = turn;
        }

        if (again >= 0)
            ShowAgain(student, roster.Turns[again].Turn.Skill, t);
        return soonest;
    }

    private bool CanShowAgain(Turn turn, int t) =>
        Ledger.WasShown((int)turn.Skill)
        && instructorFreeAt <= t
        && t + roster.Request.MinutesToShow(turn.Skill) + turn.Minutes <= Length;

    private void ShowAgain(int student, Skill skill, int t)
    {
        var minutes = roster.Request.MinutesToShow(skill);
        Showings.Add(new(skill, t, minutes, roster.Students[student]));
        Ledger.Sees(student, (int)skill);
        freeAt[student] = instructorFreeAt = t + minutes;
        stands[student] = null;
        Used += minutes;
    }

    private void Begin(int student, int turn, int t, int place)
    {
        var what = roster.Turns[turn];
        var end = t + what.Turn.Minutes;
        var counted = place > 0;
        Placed.Add((turn, new(what.Turn, t, counted ? place : null)));
        Ledger.Finish(turn, student, what, roster.Begins[lesson] + end);
        freeAt[student] = end;
        stands[student] = counted ? (what.Turn.Station, place) : null;
        if (counted)
            places[(int)what.Turn.Station][place - 1] = end;
        Worked += what.Turn.Minutes;
        Used += what.Turn.Minutes;
    }

    // Where they stand, if it is free; else the first free one. 0 where places are not counted, null where none is free.
    private int? PlaceFor(int student, Station station, int t)
    {
        if (roster.Request.StationsIn(lesson).PlacesAt(station) is null)
            return 0;
        var free = places[(int)station];
        if (stands[student] is { } here && here.Station == station && free[here.Place - 1] <= t)
            return here.Place;
        var place = Array.FindIndex(free, f => f <= t);
        return place < 0 ? null : place + 1;
    }
}

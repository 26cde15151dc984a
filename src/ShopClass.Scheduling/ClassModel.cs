using Google.OrTools.Sat;
using Google.OrTools.Util;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Scheduling;

/// <summary>
/// A class as a model for the solver: when each turn begins. Demonstrations stay where the given plan has them.
/// </summary>
internal sealed class ClassModel
{
    private readonly CpModel model = new();
    private readonly Axis axis;
    private readonly LessonPlan given;
    private readonly IReadOnlyList<TurnToPlace> turns;
    private readonly Dictionary<(string Student, int Step, int Part), long> begins = [];
    private readonly IntVar[] starts;
    private readonly BoolVar?[] done;
    private readonly IntervalVar[] spells;

    public ClassModel(Axis axis, LessonPlan given, IReadOnlyList<TurnToPlace> turns)
    {
        (this.axis, this.given, this.turns) = (axis, given, turns);
        for (var l = 0; l < axis.Lessons; l++)
            foreach (var turn in given.Lessons[l].Turns)
                begins[(turn.Turn.StudentId, turn.Turn.Steps[0], turn.Turn.Part)] =
                    axis.Begins[l] + turn.Start;
        starts = new IntVar[turns.Count];
        done = new BoolVar?[turns.Count];
        spells = new IntervalVar[turns.Count];
        for (var t = 0; t < turns.Count; t++)
            AddTurn(t);
        AddOrder();
        AddStudents();
        AddStations();
        AddGoal();
    }

    public CpModel Model => model;

    public long? StartOf(int turn, CpSolver solver) =>
        done[turn] is { } isDone && !solver.BooleanValue(isDone)
            ? null
            : solver.Value(starts[turn]);

    private long? Given(int turn) =>
        begins.TryGetValue(
            (turns[turn].Turn.StudentId, turns[turn].Turn.Steps[0], turns[turn].Turn.Part),
            out var at
        )
            ? at
            : null;

    private void AddTurn(int t)
    {
        var turn = turns[t].Turn;
        var room = Room(turn);
        starts[t] = model.NewIntVarFromDomain(room, $"s{t}");
        var at = Given(t);
        if (at is { } minute)
            model.AddHint(starts[t], minute);
        // What the given plan gets done stays done; only what it leaves over may be left over.
        if (at is not null)
        {
            spells[t] = model.NewFixedSizeIntervalVar(starts[t], turn.Minutes, $"i{t}");
            return;
        }

        var isDone = model.NewBoolVar($"d{t}");
        model.AddHint(isDone, false);
        done[t] = isDone;
        spells[t] = model.NewOptionalFixedSizeIntervalVar(starts[t], turn.Minutes, isDone, $"i{t}");
    }

    // Where a turn may begin: in a lesson its student attends, after having seen the skill, ending before the lesson does.
    private Domain Room(Turn turn)
    {
        var seen = axis.SeenFrom(given, turn.StudentId, turn.Skill);
        var windows = new List<long[]>();
        for (var l = 0; l < axis.Lessons && seen is not null; l++)
        {
            var from = Math.Max(axis.Begins[l], seen.Value);
            var to = axis.Begins[l + 1] - turn.Minutes;
            if (
                axis.Request.Lessons[l].IsAttendedBy(turn.StudentId)
                && axis.Request.StationsIn(l).PlacesAt(turn.Station) is not 0
                && from <= to
            )
                windows.Add([from, to]);
        }

        // A turn with nowhere to go keeps a place beyond the end, where it is never done.
        if (windows.Count == 0)
            windows.Add([axis.End, axis.End]);
        return Domain.FromIntervals([.. windows]);
    }

    private void AddOrder()
    {
        for (var t = 0; t < turns.Count; t++)
            foreach (var before in turns[t].After)
            {
                if (done[t] is { } isDone && done[before] is { } isBefore)
                    model.AddImplication(isDone, isBefore);
                Enforced(model.Add(starts[t] >= starts[before] + turns[before].Turn.Minutes), t);
                if (turns[before].Waiting > 0)
                    Enforced(
                        model.Add(
                            Calendar(t)
                                >= Calendar(before)
                                    + turns[before].Turn.Minutes
                                    + turns[before].Waiting
                        ),
                        t
                    );
            }
    }

    private void Enforced(Constraint constraint, int turn)
    {
        if (done[turn] is { } isDone)
            constraint.OnlyEnforceIf(isDone);
    }

    private LinearExpr Calendar(int turn)
    {
        var inLesson = Enumerable
            .Range(0, axis.Lessons)
            .Select(_ => model.NewBoolVar(""))
            .ToArray();
        model.AddExactlyOne(inLesson);
        for (var l = 0; l < axis.Lessons; l++)
        {
            model.Add(starts[turn] >= axis.Begins[l]).OnlyEnforceIf(inLesson[l]);
            // The place beyond the end counts to the last lesson.
            if (l + 1 < axis.Lessons)
                model.Add(starts[turn] < axis.Begins[l + 1]).OnlyEnforceIf(inLesson[l]);
            if (Given(turn) is { } at)
                model.AddHint(inLesson[l], axis.LessonAt(at) == l);
        }

        return starts[turn]
            + LinearExpr.WeightedSum(
                inLesson,
                Enumerable.Range(0, axis.Lessons).Select(axis.Gap).ToArray()
            );
    }

    private void AddStudents()
    {
        foreach (var student in axis.Request.Students)
        {
            List<IntervalVar> own =
            [
                .. Enumerable
                    .Range(0, turns.Count)
                    .Where(t => turns[t].Turn.StudentId == student.StudentId)
                    .Select(t => spells[t]),
            ];
            for (var l = 0; l < axis.Lessons; l++)
                own.AddRange(
                    given
                        .Lessons[l]
                        .Showings.Where(s =>
                            s.StudentId is null || s.StudentId == student.StudentId
                        )
                        .Where(s => s.Minutes > 0)
                        .Select(s => Fixed(axis.Begins[l] + s.Start, s.Minutes))
                );
            model.AddNoOverlap(own);
        }
    }

    private void AddStations()
    {
        foreach (var station in StationCounts.Counted)
        {
            int[] used =
            [
                .. Enumerable.Range(0, turns.Count).Where(t => turns[t].Turn.Station == station),
            ];
            if (used.Length == 0 || axis.Lessons == 0)
                continue;
            int[] places =
            [
                .. Enumerable
                    .Range(0, axis.Lessons)
                    .Select(l => axis.Request.StationsIn(l).PlacesAt(station)!.Value),
            ];
            var most = places.Max();
            var room = model.AddCumulative(most);
            foreach (var t in used)
                room.AddDemand(spells[t], 1);
            for (var l = 0; l < axis.Lessons; l++)
            {
                if (places[l] < most && axis.Minutes[l] > 0)
                    room.AddDemand(Fixed(axis.Begins[l], axis.Minutes[l]), most - places[l]);
            }
        }
    }

    private IntervalVar Fixed(long start, long minutes) =>
        model.NewFixedSizeIntervalVar(model.NewConstant(start), minutes, "");

    // Left over first, then waiting, then spread; a student's waiting grows minute by minute with their last turn's end.
    private void AddGoal()
    {
        var (ends, hinted) = (new List<IntVar>(), new List<long>());
        var left = new List<LinearExpr>();
        foreach (var student in axis.Request.Students)
        {
            int[] own =
            [
                .. Enumerable
                    .Range(0, turns.Count)
                    .Where(t => turns[t].Turn.StudentId == student.StudentId),
            ];
            if (own.Length == 0)
                continue;
            var end = model.NewIntVar(0, axis.End, "");
            foreach (var t in own)
            {
                Enforced(model.Add(end >= starts[t] + turns[t].Turn.Minutes), t);
                if (done[t] is not { } isDone)
                    continue;
                left.Add((1 - isDone) * turns[t].Turn.Minutes);
                model.Add(end == axis.End).OnlyEnforceIf(isDone.Not());
            }

            hinted.Add(own.Max(t => Given(t) is { } at ? at + turns[t].Turn.Minutes : axis.End));
            model.AddHint(end, hinted[^1]);
            ends.Add(end);
        }

        var first = model.NewIntVar(0, axis.End, "");
        var last = model.NewIntVar(0, axis.End, "");
        model.AddMinEquality(first, ends);
        model.AddMaxEquality(last, ends);
        model.AddHint(first, hinted.Min());
        model.AddHint(last, hinted.Max());
        var aMinuteWaited = axis.End + 1;
        var aMinuteLeft = aMinuteWaited * (axis.End + 1) * ends.Count;
        model.Minimize(
            LinearExpr.Sum(left) * aMinuteLeft + LinearExpr.Sum(ends) * aMinuteWaited + last - first
        );
    }
}

using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Something that would bring back what falls off, or shorten the waiting.</summary>
/// <param name="What">What is changed, as the beginning of a sentence: "Each lesson 15 minutes longer".</param>
/// <param name="MinutesBack">Minutes of work that then fit and did not.</param>
/// <param name="LeftThen">Minutes that still fall off.</param>
/// <param name="WaitingSaved">Minutes less of waiting, over all students; not below zero.</param>
public sealed record Remedy(string What, int MinutesBack, int LeftThen, int WaitingSaved)
{
    /// <summary>The whole sentence.</summary>
    public string Sentence =>
        (MinutesBack, LeftThen) switch
        {
            (> 0, 0) => $"{What}: everybody finishes; it brings back {Minutes(MinutesBack)}.",
            (> 0, _) =>
                $"{What}: brings back {Minutes(MinutesBack)}; {Minutes(LeftThen)} still fall off.",
            _ => $"{What}: {Minutes(WaitingSaved)} less waiting, over all students.",
        };

    private static string Minutes(int count) => count == 1 ? "1 minute" : $"{count} minutes";
}

/// <summary>Tries what an instructor could change, each by a plan of its own, so that the minutes are known and not guessed.</summary>
public static class Remedies
{
    private static readonly int[] Longer = [5, 10, 15, 20, 30, 45, 60];

    /// <summary>What helps this plan, what helps most first; none where nothing falls off and nobody waits.</summary>
    public static IReadOnlyList<Remedy> For(
        LessonRequest request,
        LessonPlan plan,
        CancellationToken cancel = default
    )
    {
        if (plan.Score is { Left: 0, Waiting: 0 } || request.Lessons.Count == 0)
            return [];
        var tried = new List<Remedy?>();
        if (plan.Score.Left > 0)
        {
            tried.Add(LongerLessons(request, plan, cancel));
            tried.Add(
                Tried("One more lesson like the last", OneLessonMore(request), plan, isDone: null)
            );
        }

        foreach (var station in StationCounts.Counted)
        {
            cancel.ThrowIfCancellationRequested();
            if (request.Students.Any(s => s.Work?.Steps.Any(x => x.Station == station) ?? false))
                tried.Add(
                    Tried(
                        $"One more {StationWords.One(station)}",
                        OnePlaceMore(request, station),
                        plan,
                        isDone: null
                    )
                );
        }

        tried.Add(Without("Blanks crosscut and ripped beforehand", IsBreakdown, request, plan));
        tried.Add(Without("Stock trued and glued up beforehand", IsTruing, request, plan));
        return
        [
            .. tried
                .OfType<Remedy>()
                .Where(r => plan.Score.Left > 0 ? r.MinutesBack > 0 : r.WaitingSaved > 0)
                .OrderByDescending(r => r.MinutesBack)
                .ThenByDescending(r => r.WaitingSaved),
        ];
    }

    // The least that brings everything back; where nothing does, the longest that is tried.
    private static Remedy? LongerLessons(
        LessonRequest request,
        LessonPlan plan,
        CancellationToken cancel
    )
    {
        Remedy? last = null;
        foreach (var more in Longer)
        {
            cancel.ThrowIfCancellationRequested();
            var longer = request with
            {
                Lessons = [.. request.Lessons.Select(l => l with { Minutes = l.Minutes + more })],
            };
            last = Tried($"Each lesson {more} minutes longer", longer, plan, isDone: null);
            if (last is { LeftThen: 0 })
                break;
        }

        return last;
    }

    private static LessonRequest OneLessonMore(LessonRequest request)
    {
        var last = request.Lessons[^1];
        var days =
            request.Lessons.Count > 1
                ? last.Date.DayNumber - request.Lessons[^2].Date.DayNumber
                : 7;
        return request with
        {
            Lessons =
            [
                .. request.Lessons,
                last with
                {
                    Date = last.Date.AddDays(days),
                    Shows = [],
                    Absent = [],
                },
            ],
        };
    }

    private static LessonRequest OnePlaceMore(LessonRequest request, Station station) =>
        request with
        {
            Shop = request.Shop.WithOneMore(station),
            Lessons =
            [
                .. request.Lessons.Select(l =>
                    l with
                    {
                        Stations = l.Stations?.WithOneMore(station),
                    }
                ),
            ],
        };

    private static Remedy? Without(
        string what,
        Func<Step, bool> isDone,
        LessonRequest request,
        LessonPlan plan
    ) =>
        request.Students.Any(s => s.Work?.Steps.Any(isDone) ?? false)
            ? Tried(what, request, plan, isDone)
            : null;

    private static Remedy? Tried(
        string what,
        LessonRequest request,
        LessonPlan plan,
        Func<Step, bool>? isDone
    )
    {
        var then = LessonPlanner.Quick(request, TurnMaker.Of(request.Students, isDone)).Score;
        return new(
            what,
            plan.Score.Left - then.Left,
            then.Left,
            Math.Max(0, plan.Score.Waiting - then.Waiting)
        );
    }

    private static bool IsBreakdown(Step step) =>
        step.Kind is StepKind.EndTrim or StepKind.Crosscut or StepKind.Rip;

    private static bool IsTruing(Step step) =>
        step.Kind
            is StepKind.FlattenFace
                or StepKind.StraightenEdge
                or StepKind.PlaneToThickness
                or StepKind.JointEdges
                or StepKind.GlueUp;
}

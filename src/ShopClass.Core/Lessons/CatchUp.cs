using ShopClass.Core.Progress;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>A step that was missed.</summary>
/// <param name="Step">The step.</param>
/// <param name="NeedsShowing">Whether its skill must be demonstrated to the student first.</param>
/// <param name="CanBePreCut">Whether a helper could saw it beforehand: a rough cut of the breakdown, with nothing but such cuts and marking out open before it.</param>
public sealed record MissedStep(Step Step, bool NeedsShowing, bool CanBePreCut)
{
    /// <summary>How it is caught up with, in a sentence.</summary>
    public string How =>
        NeedsShowing
            ? $"Watch the demonstration first: {SkillBook.Of(Step.Skill).Name.ToLowerInvariant()}."
            : "May be done alone, as far as the shop's rules allow it.";
}

/// <summary>What an absent student catches up with.</summary>
public static class CatchUp
{
    /// <summary>
    /// The steps a student would have had done by the end of a lesson, had they been there, and has not, in order. Where the
    /// plan knew of the absence and moved their steps, the lessons up to this one are planned once more as if they had
    /// come.
    /// </summary>
    /// <param name="request">What the plan of lessons was made for.</param>
    /// <param name="plan">The plan of lessons.</param>
    /// <param name="studentId">Whose.</param>
    /// <param name="progress">How their steps stand.</param>
    /// <param name="lesson">The missed lesson, from 0.</param>
    /// <param name="paced">A step with its time by the pace that was learned; null for the table's.</param>
    public static IReadOnlyList<MissedStep> For(
        LessonRequest request,
        LessonPlan plan,
        string studentId,
        WorkProgress progress,
        int lesson,
        Func<Step, Step>? paced = null
    )
    {
        if (request.Students.FirstOrDefault(s => s.StudentId == studentId)?.Work is not { } work)
            return [];
        var lessonOf = PlanStanding.LessonOfEach(
            AsIfThere(request, plan, studentId, lesson),
            studentId
        );
        var seen = Seen(request, plan, studentId, lesson, work, progress);
        List<MissedStep> missed = [];
        var preCut = new HashSet<int>();
        foreach (var step in work.Steps)
        {
            if (
                progress.Find(step.Id) is not { IsDone: false } state
                || !lessonOf.TryGetValue(step.Number, out var planned)
                || planned > lesson
            )
                continue;
            var canBePreCut =
                IsRoughCut(step)
                && progress
                    .OpenBefore(state.Step)
                    .All(o => IsMarking(o.Step) || preCut.Contains(o.Step.Number));
            if (canBePreCut)
                preCut.Add(state.Step.Number);
            missed.Add(
                new(
                    paced?.Invoke(state.Step) ?? state.Step,
                    !seen.Contains(step.Skill),
                    canBePreCut
                )
            );
        }

        return missed;
    }

    private static LessonPlan AsIfThere(
        LessonRequest request,
        LessonPlan plan,
        string studentId,
        int lesson
    )
    {
        if (request.Lessons.Take(lesson + 1).All(l => l.IsAttendedBy(studentId)))
            return plan;
        var there = request with
        {
            Lessons =
            [
                .. request.Lessons.Select(
                    (l, i) =>
                        i > lesson
                            ? l
                            : l with
                            {
                                Absent = [.. l.Absent.Where(a => a != studentId)],
                            }
                ),
            ],
        };
        return LessonPlanner.Quick(there, TurnMaker.Of(there.Students));
    }

    /// <summary>
    /// Skills the student has used, or seen shown: in an earlier lesson they were not listed as absent from and did
    /// something of. Who has done nothing of a lesson may not have been there, and is shown it again.
    /// </summary>
    private static HashSet<Skill> Seen(
        LessonRequest request,
        LessonPlan plan,
        string studentId,
        int lesson,
        WorkSequence work,
        WorkProgress progress
    )
    {
        var done = work.Steps.Where(s => progress.Find(s.Id) is { IsDone: true }).ToList();
        return
        [
            .. from l in Enumerable.Range(0, lesson)
            where request.Lessons[l].IsAttendedBy(studentId)
            where
                plan.Lessons[l]
                    .Turns.Any(t =>
                        t.Turn.StudentId == studentId
                        && done.Exists(d => t.Turn.Steps.Contains(d.Number))
                    )
            from showing in plan.Lessons[l].Showings
            where showing.StudentId is null || showing.StudentId == studentId
            select showing.Skill,
            .. done.Select(s => s.Skill),
        ];
    }

    private static bool IsRoughCut(Step step) =>
        step.Class is CutClass.Third
        && step.Kind is StepKind.EndTrim or StepKind.Crosscut or StepKind.Rip
        && !step.IsPrepared;

    private static bool IsMarking(Step step) =>
        step.Kind is StepKind.CheckBoard or StepKind.MarkOut;
}

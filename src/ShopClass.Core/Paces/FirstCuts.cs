using ShopClass.Core.Progress;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Paces;

/// <summary>
/// A student's pace starts with three timed cuts. They are asked for at the first cuts of the plan, in the order of the
/// work, until three were timed; whoever ticks cuts without looking at the clock is asked at the next ones, and after
/// <see cref="LastAsked"/> cuts no more. The numbers are our proposal.
/// </summary>
/// <param name="Timed">How many cuts were timed.</param>
/// <param name="Done">How many were done.</param>
public sealed record FirstCuts(int Timed, int Done)
{
    /// <summary>How many cuts are timed.</summary>
    public const int Wanted = 3;

    /// <summary>After so many cuts nobody is asked any more.</summary>
    public const int LastAsked = 6;

    /// <summary>Whether three were timed.</summary>
    public bool AreTimed => Timed >= Wanted;

    /// <summary>Whether more are asked for.</summary>
    public bool AreAsked => !AreTimed && Done < LastAsked;

    /// <summary>How it stands.</summary>
    public static FirstCuts Of(WorkProgress progress)
    {
        var done = progress.Steps.Where(s => s.IsDone && IsCut(s.Step)).ToList();
        return new(done.Count(s => s.Minutes is not null), done.Count);
    }

    /// <summary>
    /// Which of the three a cut is, from 1, where its minutes are asked for; null where they are not. The open cuts before it
    /// are taken as timed, so that a page kept for no signal asks for the same.
    /// </summary>
    public static int? NumberOf(WorkProgress progress, Step step)
    {
        var stands = Of(progress);
        if (!IsCut(step) || !stands.AreAsked || progress.Find(step.Id) is not { IsDone: false })
            return null;
        var before = progress
            .Steps.TakeWhile(s => s.Step.Id != step.Id)
            .Count(s => !s.IsDone && IsCut(s.Step));
        var number = stands.Timed + before + 1;
        return number <= Wanted && stands.Done + before < LastAsked ? number : null;
    }

    // A cut in the piece itself, by the student: practice says little about the work, and what is prepared nothing.
    private static bool IsCut(Step step) =>
        step is { Saw: not null, IsPrepared: false, Time.Busy: > 0, Kind: not StepKind.Practise };
}

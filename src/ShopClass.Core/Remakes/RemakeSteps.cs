using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Remakes;

/// <summary>The steps of a plan with those of its remakes.</summary>
/// <param name="Steps">The first plan's steps, with their numbers, then those of each remake.</param>
/// <param name="Settled">Open steps a remake does instead: nobody needs to do them any more.</param>
/// <param name="Plans">The plan a remake's step is drawn from, by the step's id.</param>
public sealed record RemadeWork(
    IReadOnlyList<Step> Steps,
    IReadOnlySet<string> Settled,
    IReadOnlyDictionary<string, CheckedPlan> Plans
);

/// <summary>
/// Puts the steps of remakes into a student's list. The first plan's steps keep their numbers, so that paper and phones
/// agree; what a remake asks for comes after them, and open steps on the new piece wait for it.
/// </summary>
/// <remarks>
/// A remake's steps are those that make the new piece, written from its own plan, and then once more everything that had
/// been done to the spoiled piece's joints, fit and finish by then.
/// </remarks>
public static class RemakeSteps
{
    /// <summary>The joined list.</summary>
    /// <param name="first">The steps of the first plan.</param>
    /// <param name="made">The remakes, in order.</param>
    /// <param name="doneThen">The ids of the steps that were done when each remake was chosen, by its number.</param>
    /// <param name="notes">How the work is done in the instructor's own words, as the first plan's steps have it already; null for the usual words.</param>
    public static RemadeWork Join(
        WorkSequence first,
        IReadOnlyList<RemakeMade> made,
        Func<int, IReadOnlySet<string>> doneThen,
        IReadOnlyList<TechniqueNote>? notes = null
    )
    {
        var list = new Joined(first, notes ?? []);
        foreach (var remake in made)
            list.Add(remake, doneThen(remake.Number));
        return new(list.Steps, list.Settled, list.Plans);
    }

    private sealed class Joined(WorkSequence first, IReadOnlyList<TechniqueNote> notes)
    {
        public List<Step> Steps { get; } = [.. first.Steps];

        public HashSet<string> Settled { get; } = new(StringComparer.Ordinal);

        public Dictionary<string, CheckedPlan> Plans { get; } = new(StringComparer.Ordinal);

        public void Add(RemakeMade remake, IReadOnlySet<string> done)
        {
            var before = Steps.ToList();
            var spoiled = NamesOf(remake.Spoiled);
            var remade = remake.Option.Blanks.SelectMany(b => NamesOf(b.InFirstPlan)).ToHashSet();
            var begin = Steps.Count;
            if (remake.Plan is { } plan)
                Make(remake, plan);
            foreach (
                var step in before.Where(s => !done.Contains(s.Id) && IsInstead(s, remake, remade))
            )
                Settled.Add(step.Id);
            Repeat(remake, before, done, spoiled, begin);
            var last = Ends(begin);
            for (var i = 0; i < begin; i++)
            {
                var step = Steps[i];
                if (
                    last.Count > 0
                    && !done.Contains(step.Id)
                    && !Settled.Contains(step.Id)
                    && !WasBefore(step, remake)
                    && step.Pieces.Any(p => spoiled.Contains(p) || remade.Contains(p))
                )
                    Steps[i] = step with { After = [.. step.After.Union(last).Order()] };
            }
        }

        private void Make(RemakeMade remake, CheckedPlan plan)
        {
            var written = TechniqueNotes
                .InOwnWords(WorkWriter.Write(plan, first.Hand), notes)
                .Steps;
            var gauges = written.Where(s => IsMaking(s.Kind)).SelectMany(s => s.After).ToHashSet();
            var numbers = new Dictionary<int, int>();
            foreach (
                var step in written.Where(s =>
                    IsMaking(s.Kind) || (s.Kind is StepKind.SetGauge && gauges.Contains(s.Number))
                )
            )
            {
                numbers[step.Number] = Steps.Count + 1;
                var added = step with
                {
                    Id = $"remake{remake.Number}/{step.Id}",
                    Number = Steps.Count + 1,
                    After = [.. step.After.Where(numbers.ContainsKey).Select(n => numbers[n])],
                };
                Plans[added.Id] = plan;
                Steps.Add(added);
            }
        }

        private void Repeat(
            RemakeMade remake,
            List<Step> before,
            IReadOnlySet<string> done,
            HashSet<string> spoiled,
            int begin
        )
        {
            var making = Ends(begin);
            var numbers = new Dictionary<int, int>();
            // A step that was repeated before stands for all its earlier turns.
            var latest = before
                .Where(s => s.Pieces.Any(spoiled.Contains) && IsToRepeat(s, remake))
                .GroupBy(s => s.Id[(s.Id.LastIndexOf('/') + 1)..], StringComparer.Ordinal)
                .Select(g => g.Last())
                .Where(s => done.Contains(s.Id))
                .OrderBy(s => s.Number);
            foreach (var step in latest)
            {
                numbers[step.Number] = Steps.Count + 1;
                Steps.Add(
                    step with
                    {
                        Id = $"remake{remake.Number}/{step.Id}",
                        Number = Steps.Count + 1,
                        Title = $"{step.Title}, with the new {remake.Spoiled}",
                        Needs = [.. step.Needs, .. Smaller(remake)],
                        After =
                        [
                            .. making
                                .Union(step.After.Select(n => numbers.GetValueOrDefault(n, n)))
                                .Distinct()
                                .Order(),
                        ],
                    }
                );
            }
        }

        // The steps from there on that no other of them waits for.
        private List<int> Ends(int begin)
        {
            var waitedFor = Steps.Skip(begin).SelectMany(s => s.After).ToHashSet();
            return [.. Steps.Skip(begin).Select(s => s.Number).Where(n => !waitedFor.Contains(n))];
        }
    }

    private static IEnumerable<string> Smaller(RemakeMade remake) =>
        remake.Option.Changes.Count == 0
            ? []
            :
            [
                $"The design is smaller now. {remake.Option.Sentence} Where this step names a size, go by the new one.",
            ];

    private static HashSet<string> NamesOf(BlankKey key) =>
        [key.ToString(), (key with { Strip = 0 }).ToString()];

    private static bool IsInstead(Step step, RemakeMade remake, HashSet<string> remade)
    {
        if (remake.Plan is null)
            return false;
        // Laid out again: what was still to be sawn is sawn by the new layout.
        if (remake.Option.Way is RemakeWay.LaidOutAgain && IsBreakdown(step.Kind))
            return step.Kind is not StepKind.CheckBoard;
        return IsMaking(step.Kind) && step.Pieces.Count > 0 && step.Pieces.All(remade.Contains);
    }

    private static bool IsToRepeat(Step step, RemakeMade remake) =>
        remake.Option.Way is RemakeWay.ClassSpare
            ? step.Kind
                is StepKind.Fit
                    or StepKind.CloseDimension
                    or StepKind.Assemble
                    or StepKind.Finish
        : remake.Spoiled.Strip > 0 ? !IsBreakdown(step.Kind) && step.Kind is not StepKind.Practise
        : !IsMaking(step.Kind) && step.Kind is not (StepKind.SetGauge or StepKind.Practise);

    /// <summary>Whether a step lay behind when the piece was spoiled, ticked or not: it does not wait for the new one.</summary>
    private static bool WasBefore(Step step, RemakeMade remake) =>
        IsBreakdown(step.Kind) && (step.Cut is not { } cut || cut.Number <= remake.CutsMade);

    private static bool IsBreakdown(StepKind kind) => kind <= StepKind.Rip;

    private static bool IsMaking(StepKind kind) => kind <= StepKind.CutToLength;
}

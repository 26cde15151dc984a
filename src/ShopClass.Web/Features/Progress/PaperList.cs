using System.Globalization;
using ShopClass.Core.Progress;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Progress;

namespace ShopClass.Web.Features.Progress;

/// <summary>A size on a paper list.</summary>
/// <param name="Id">Its action's mark: the same one, sent twice, counts once.</param>
/// <param name="Asked">What is measured.</param>
/// <param name="Typed">What was typed.</param>
public sealed record PaperSize(Guid Id, SizeAsked Asked, string Typed);

/// <summary>A step on a paper list.</summary>
/// <param name="Id">The mark of its tick.</param>
/// <param name="Step">The step.</param>
/// <param name="IsDone">Whether it was done before.</param>
/// <param name="CanBeTakenBack">Whether its tick may be taken back: it is done and not checked off.</param>
/// <param name="IsTicked">Whether the paper ticks it.</param>
/// <param name="IsTakenBack">Whether the paper says that it is not done after all.</param>
/// <param name="Minutes">Minutes it took, as typed.</param>
/// <param name="Sizes">What was measured.</param>
/// <param name="Problems">What stands in the way, in sentences.</param>
public sealed record PaperLine(
    Guid Id,
    Step Step,
    bool IsDone,
    bool CanBeTakenBack,
    bool IsTicked,
    bool IsTakenBack,
    string Minutes,
    IReadOnlyList<PaperSize> Sizes,
    IReadOnlyList<string> Problems
);

/// <summary>
/// A checklist kept on paper, keyed in afterwards: the same steps in the same order, many at a time. Every tick and every
/// size is an action of its own with its own mark, said one after the other as if it had been pressed at the bench.
/// </summary>
public static class PaperList
{
    /// <summary>The list as it stands, with nothing keyed in.</summary>
    public static IReadOnlyList<PaperLine> Of(PlanInHand work) =>
        [.. work.Progress.Steps.Select((s, i) => Line(s, i, form: null))];

    /// <summary>The list with what was keyed in.</summary>
    public static IReadOnlyList<PaperLine> Of(PlanInHand work, IFormCollection form) =>
        [.. work.Progress.Steps.Select((s, i) => Line(s, i, form))];

    public static string TickName(int line) => $"Entry.d{line}";

    public static string BackName(int line) => $"Entry.b{line}";

    public static string MinutesName(int line) => $"Entry.t{line}";

    public static string MarkName(int line) => $"Entry.m{line}";

    public static string SizeName(int line, int size) => $"Entry.z{line}.{size}";

    public static string SizeMarkName(int line, int size) => $"Entry.g{line}.{size}";

    /// <summary>
    /// Says all that was keyed in. How many things were taken, and the list with what was not and why; what was taken is
    /// off it. Ticks are taken back first, the last step first, since a step cannot be open under one that is done.
    /// </summary>
    public static async Task<(int Taken, IReadOnlyList<PaperLine> Lines)> SayAsync(
        StepDesk desk,
        Viewer viewer,
        PlanInHand work,
        IFormCollection form,
        CancellationToken cancel
    )
    {
        var saying = new Saying(desk, viewer, work, cancel);
        var lines = Of(work, form).ToArray();
        for (var i = lines.Length - 1; i >= 0; i--)
            lines[i] = await saying.TakeBackAsync(lines[i]);
        for (var i = 0; i < lines.Length; i++)
            lines[i] = await saying.TakeInAsync(lines[i]);
        return (saying.Taken, [.. lines.Select(l => Standing(l, saying.Now))]);
    }

    // What is done and what is not is read off how the work stands after all of it.
    private static PaperLine Standing(PaperLine line, PlanInHand now) =>
        now.Progress.Find(line.Step.Id) is { } state
            ? line with
            {
                IsDone = state.IsDone,
                CanBeTakenBack = CanBeTakenBackFrom(state),
            }
            : line;

    private sealed class Saying(
        StepDesk desk,
        Viewer viewer,
        PlanInHand work,
        CancellationToken cancel
    )
    {
        public int Taken { get; private set; }

        public PlanInHand Now { get; private set; } = work;

        public async Task<PaperLine> TakeBackAsync(PaperLine line)
        {
            if (line is not { IsTakenBack: true, IsDone: true })
                return line with { IsTakenBack = false };
            var problems = await SayAsync(
                line,
                new() { Id = line.Id, Kind = StepActionKind.Untick }
            );
            // The mark is used up; the line may be ticked again with the next one.
            return problems.Count == 0
                ? line with
                {
                    Id = Guid.NewGuid(),
                    IsTakenBack = false,
                }
                : line with
                {
                    Problems = problems,
                };
        }

        public async Task<PaperLine> TakeInAsync(PaperLine line)
        {
            List<string> problems = [.. line.Problems];
            var isTicked = line.IsTicked;
            if (line is { IsTicked: true, IsDone: false })
            {
                var entry = new SayEntry
                {
                    Id = line.Id,
                    Kind = StepActionKind.Tick,
                    Minutes = line.Minutes,
                };
                var said = await SayAsync(line, entry);
                isTicked = said.Count > 0;
                problems.AddRange(said);
            }

            if (line is { IsTicked: false, IsDone: false } && line.Minutes.Trim().Length > 0)
                problems.Add("Minutes are written here and the step is not ticked. Tick it too.");
            List<PaperSize> sizes = [];
            foreach (var size in line.Sizes)
                sizes.Add(await TakeInAsync(line, size, problems));
            return line with { IsTicked = isTicked, Sizes = sizes, Problems = problems };
        }

        private async Task<PaperSize> TakeInAsync(
            PaperLine line,
            PaperSize size,
            List<string> problems
        )
        {
            if (size.Typed.Trim().Length == 0)
                return size;
            var entry = new SayEntry
            {
                Id = size.Id,
                Kind = StepActionKind.Measured,
                Text = size.Asked.Piece,
                Size = size.Typed,
            };
            var said = await SayAsync(line, entry);
            problems.AddRange(said);
            return said.Count > 0 ? size : size with { Id = Guid.NewGuid(), Typed = "" };
        }

        private async Task<IReadOnlyList<string>> SayAsync(PaperLine line, SayEntry entry)
        {
            (entry.Plan, entry.Step) = (Now.Plan.Id, line.Step.Id);
            var outcome = await desk.SayAsync(viewer, entry, cancel);
            if (outcome is { IsSaved: true, Value: { } after })
            {
                (Taken, Now) = (Taken + 1, after);
                return [];
            }

            return outcome.Kind is OutcomeKind.NotFound
                ? ["This plan is not there any more."]
                : [.. outcome.Problems.Select(p => p.Sentence)];
        }
    }

    private static bool CanBeTakenBackFrom(StepState state) =>
        state is { IsDone: true, Check: not CheckState.Passed };

    private static PaperLine Line(StepState state, int line, IFormCollection? form) =>
        new(
            Mark(form, MarkName(line)),
            state.Step,
            state.IsDone,
            CanBeTakenBackFrom(state),
            form?.ContainsKey(TickName(line)) is true,
            form?.ContainsKey(BackName(line)) is true,
            form?[MinutesName(line)].ToString() ?? "",
            [
                .. MeasuredSize
                    .AskedOf(state.Step)
                    .Select(
                        (asked, i) =>
                            new PaperSize(
                                Mark(form, SizeMarkName(line, i)),
                                asked,
                                form?[SizeName(line, i)].ToString() ?? ""
                            )
                    ),
            ],
            []
        );

    private static Guid Mark(IFormCollection? form, string name) =>
        Guid.TryParse(form?[name].ToString(), CultureInfo.InvariantCulture, out var id)
            ? id
            : Guid.NewGuid();
}

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
/// <param name="IsTicked">Whether the paper ticks it.</param>
/// <param name="Minutes">Minutes it took, as typed.</param>
/// <param name="Sizes">What was measured.</param>
/// <param name="Problems">What stands in the way, in sentences.</param>
public sealed record PaperLine(
    Guid Id,
    Step Step,
    bool IsDone,
    bool IsTicked,
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

    public static string MinutesName(int line) => $"Entry.t{line}";

    public static string MarkName(int line) => $"Entry.m{line}";

    public static string SizeName(int line, int size) => $"Entry.z{line}.{size}";

    public static string SizeMarkName(int line, int size) => $"Entry.g{line}.{size}";

    /// <summary>
    /// Says all that was keyed in. How many things were taken, and the list with what was not and why; what was taken is
    /// off it.
    /// </summary>
    public static async Task<(int Taken, IReadOnlyList<PaperLine> Lines)> SayAsync(
        StepDesk desk,
        Viewer viewer,
        PlanInHand work,
        IFormCollection form,
        CancellationToken cancel
    )
    {
        var (taken, now) = (0, work);
        List<PaperLine> lines = [];
        foreach (var line in Of(work, form))
        {
            List<string> problems = [];
            var isTicked = line.IsTicked;
            if (
                isTicked
                && !line.IsDone
                && await SaidAsync(
                    new()
                    {
                        Id = line.Id,
                        Kind = StepActionKind.Tick,
                        Minutes = line.Minutes,
                    }
                )
            )
                isTicked = false;
            if (!line.IsTicked && !line.IsDone && line.Minutes.Trim().Length > 0)
                problems.Add("Minutes are written here and the step is not ticked. Tick it too.");
            List<PaperSize> sizes = [];
            foreach (var size in line.Sizes)
            {
                var isSaid =
                    size.Typed.Trim().Length > 0
                    && await SaidAsync(
                        new()
                        {
                            Id = size.Id,
                            Kind = StepActionKind.Measured,
                            Text = size.Asked.Piece,
                            Size = size.Typed,
                        }
                    );
                sizes.Add(isSaid ? size with { Id = Guid.NewGuid(), Typed = "" } : size);
            }

            lines.Add(line with { IsTicked = isTicked, Sizes = sizes, Problems = problems });

            async Task<bool> SaidAsync(SayEntry entry)
            {
                (entry.Plan, entry.Step) = (work.Plan.Id, line.Step.Id);
                var outcome = await desk.SayAsync(viewer, entry, cancel);
                if (outcome is { IsSaved: true, Value: { } after })
                {
                    (taken, now) = (taken + 1, after);
                    return true;
                }

                problems.AddRange(outcome.Problems.Select(p => p.Sentence));
                if (outcome.Kind is OutcomeKind.NotFound)
                    problems.Add("This plan is not there any more.");
                return false;
            }
        }

        return (
            taken,
            [
                .. lines.Select(l =>
                    l with
                    {
                        IsDone = now.Progress.Find(l.Step.Id) is { IsDone: true },
                    }
                ),
            ]
        );
    }

    private static PaperLine Line(StepState state, int line, IFormCollection? form) =>
        new(
            Mark(form, MarkName(line)),
            state.Step,
            state.IsDone,
            form?.ContainsKey(TickName(line)) is true,
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

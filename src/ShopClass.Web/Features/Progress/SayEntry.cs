using System.Globalization;
using System.Text.Json.Serialization;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Progress;

namespace ShopClass.Web.Features.Progress;

/// <summary>What is said about a step, as it comes from a form or from a phone's queue.</summary>
public sealed class SayEntry
{
    /// <summary>Made where it is said; the same one, sent twice, counts once.</summary>
    public Guid Id { get; set; }

    public Guid Plan { get; set; }

    public string? Step { get; set; }

    [JsonConverter(typeof(JsonStringEnumConverter<StepActionKind>))]
    public StepActionKind Kind { get; set; }

    public string? Text { get; set; }

    /// <summary>A measured size as typed.</summary>
    public string? Size { get; set; }

    /// <summary>Whole minutes a ticked step took, as typed; empty where nobody looked at the clock.</summary>
    public string? Minutes { get; set; }

    /// <summary>When it was said, by the phone's clock (ISO 8601); empty for now.</summary>
    public string? Said { get; set; }

    public DateTime? SaidUtc =>
        DateTime.TryParse(
            Said,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal,
            out var utc
        )
            ? utc
            : null;

    /// <summary>The minutes, null for none; or why they cannot be read.</summary>
    public Reading<int?> ReadMinutes()
    {
        if (Kind is not StepActionKind.Tick || string.IsNullOrWhiteSpace(Minutes))
            return Reading<int?>.Of(null);
        return int.TryParse(
            Minutes.Trim(),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var minutes
        )
            ? Reading<int?>.Of(minutes)
            : Reading<int?>.Refused(
                $"“{Minutes.Trim()}” is no number of minutes. Write whole minutes, such as 12, or leave it empty."
            );
    }

    /// <summary>The action, with its size read in the course's unit; or why it cannot be read.</summary>
    public Reading<StepAction> Read(UnitSystem unit)
    {
        var action = new StepAction(Id, Step ?? "", Kind, Text ?? "");
        if (Id == Guid.Empty)
            return Reading<StepAction>.Refused(
                "This was sent without its mark. Open the step again."
            );
        if (Kind is not StepActionKind.Measured)
            return Reading<StepAction>.Of(action);
        var size = LengthReader.Read(Size, unit);
        return size.IsRead
            ? Reading<StepAction>.Of(action with { Size = size.Value })
            : Reading<StepAction>.Refused(size.Problem!);
    }
}

/// <summary>Says things about steps for a page or a queue.</summary>
public sealed class StepDesk(ProgressStore progress)
{
    public async Task<Outcome<PlanInHand>> SayAsync(
        Viewer viewer,
        SayEntry entry,
        CancellationToken cancel
    )
    {
        if (await progress.FindAsync(viewer, entry.Plan, cancel) is not { } inHand)
            return Outcome<PlanInHand>.NotFound();
        var read = entry.Read(inHand.Plan.Checked.Request.Rules.Unit);
        if (!read.IsRead)
            return Outcome<PlanInHand>.Refused(new FieldProblem("Size", read.Problem!));
        var minutes = entry.ReadMinutes();
        return minutes.IsRead
            ? await progress.SayAsync(
                viewer,
                entry.Plan,
                read.Value! with
                {
                    Minutes = minutes.Value,
                },
                entry.SaidUtc,
                cancel
            )
            : Outcome<PlanInHand>.Refused(new FieldProblem("Minutes", minutes.Problem!));
    }
}

/// <summary>What measured sizes of a step mean.</summary>
public static class SizesOf
{
    /// <summary>One judgement for each piece measured at the step.</summary>
    public static IReadOnlyList<SizeJudged> Judged(PlanInHand inHand, StepState state)
    {
        var request = inHand.Plan.Checked.Request;
        return
        [
            .. from size in state.Sizes
            let asked = MeasuredSize.AskedOf(state.Step, size.Piece)
            where asked is not null
            select MeasuredSize.Judge(
                asked,
                size.Size,
                LeastOf(request.Project, state, asked),
                request.Rules.Precision
            ),
        ];
    }

    // A piece that is one part must still yield it; while a dimension is open, with its extra.
    private static Length? LeastOf(Project project, StepState state, SizeAsked asked)
    {
        var letter = asked.Piece.TrimEnd([.. "0123456789"]);
        if (
            asked.Piece.Contains('.', StringComparison.Ordinal)
            || project.Parts.FirstOrDefault(p => p.Letter == letter) is not { } part
        )
            return null;
        var finished = asked.Dimension switch
        {
            PartDimension.Length => part.Finished.Length,
            PartDimension.Width => part.Finished.Width,
            _ => part.Finished.Thickness,
        };
        var open = state.Step.Open.FirstOrDefault(o =>
            o.Piece == asked.Piece && o.Dimension == asked.Dimension
        );
        return finished + (open?.Extra ?? Length.Zero);
    }
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>The work while it is being written: the steps so far and every piece as it stands.</summary>
internal sealed class Job(CheckedPlan plan, WorkSettings settings)
{
    public CheckedPlan Plan { get; } = plan;

    public CourseRules Rules => Plan.Request.Rules;

    public Project Project => Plan.Request.Project;

    public StepList Steps { get; } = new();

    /// <summary>The pieces there are, by part, copy and strip.</summary>
    public List<Workpiece> Pieces { get; } = [];

    /// <summary>The pieces that are whole parts: in one piece, or glued up.</summary>
    public IEnumerable<Workpiece> Parts => Pieces.Where(p => p.Key.Strip == 0);

    /// <summary>Strips that stay joined until they are at width, with what takes them apart.</summary>
    public List<(BreakdownSteps Breakdown, Workpiece Piece, JoinedStrip Strip)> Strips { get; } =
    [];

    public Pace Pace { get; } = new(settings.StudentPercent);

    /// <summary>
    /// The step whose waste can be practised on: the first that leaves a piece long enough to hold at a bench hook, else the
    /// first that leaves any; null where sawing leaves none.
    /// </summary>
    public string? WasteFrom { get; private set; }

    /// <summary>Whether what <see cref="WasteFrom"/> leaves is long enough to hold.</summary>
    public bool IsWasteLong { get; private set; }

    /// <summary>What practising asks for.</summary>
    public string WasteNeeded =>
        IsWasteLong
            ? "There is a piece of waste or an offcut of about the same thickness."
            : "Your own waste is too short to hold: take a longer piece of about the same thickness from the scrap box.";

    /// <summary>A step leaves waste or an offcut this long.</summary>
    public void LeaveWaste(string step, Length along)
    {
        var isLong = along >= Rules.BenchHookLimit;
        if (WasteFrom is not null && (IsWasteLong || !isLong))
            return;
        (WasteFrom, IsWasteLong) = (step, isLong);
    }

    /// <summary>The steps after which everything that has joints is fitted; what closes open dimensions waits for them.</summary>
    public List<string> Fits { get; } = [];

    /// <summary>
    /// How much the widest of these pieces will move from the shop to the room, where that is 1/64 in (0.4 mm) or more:
    /// what is fitted tight now is tight or loose by so much later.
    /// </summary>
    public string? MovementOf(IEnumerable<Workpiece> pieces)
    {
        if (
            pieces.MaxBy(p => p.Width) is not { } piece
            || SpeciesTable.Find(piece.Board.SpeciesId) is not { } species
        )
            return null;
        var air = Rules.Air;
        var shop = Movement.MoistureContent(air.Celsius, air.ShopHumidity);
        var room = Movement.MoistureContent(air.Celsius, air.RoomHumidity);
        if (Movement.OfFlatsawnWidth(species, piece.Width, shop, room) is not { } change)
            return null;
        var step =
            Rules.Unit is UnitSystem.Inch
                ? Length.FromInches(0, 1, 64)
                : Length.FromHundredthsOfMillimetre(10);
        var size = (change < Length.Zero ? -change : change).RoundTo(step);
        return size < Length.FromInches(0, 1, 64)
            ? null
            : $"A flatsawn width of {Say(piece.Width)} {(change < Length.Zero ? "shrinks" : "swells")} by about {Say(size)} from the shop ({air.ShopHumidity} % humidity) to the room ({air.RoomHumidity} %), in {species.CommonName}, by the Wood Handbook: "
                + (
                    change < Length.Zero
                        ? "what is fitted tight here will be looser there."
                        : "leave it that much room."
                );
    }

    public string Technique(string key) =>
        settings.Techniques.GetValueOrDefault(key) ?? Techniques.Usual[key];

    public string Say(Length length)
    {
        var step = Rules.Precision.Step();
        return length.Ticks % step.Ticks == 0
            ? LengthWriter.WriteWithUnit(length, Rules.Precision)
            : LengthWriter.WriteExactWithUnit(length, Rules.Unit);
    }

    /// <summary>A place on a board, as a tape reads it.</summary>
    public string AtTape(Length place) => LengthWriter.WriteWithUnit(place, Rules.Precision);

    public IReadOnlyList<Workpiece> Of(string letter) =>
        [.. Parts.Where(p => p.Part.Letter == letter)];

    /// <summary>The step that sets a gauge, written at its first use.</summary>
    public string Gauge(string use, Length setting)
    {
        var id = $"gauge:{use}:{setting.Ticks}";
        if (Steps.Has(id))
            return id;
        var tool = GaugeFor(setting);
        return Steps.Add(
            id,
            new()
            {
                Id = id,
                Number = 0,
                Kind = StepKind.SetGauge,
                Skill = Skill.Gauging,
                Station = Station.BenchTop,
                Title = $"Set a {tool} to {Say(setting)} for the {use}",
                Pieces = [],
                Marks = [$"{Say(setting)} from the pin to the fence"],
                Gauge = setting,
                Technique = Technique("SetGauge"),
                Reason =
                    "Set once for everything it has to mark: pieces marked at one setting are alike even where the setting is off.",
                Tools = [tool, "rule"],
                Time = Pace.Flat(2, "to set and try a gauge"),
            },
            []
        );
    }

    /// <summary>The gauges these settings take, each named once; a marking gauge where there is none, for what is taken from the mate.</summary>
    public static IEnumerable<string> GaugesFor(IReadOnlyList<Length> settings) =>
        settings.Select(GaugeFor).DefaultIfEmpty("marking gauge").Distinct(StringComparer.Ordinal);

    private static string GaugeFor(Length setting) =>
        setting > Length.FromMillimetres(150) ? "panel gauge" : "marking gauge";
}

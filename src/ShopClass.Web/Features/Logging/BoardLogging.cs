using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Features.Logging;

/// <summary>One board being logged, screen by screen. Knows nothing of pages and stores.</summary>
public sealed class BoardLogging(CourseRules rules, LoggingDraft draft)
{
    /// <summary>The drawing that is tapped on a phone.</summary>
    public static DrawingFrame Frame => DrawingFrame.Narrow;

    public CourseRules Rules { get; } = rules;

    public LoggingDraft Draft { get; } = draft;

    public BoardDraft Board => Draft.Board;

    public BoardEditor Editor { get; } = new(rules, draft.Board);

    public bool IsAnswered(EntryScreen screen) => Draft.Answered.Contains(screen);

    /// <summary>The first screen not answered yet; the last one when all are.</summary>
    public EntryScreen Next =>
        EntryScreens.All.FirstOrDefault(s => !IsAnswered(s), EntryScreen.Log);

    /// <summary>The size asked for on a screen, as entered so far.</summary>
    public Length? SizeOf(EntryScreen screen) =>
        screen switch
        {
            EntryScreen.Length => Board.Length,
            EntryScreen.Start => Board.WidthAtStart,
            EntryScreen.Middle => Board.WidthAtMiddle,
            EntryScreen.End => Board.WidthAtEnd,
            EntryScreen.Thickness => Board.Thickness,
            _ => null,
        };

    /// <summary>Takes the answer of a screen; what is wrong with it, as a sentence, or null.</summary>
    public string? Answer(EntryScreen screen, ScreenEntry entry)
    {
        var problem = screen switch
        {
            EntryScreen.Surface => Surface(entry),
            EntryScreen.Wood => Wood(entry),
            EntryScreen.Bad or EntryScreen.Photo or EntryScreen.Flat => null,
            EntryScreen.Log => Name(entry),
            _ => Size(screen, entry),
        };
        if (problem is null && screen is not EntryScreen.Log)
            Draft.HasAnswered(screen);
        return problem;
    }

    /// <summary>Marks a bad place where the drawing was tapped, or in the middle; its number from 1, or null.</summary>
    public int? AddPlace(ScreenEntry entry)
    {
        // A tap that was sent before has its place already.
        if (entry.Count is { } count && count != Board.Defects.Count)
            return Board.Defects.Count > 0 ? Board.Defects.Count : null;
        if (Editor.Places.Board is null || !Editor.Places.CanAdd)
            return null;
        if (Share(entry.X) is { } x && Share(entry.Y) is { } y)
            return new BoardPointing(Editor, Frame).Point(x, y) + 1;
        return Editor.Places.Add() + 1;
    }

    /// <summary>Puts a bad place right, or takes it away; problems by field.</summary>
    public Dictionary<string, string> ChangePlace(int number, ScreenEntry entry)
    {
        var problems = new Dictionary<string, string>(StringComparer.Ordinal);
        if (number < 1 || number > Board.Defects.Count)
            return problems;
        if (entry.Go == "remove")
        {
            Board.Defects.RemoveAt(number - 1);
            return problems;
        }

        var changed = new DefectDraft
        {
            Kind =
                Enum.TryParse<DefectKind>(entry.Choice, out var kind) && Enum.IsDefined(kind)
                    ? kind
                    : DefectKind.Knot,
            Reach =
                Enum.TryParse<DefectReach>(entry.Reach, out var reach) && Enum.IsDefined(reach)
                    ? reach
                    : DefectReach.Through,
        };
        changed.From = Read("From", entry.From);
        changed.To = Read("To", entry.To);
        changed.Near = Read("Near", entry.Near);
        changed.Far = Read("Far", entry.Far);
        if (problems.Count > 0)
            return problems;
        var before = Board.Defects[number - 1];
        Board.Defects[number - 1] = changed;
        foreach (var side in (string[])["", ".From", ".To", ".Near", ".Far"])
        {
            if (Editor.ProblemAt($"Defects[{number - 1}]{side}") is { } sentence)
                problems[side.TrimStart('.')] = sentence;
        }

        if (problems.Count > 0)
            Board.Defects[number - 1] = before;
        return problems;

        Length? Read(string field, string? text)
        {
            var read = LengthReader.Read(text, Rules.Unit);
            if (read.IsRead)
                return read.Value;
            problems[field] = read.Problem!;
            return null;
        }
    }

    private string? Size(EntryScreen screen, ScreenEntry entry)
    {
        Length value;
        if (entry.Go == "same" && Board.WidthAtStart is { } start)
            value = start;
        else
        {
            var read = TapeEntry.Read(entry.Text, entry.Fraction, Rules.Unit);
            if (!read.IsRead)
                return read.Problem;
            value = read.Value;
            if (TapeEntry.WrongUnit(screen, entry.Text, value, Rules.Unit) is { } question)
                return question;
        }

        var before = SizeOf(screen);
        Put(screen, value);
        if (Editor.ProblemAt(EntryScreens.Field(screen)!) is not { } problem)
            return null;
        Put(screen, before);
        return problem;
    }

    private void Put(EntryScreen screen, Length? value)
    {
        switch (screen)
        {
            case EntryScreen.Length:
                Board.Length = value;
                break;
            case EntryScreen.Start:
                Board.WidthAtStart = value;
                break;
            case EntryScreen.Middle:
                Board.WidthAtMiddle = value;
                break;
            case EntryScreen.End:
                Board.WidthAtEnd = value;
                break;
            default:
                Board.Thickness = value;
                break;
        }
    }

    private string? Surface(ScreenEntry entry)
    {
        if (!Enum.TryParse<Surfacing>(entry.Choice, out var chosen) || !Enum.IsDefined(chosen))
            return "Tap the one that looks like your board.";
        Board.Surfacing = chosen;
        return null;
    }

    private string? Wood(ScreenEntry entry)
    {
        var typed = entry.Text?.Trim() is { Length: > 0 } text ? text : entry.Choice;
        if (string.IsNullOrEmpty(typed))
            return "Tap a wood or type its name. If you do not know it, ask your instructor.";
        var read = SpeciesNames.Read(typed);
        if (read.IsRead)
            Board.SpeciesId = read.Value!.Id;
        return read.Problem;
    }

    private string? Name(ScreenEntry entry)
    {
        Board.Name = (entry.Text ?? "").Trim();
        return TypedText.NameProblem(Board.Name);
    }

    private static double? Share(string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var share)
        && double.IsFinite(share)
            ? share
            : null;
}

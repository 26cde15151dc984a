using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Logging;

/// <summary>Whether a board is flat: the hollow across it and the corner that stands off.</summary>
public static class FlatEntry
{
    /// <summary>
    /// Takes what was typed, or that the board is flat; an empty field is none of it. Problems by field; with any, the
    /// board stays as it was.
    /// </summary>
    public static IReadOnlyDictionary<string, string> Take(BoardLogging logging, ScreenEntry entry)
    {
        var problems = new Dictionary<string, string>(StringComparer.Ordinal);
        var board = logging.Board;
        var before = (board.Cup, board.Twist);
        var isFlat = entry.Go == "flat";
        board.Cup = isFlat ? null : Read("Cup", entry.Cup);
        board.Twist = isFlat ? null : Read("Twist", entry.Twist);
        foreach (var field in (string[])["Cup", "Twist"])
        {
            if (!problems.ContainsKey(field) && logging.Editor.ProblemAt(field) is { } sentence)
                problems[field] = sentence;
        }

        if (problems.Count > 0)
            (board.Cup, board.Twist) = before;
        else
            logging.Draft.HasAnswered(EntryScreen.Flat);
        return problems;

        Length? Read(string field, string? text)
        {
            if (string.IsNullOrWhiteSpace(text))
                return null;
            var read = LengthReader.Read(text, logging.Rules.Unit);
            if (!read.IsRead)
                problems[field] = read.Problem!;
            return read.IsRead && read.Value != Length.Zero ? read.Value : null;
        }
    }
}

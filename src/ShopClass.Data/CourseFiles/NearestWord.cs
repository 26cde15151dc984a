namespace ShopClass.Data.CourseFiles;

/// <summary>Finds the word somebody most likely meant.</summary>
internal static class NearestWord
{
    /// <summary>The known word fewest letters away, or null when none is near.</summary>
    public static string? To(string typed, IEnumerable<string> known)
    {
        // A long stranger is near nothing, and measuring it would cost time.
        if (typed.Length > 40)
            return null;
        var nearest = known
            .Select(word => (Word: word, Steps: Steps(Plain(typed), Plain(word))))
            .OrderBy(w => w.Steps)
            .FirstOrDefault();
        return nearest.Word is { } found && nearest.Steps <= Math.Max(1, found.Length / 3)
            ? found
            : null;
    }

    private static string Plain(string word) =>
        new([.. word.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant)]);

    /// <summary>Letters to put in, take out or exchange to get from one word to the other (Levenshtein's distance).</summary>
    private static int Steps(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var exchanged = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(exchanged, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[to.Length];
    }
}

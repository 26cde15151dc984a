using System.Globalization;

namespace ShopClass.Bench;

/// <summary>Reads <c>--name value</c> pairs.</summary>
internal sealed class Arguments(IReadOnlyList<string> words)
{
    public int Number(string name, int otherwise) =>
        Words(name) is { } text ? int.Parse(text, CultureInfo.InvariantCulture) : otherwise;

    public (int Low, int High) Range(string name, int low, int high)
    {
        if (Words(name) is not { } text)
            return (low, high);
        int[] ends = [.. text.Split('-').Select(t => int.Parse(t, CultureInfo.InvariantCulture))];
        return (ends[0], ends[^1]);
    }

    public string? Words(string name)
    {
        for (var i = 0; i + 1 < words.Count; i++)
        {
            if (words[i] == $"--{name}")
                return words[i + 1];
        }

        return null;
    }
}

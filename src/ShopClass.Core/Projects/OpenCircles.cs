namespace ShopClass.Core.Projects;

/// <summary>
/// Parts that wait for each other: an open dimension that is taken from a part which itself waits, in the end, for the
/// first. None of them would ever be cut.
/// </summary>
public static class OpenCircles
{
    /// <summary>Problems of one part's open dimensions with the rest of the list; field names as in <see cref="PartChecks"/>.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Part part,
        IReadOnlyList<Part> others
    ) =>
        [
            .. from open in part.Open
            where open.TakenFrom is not null
            let sentence = Problem(part, open.TakenFrom!, others)
            where sentence is not null
            select ($"Open.{open.Dimension}", sentence),
        ];

    private static string? Problem(Part part, string from, IReadOnlyList<Part> others)
    {
        if (from == part.Letter)
            return $"{part.Letter} cannot be taken from itself. Choose another part, or none.";
        if (others.All(o => o.Letter != from))
            return JointChecks.NotThere(from, others);
        return Way(from, part.Letter, others, new(StringComparer.Ordinal)) is { } way
            ? $"{Told([part.Letter, .. way])}: none of them would ever be cut. Take one of them from something else."
            : null;
    }

    /// <summary>The letters from one part to another along what each waits for, both ends included; null when there is no way.</summary>
    private static IReadOnlyList<string>? Way(
        string from,
        string to,
        IReadOnlyList<Part> parts,
        HashSet<string> been
    )
    {
        if (from == to)
            return [to];
        if (!been.Add(from))
            return null;
        var waits = parts
            .Where(p => p.Letter == from)
            .SelectMany(p => p.Open)
            .Select(o => o.TakenFrom)
            .OfType<string>();
        foreach (var next in waits)
        {
            if (Way(next, to, parts, been) is { } rest)
                return [from, .. rest];
        }

        return null;
    }

    private static string Told(IReadOnlyList<string> way) =>
        string.Join(
            ", ",
            way.Zip(way.Skip(1))
                .Select(
                    (step, i) =>
                        i == 0
                            ? $"{step.First} waits for {step.Second}"
                            : $"{step.First} for {step.Second}"
                )
        );
}

using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace ShopClass.Data.CourseFiles;

/// <summary>The problems found in a file so far. Past <see cref="Most"/> there is no use in reading on.</summary>
internal sealed class FileFindings
{
    public const int Most = 50;

    private readonly List<FileProblem> _problems = [];

    public bool IsFull => _problems.Count >= Most;

    public bool Any => _problems.Count > 0;

    public IReadOnlyList<FileProblem> InOrder
    {
        get
        {
            FileProblem[] ordered = [.. _problems.OrderBy(p => p.Line)];
            return IsFull
                ?
                [
                    .. ordered,
                    new(0, $"Only the first {Most} problems are listed. There may be more."),
                ]
                : ordered;
        }
    }

    public void Add(JToken? at, string sentence) => Add(LineOf(at), sentence);

    public void Add(int line, string sentence)
    {
        if (!IsFull)
        {
            _problems.Add(new(line, sentence));
        }
    }

    private static int LineOf(JToken? at) =>
        at is IJsonLineInfo info && info.HasLineInfo() ? info.LineNumber : 0;
}

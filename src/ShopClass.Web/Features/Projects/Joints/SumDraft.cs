using System.Globalization;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Projects.Joints;

/// <summary>A sum of sizes being edited.</summary>
public sealed class SumDraft : KeptDraft<SizeCheck>
{
    public string Part { get; set; } = "";

    public PartDimension Dimension { get; set; } = PartDimension.Length;

    public IList<TermDraft> Terms { get; } = [new()];

    public override string Called =>
        Part.Length == 0 ? "new sum" : $"{Dimension.Words()} of {Part}";

    protected override IEnumerable<(string Field, string Sentence, string Lacks)> Unfinished()
    {
        if (Part.Length == 0)
            yield return (nameof(Part), "Choose a part.", "a part");
        if (Terms.Count == 0)
            yield return ("Terms", "Write what the size must equal.", "what it must equal");
        foreach (var (i, term) in Terms.Index())
        {
            if (term.ReadTimes() is null)
                yield return (
                    $"{i + 1}.Times",
                    "Write a whole number; below zero takes away.",
                    "how many times"
                );
            if (term.Part.Length == 0 && term.Fixed is null)
                yield return ($"{i + 1}.Fixed", "Type the size.", "a size");
        }
    }

    protected override SizeCheck Finished() =>
        new(Part, Dimension, [.. Terms.Select(t => t.ToTerm())]);

    protected override void Show(SizeCheck item)
    {
        (Part, Dimension) = (item.Part, item.Dimension);
        Terms.Clear();
        foreach (var term in item.Terms)
            Terms.Add(TermDraft.From(term));
    }
}

/// <summary>A term of a sum being edited.</summary>
public sealed class TermDraft
{
    public string Key { get; } = Guid.NewGuid().ToString("N");

    public string Times { get; set; } = "1";

    /// <summary>The letter, or empty for a fixed size.</summary>
    public string Part { get; set; } = "";

    public PartDimension Dimension { get; set; } = PartDimension.Length;

    public Length? Fixed { get; set; }

    public string Meaning { get; set; } = "";

    public static TermDraft From(SizeTerm term) =>
        new()
        {
            Times = term.Times.ToString(CultureInfo.InvariantCulture),
            Part = term.Part ?? "",
            Dimension = term.Part is null ? PartDimension.Length : term.Dimension,
            Fixed = term.Part is null ? term.Fixed : null,
            Meaning = term.Meaning,
        };

    public int? ReadTimes() =>
        int.TryParse(
            Times.Trim().Replace('−', '-'),
            NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var times
        )
            ? times
            : null;

    public SizeTerm ToTerm() =>
        Part.Length == 0
            ? new(ReadTimes() ?? 0, null, default, Fixed ?? Length.Zero, Meaning.Trim())
            : new(ReadTimes() ?? 0, Part, Dimension, Length.Zero, Meaning.Trim());
}

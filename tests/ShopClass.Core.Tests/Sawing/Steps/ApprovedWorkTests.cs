using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>
/// Whole works in the words a student reads, as the docs show them. When a change is meant, put the received text,
/// which lies beside the built tests, into the example in docs.
/// </summary>
public class ApprovedWorkTests
{
    [Theory]
    [InlineData("surfaced", Hand.Right)]
    [InlineData("rough-tapered", Hand.Left)]
    [InlineData("too-narrow", Hand.Right)]
    public void The_example_in_the_docs_is_what_the_program_writes(string board, Hand hand)
    {
        var plan = board switch
        {
            "surfaced" => WorkCases.OnSurfacedPine,
            "rough-tapered" => WorkCases.OnRoughBirch,
            _ => WorkCases.OnNarrowPine,
        };
        var received = new WorkText(Precision.Sixteenth).Of(WorkWriter.Write(plan, hand));
        File.WriteAllText(
            Path.Combine(AppContext.BaseDirectory, $"work-{board}.received.txt"),
            received
        );
        Assert.Contains(received, Read($"docs/examples/work-{board}.md"), StringComparison.Ordinal);
    }

    /// <summary>Of the shelf with stopped dados only what differs: from the first joint's gauge to the fit.</summary>
    [Fact]
    public void The_example_of_stopped_dados_is_what_the_program_writes()
    {
        var work = WorkWriter.Write(WorkCases.OnStoppedDados, Hand.Right);
        var text = new WorkText(Precision.Sixteenth).Of(work);
        var first = work.Steps.First(s => s.Title.Contains("joints", StringComparison.Ordinal));
        var after = work.Steps.First(s =>
            s.Title.Contains("together dry", StringComparison.Ordinal)
        );
        var received = text[From(first)..From(after)].TrimEnd();
        File.WriteAllText(
            Path.Combine(AppContext.BaseDirectory, "work-stopped-dados.received.txt"),
            received
        );
        Assert.Contains(
            received,
            Read("docs/examples/work-stopped-dados.md"),
            StringComparison.Ordinal
        );

        int From(Step step) =>
            text.IndexOf($"{step.Number}. {step.Title}", StringComparison.Ordinal);
    }

    private static string Read(string path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ShopClass.sln")))
            folder = folder.Parent;
        return File.ReadAllText(Path.Combine(folder!.FullName, path));
    }
}

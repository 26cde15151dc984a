using System.Text;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using Xunit;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>
/// The words of one whole sequence, read and approved by eye. When they change on purpose, replace the approved file
/// with the received one, which lies beside the built tests, and the example in docs with it.
/// </summary>
public class ApprovedSequenceTests
{
    private const Precision Fine = Precision.Sixteenth;

    [Fact]
    public void The_wall_shelf_passes_its_rehearsal()
    {
        var report = Rehearsal.Replay(WallShelf.Request, WallShelf.Plan, WallShelf.Sequence);
        Assert.Equal([], report.Findings);
        Assert.Equal(report.Steps.Count, WallShelf.Sequence.Cuts.Count + 1);
    }

    [Fact]
    public void The_wall_shelf_is_sawn_in_the_approved_order_and_words()
    {
        var received = Text();
        File.WriteAllText(
            Path.Combine(AppContext.BaseDirectory, "wall-shelf-sequence.received.txt"),
            received
        );
        Assert.Equal(Read("tests/approved/wall-shelf-sequence.txt"), received);
    }

    [Fact]
    public void The_example_in_the_docs_shows_the_approved_text() =>
        Assert.Contains(
            Read("tests/approved/wall-shelf-sequence.txt"),
            Read("docs/examples/wall-shelf-sequence.md"),
            StringComparison.Ordinal
        );

    private static string Text()
    {
        var text = new StringBuilder();
        foreach (var cut in WallShelf.Sequence.Cuts)
            text.Append(CutText(cut)).Append('\n');
        var last = Rehearsal.Replay(WallShelf.Request, WallShelf.Plan, WallShelf.Sequence).Steps[
            ^1
        ];
        text.Append("What lies there in the end:\n");
        foreach (var piece in last.Pieces)
            text.Append(
                $"  {piece.Fate} {piece.Blank?.ToString() ?? ""}".TrimEnd()
                    + $": {Say(piece.Rect.Across)} wide, {Say(piece.Rect.Along)} long\n"
            );
        return text.ToString();
    }

    private static string CutText(Cut cut)
    {
        var from = cut.Kind is CutKind.Rip ? "from the near edge" : "from the start";
        var lines = new List<string?>
        {
            $"{cut.Number}. {Kind(cut.Kind)} at {Say(cut.Position)} {from}, {Say(cut.SawnLength)} to saw",
            $"   {cut.Class} class, {cut.Saw}, {cut.Support}, {cut.Line} line",
            $"   Leaves {cut.Leaves}.",
            $"   {cut.Hold}",
            $"   {cut.Reason}",
            cut.HoldNote is null ? null : $"   Note: {cut.HoldNote}.",
        };
        return string.Concat(lines.OfType<string>().Select(l => l + "\n"));
    }

    private static string Kind(CutKind kind) =>
        kind is CutKind.EndTrim ? "End trim" : kind.ToString();

    private static string Say(Length length) => LengthWriter.WriteWithUnit(length, Fine);

    private static string Read(string path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ShopClass.sln")))
            folder = folder.Parent;
        return File.ReadAllText(Path.Combine(folder!.FullName, path));
    }
}

using Newtonsoft.Json.Linq;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Projects;

namespace ShopClass.Data.CourseFiles;

/// <summary>Reads projects and their parts lists.</summary>
internal static class PartReader
{
    private const int DimensionsOfAPart = 3;

    public static Project? ReadProject(JToken token, CourseRules rules, FileFindings findings)
    {
        if (FileNode.Open(token, "a project", findings, FileFields.Project) is not { } node)
            return null;
        var name = Access.Wording.Tidy(node.Text("name"));
        var notes = Access.Wording.Tidy(node.Text("notes", ""));
        foreach (var (field, sentence) in ProjectStore.ProblemsIn(name, notes))
        {
            node.Problem(FileFieldOf(field), sentence);
        }

        var parts = ReadParts(node, rules, findings);
        return new()
        {
            Name = name,
            Notes = notes,
            Parts = parts,
            Joints = JointReader.ReadJoints(node, parts, rules.Unit),
            SizeChecks = JointReader.ReadSizeChecks(node, parts, rules.Unit),
        };
    }

    private static List<Part> ReadParts(FileNode node, CourseRules rules, FileFindings findings)
    {
        List<Part> parts = [];
        List<JToken> tokens = [];
        foreach (var item in node.Items("parts", PartChecks.MostParts, "parts"))
        {
            if (findings.IsFull)
                break;
            if (ReadPart(item, parts, rules, findings) is not { } part)
                continue;
            parts.Add(part);
            tokens.Add(item);
        }

        // Who waits for whom can only be judged when all of them are there.
        foreach (var (part, token) in parts.Zip(tokens))
        {
            foreach (
                var (_, sentence) in OpenCircles.ProblemsIn(part, [.. parts.Where(p => p != part)])
            )
                findings.Add(token["open"], sentence);
        }

        return parts;
    }

    private static Part? ReadPart(
        JToken token,
        IReadOnlyList<Part> before,
        CourseRules rules,
        FileFindings findings
    )
    {
        if (FileNode.Open(token, "a part", findings, FileFields.Part) is not { } node)
            return null;
        var size = (
            Thickness: node.Length("thickness", rules.Unit),
            Width: node.Length("width", rules.Unit),
            Length: node.Length("length", rules.Unit)
        );
        var opens = node.Items("open", DimensionsOfAPart, "open dimensions")
            .Select(item => ReadOpen(item, rules.Unit, findings))
            .ToList();
        var part = ProjectStore.Tidy(
            new Part
            {
                Letter = node.Text("letter"),
                Name = node.Text("name"),
                Quantity = node.Whole("quantity", stand: 1),
                Finished = new(
                    size.Thickness ?? Length.Zero,
                    size.Width ?? Length.Zero,
                    size.Length ?? Length.Zero
                ),
                Grain =
                    node.Choice("grain", FileWords.Grains, GrainDirection.AlongLength) ?? default,
                ShowFace = node.Flag("showFace"),
                GlueUpAllowed = node.Flag("glueUpAllowed"),
                AcceptsHiddenDefect = node.Flag("acceptsHiddenDefect"),
                ReferenceFace =
                    node.Choice("referenceFace", FileWords.ReferenceFaces, ReferenceFace.Truest)
                    ?? default,
                JointNotes = node.Text("jointNotes", ""),
                Open = [.. opens.OfType<OpenDimension>()],
            }
        );
        // An open dimension that could not be read has had its say already.
        foreach (var (field, sentence) in PartChecks.ProblemsIn(part, before, rules))
        {
            node.Problem(
                field.StartsWith("Open", StringComparison.Ordinal) ? "open" : FileFieldOf(field),
                sentence
            );
        }

        return part;
    }

    private static OpenDimension? ReadOpen(JToken token, UnitSystem unit, FileFindings findings)
    {
        if (FileNode.Open(token, "an open dimension", findings, FileFields.Open) is not { } node)
            return null;
        var dimension = node.Choice("dimension", FileWords.Dimensions);
        var extra = node.Length("extra", unit);
        var until = node.Text("until");
        var from = node.Text("takenFrom", "");
        return dimension is { } d && extra is { } e
            ? new(d, e, until) { TakenFrom = from, Event = ReadEvent(node) }
            : null;
    }

    /// <summary>The event, where one of the project's own was chosen; files from before have only its words.</summary>
    private static OpenEvent? ReadEvent(FileNode open)
    {
        if (
            !open.Has("event")
            || open.Child("event", "an event", FileFields.Event) is not { } node
            || node.Choice("kind", FileWords.Events) is not { } kind
        )
            return null;
        var (part, mate) = (node.Text("part", ""), node.Text("mate", ""));
        var (hasPart, hasMate) = (
            kind is OpenEventKind.JointFitted or OpenEventKind.GluedUp,
            kind is OpenEventKind.JointFitted
        );
        if ((part.Length > 0) != hasPart)
            node.Problem("part", Wrong(hasPart));
        if ((mate.Length > 0) != hasMate)
            node.Problem("mate", Wrong(hasMate));
        return new(kind, part, mate);

        static string Wrong(bool isMissing) =>
            isMissing
                ? "The letter of the part is missing here."
                : "This kind of event is of the whole piece. Leave the letter out.";
    }

    /// <summary>The checks name fields as the code does; in the file they begin small.</summary>
    internal static string FileFieldOf(string field) =>
        field.Length == 0 ? field : char.ToLowerInvariant(field[0]) + field[1..];
}

using Newtonsoft.Json.Linq;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Projects;

namespace ShopClass.Data.CourseFiles;

/// <summary>Reads joints and sizes that must agree, once the parts are known.</summary>
internal static class JointReader
{
    public static IReadOnlyList<Joint> ReadJoints(
        FileNode project,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    )
    {
        List<Joint> joints = [];
        foreach (var item in project.Items("joints", JointChecks.MostJoints, "joints"))
        {
            if (project.Findings.IsFull)
                break;
            if (ReadJoint(item, joints, parts, unit, project.Findings) is { } joint)
                joints.Add(joint);
        }

        return joints;
    }

    public static IReadOnlyList<SizeCheck> ReadSizeChecks(
        FileNode project,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    ) =>
        [
            .. project
                .Items("sizesThatAgree", SizeSum.MostChecks, "sums of sizes")
                .TakeWhile(_ => !project.Findings.IsFull)
                .Select(item => ReadSizeCheck(item, parts, unit, project.Findings))
                .OfType<SizeCheck>(),
        ];

    private static Joint? ReadJoint(
        JToken token,
        IReadOnlyList<Joint> before,
        IReadOnlyList<Part> parts,
        UnitSystem unit,
        FileFindings findings
    )
    {
        if (FileNode.Open(token, "a joint", findings, FileFields.Joint) is not { } node)
            return null;
        if (node.Choice("kind", FileWords.Joints) is not { } kind)
            return null;
        var joint = ProjectStore.Tidy(
            new Joint
            {
                Kind = kind,
                Part = node.Text("part"),
                Mate = node.Text("mate", ""),
                Depth = node.Length("depth", unit, Length.Zero) ?? Length.Zero,
                Width = OrNone(node, "width", unit),
                Across = OrNone(node, "across", unit),
                FromEdge = OrNone(node, "fromEdge", unit),
                Side = node.Choice("side", FileWords.JointSides, JointSide.Reference) ?? default,
                Positions = node.Lengths("at", unit, JointChecks.MostPositions),
                Note = node.Text("note", ""),
            }
        );
        foreach (var (field, sentence) in JointChecks.ProblemsIn(joint, before, parts, unit))
        {
            node.Problem(field is "Positions" ? "at" : PartReader.FileFieldOf(field), sentence);
        }

        return joint;
    }

    private static SizeCheck? ReadSizeCheck(
        JToken token,
        IReadOnlyList<Part> parts,
        UnitSystem unit,
        FileFindings findings
    )
    {
        if (FileNode.Open(token, "a sum of sizes", findings, FileFields.SizeCheck) is not { } node)
            return null;
        var dimension = node.Choice("dimension", FileWords.Dimensions);
        FileNode?[] terms =
        [
            .. node.Items("equals", SizeSum.MostTerms, "terms")
                .Select(t => FileNode.Open(t, "a term", findings, FileFields.SizeTerm)),
        ];
        if (dimension is not { } size || terms.Contains(null))
            return null;
        var check = ProjectStore.Tidy(
            new SizeCheck(node.Text("part"), size, [.. terms.Select(t => ReadTerm(t!, unit))])
        );
        foreach (var (field, sentence) in SizeSum.ProblemsIn(check, parts, unit))
        {
            if (field.Split('.') is [var number, var inTerm])
                terms[
                    int.Parse(number, System.Globalization.CultureInfo.InvariantCulture) - 1
                ]!.Problem(inTerm is "Fixed" ? "size" : PartReader.FileFieldOf(inTerm), sentence);
            else
                node.Problem(field is "Terms" ? "equals" : PartReader.FileFieldOf(field), sentence);
        }

        return check;
    }

    private static SizeTerm ReadTerm(FileNode node, UnitSystem unit)
    {
        var part = node.Text("part", "");
        var isOfPart = part.Length > 0;
        return new(
            node.Has("times") ? node.Whole("times", stand: 1) : 1,
            part,
            isOfPart ? node.Choice("dimension", FileWords.Dimensions) ?? default : default,
            isOfPart && !node.Has("size")
                ? Length.Zero
                : node.Length("size", unit) ?? Length.FromInches(1),
            node.Text("meaning", "")
        );
    }

    private static Length? OrNone(FileNode node, string field, UnitSystem unit) =>
        node.Has(field) ? node.Length(field, unit) : null;
}

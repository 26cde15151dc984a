using Newtonsoft.Json.Linq;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Data.CourseFiles;

/// <summary>Writes joints, sums of sizes and open dimensions.</summary>
internal static class JointWriter
{
    public static JObject Joint(Joint joint, UnitSystem unit)
    {
        var all = new JObject
        {
            ["kind"] = FileWords.Joints.For(joint.Kind),
            ["part"] = joint.Part,
        };
        CourseFileWriter.Add(all, "mate", joint.Mate ?? "");
        if (joint.Depth != Length.Zero)
            all["depth"] = LengthWriter.WriteExactWithUnit(joint.Depth, unit);
        if (joint.Width is { } width)
            all["width"] = LengthWriter.WriteExactWithUnit(width, unit);
        if (joint.Across is { } across)
            all["across"] = LengthWriter.WriteExactWithUnit(across, unit);
        if (joint.FromEdge is { } edge)
            all["fromEdge"] = LengthWriter.WriteExactWithUnit(edge, unit);
        if (joint.Side is not JointSide.Reference)
            all["side"] = FileWords.JointSides.For(joint.Side);
        if (joint.Positions.Count > 0)
            all["at"] = new JArray(
                joint.Positions.Select(p => LengthWriter.WriteExactWithUnit(p, unit))
            );
        CourseFileWriter.Add(all, "note", joint.Note);
        return all;
    }

    public static JObject SizeCheck(SizeCheck check, UnitSystem unit) =>
        new()
        {
            ["part"] = check.Part,
            ["dimension"] = FileWords.Dimensions.For(check.Dimension),
            ["equals"] = new JArray(check.Terms.Select(t => Term(t, unit))),
        };

    public static JObject Open(OpenDimension open, UnitSystem unit)
    {
        var all = new JObject
        {
            ["dimension"] = FileWords.Dimensions.For(open.Dimension),
            ["extra"] = LengthWriter.WriteExactWithUnit(open.Extra, unit),
            ["until"] = open.Until,
        };
        CourseFileWriter.Add(all, "takenFrom", open.TakenFrom ?? "");
        if (open.Event is { } chosen)
        {
            var named = new JObject { ["kind"] = FileWords.Events.For(chosen.Kind) };
            CourseFileWriter.Add(named, "part", chosen.Part);
            CourseFileWriter.Add(named, "mate", chosen.Mate);
            all["event"] = named;
        }

        return all;
    }

    private static JObject Term(SizeTerm term, UnitSystem unit)
    {
        var all = new JObject();
        if (term.Times != 1)
            all["times"] = term.Times;
        if (term.Part is { } part)
        {
            all["part"] = part;
            all["dimension"] = FileWords.Dimensions.For(term.Dimension);
        }
        else
        {
            all["size"] = LengthWriter.WriteExactWithUnit(term.Fixed, unit);
        }

        CourseFileWriter.Add(all, "meaning", term.Meaning);
        return all;
    }
}

using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;
using static ShopClass.Core.Tests.Projects.JointChecksTests;

namespace ShopClass.Core.Tests.Projects;

public class JointSentenceTests
{
    public static TheoryData<string, Joint> Joints =>
        new()
        {
            {
                "B enters A in dados 1/4 in deep and 3/4 in wide, at 2 in and 10 in from the reference end.",
                new()
                {
                    Kind = JointKind.Dado,
                    Part = "A",
                    Mate = "B",
                    Depth = In("1/4"),
                    Width = In("3/4"),
                    Positions = [In("2"), In("10")],
                }
            },
            {
                "A gets notches 1/2 in deep and 4 in wide in both edges, at the reference end.",
                new()
                {
                    Kind = JointKind.Notch,
                    Part = "A",
                    Depth = In("1/2"),
                    Width = In("4"),
                    Side = JointSide.Both,
                }
            },
            {
                "D enters A in a mortise 3/4 in deep, 1 1/4 in wide and 1/2 in across, at 7 in from the reference end, in the middle of the width.",
                new()
                {
                    Kind = JointKind.MortiseAndTenon,
                    Part = "A",
                    Mate = "D",
                    Depth = In("3/4"),
                    Width = In("1 1/4"),
                    Across = In("1/2"),
                    Positions = [In("7")],
                }
            },
            {
                "B enters A in a dado 1/4 in deep and 5 in across, at 2 in from the reference end, from the reference edge on.",
                new()
                {
                    Kind = JointKind.Dado,
                    Part = "A",
                    Mate = "B",
                    Depth = In("1/4"),
                    Across = In("5"),
                    FromEdge = Length.Zero,
                    Positions = [In("2")],
                }
            },
            {
                "B enters A in a dado 1/4 in deep, at 2 in from the reference end, from 1 in off the reference edge to the other edge.",
                new()
                {
                    Kind = JointKind.Dado,
                    Part = "A",
                    Mate = "B",
                    Depth = In("1/4"),
                    FromEdge = In("1"),
                    Positions = [In("2")],
                }
            },
            {
                "B enters A in a peg hole 3/4 in deep, at 2 in from the reference end, 1 1/4 in from the reference edge.",
                new()
                {
                    Kind = JointKind.ThroughPeg,
                    Part = "A",
                    Mate = "B",
                    Depth = In("3/4"),
                    FromEdge = In("1 1/4"),
                    Positions = [In("2")],
                }
            },
            {
                "C is nailed or screwed to A.",
                new()
                {
                    Kind = JointKind.Nailed,
                    Part = "A",
                    Mate = "C",
                }
            },
            {
                "B enters A in dovetail sockets 3/4 in deep, at the end.",
                new()
                {
                    Kind = JointKind.Dovetail,
                    Part = "A",
                    Mate = "B",
                    Depth = In("3/4"),
                }
            },
        };

    [Theory]
    [MemberData(nameof(Joints))]
    public void A_joint_reads_as_a_sentence(string sentence, Joint joint) =>
        Assert.Equal(sentence, JointSentence.Of(joint, UnitSystem.Inch));
}

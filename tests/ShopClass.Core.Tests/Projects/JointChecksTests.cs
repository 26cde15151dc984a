using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;

namespace ShopClass.Core.Tests.Projects;

public class JointChecksTests
{
    private static readonly Part Side = Made("A", "3/4", "6", "14", 2);
    private static readonly Part Shelf = Made("B", "3/4", "6", "20 1/2", 2);
    private static readonly Part Rail = Made("C", "3/4", "2 1/2", "20", 1);
    private static readonly Part[] Parts = [Side, Shelf, Rail];

    private static Joint Dado { get; } =
        new()
        {
            Kind = JointKind.Dado,
            Part = "A",
            Mate = "B",
            Depth = In("1/4"),
            Width = In("3/4"),
            Positions = [In("2"), In("10")],
        };

    private static Joint Mortise { get; } =
        new()
        {
            Kind = JointKind.MortiseAndTenon,
            Part = "A",
            Mate = "C",
            Depth = In("3/4"),
            Width = In("2 1/2"),
            Across = In("1/2"),
            Positions = [In("4")],
        };

    private static Joint Notch { get; } =
        new()
        {
            Kind = JointKind.Notch,
            Part = "A",
            Depth = In("1/2"),
            Width = In("4"),
        };

    // Each pair: the first breaks the check, the second only just does not.
    public static TheoryData<string, string, Joint, Joint> Pairs =>
        new()
        {
            {
                "Part",
                "No part is marked Q. Choose one of A, B, C.",
                Dado with
                {
                    Part = "Q",
                },
                Dado with
                {
                    Part = "A",
                }
            },
            { "Part", "Choose a part: A, B, C.", Dado with { Part = "" }, Dado },
            {
                "Mate",
                "No part is marked Q. Choose one of A, B, C.",
                Dado with
                {
                    Mate = "Q",
                },
                Dado with
                {
                    Mate = "C",
                }
            },
            { "Mate", "Choose the part that enters it.", Dado with { Mate = null }, Notch },
            // Two like parts may be joined to each other, as in a trivet of two crossing pieces.
            {
                "Mate",
                "There is only one C, and it cannot be joined to itself. Choose another part.",
                Lap("C", "C"),
                Lap("A", "A")
            },
            {
                "Depth",
                "Write how deep the dado goes into A, more than zero.",
                Dado with
                {
                    Depth = Length.Zero,
                },
                Dado with
                {
                    Depth = Length.FromTicks(1),
                }
            },
            {
                "Depth",
                "3/4 in deep leaves nothing of A, which is 3/4 in thick there.",
                Dado with
                {
                    Depth = In("3/4"),
                },
                Dado with
                {
                    Depth = In("3/4") - Length.FromTicks(1),
                }
            },
            {
                "Depth",
                "13/16 in deep leaves nothing of A, which is 3/4 in thick there.",
                Mortise with
                {
                    Depth = In("13/16"),
                },
                Mortise
            },
            {
                "Depth",
                "6 in deep leaves nothing of A, which is 6 in wide there.",
                Notch with
                {
                    Depth = In("6"),
                },
                Notch with
                {
                    Depth = In("5 63/64"),
                }
            },
            {
                "Depth",
                "Cut from both sides, 3/8 in deep each, they meet: A is 3/4 in thick.",
                Dado with
                {
                    Depth = In("3/8"),
                    Side = JointSide.Both,
                },
                Dado with
                {
                    Depth = In("3/8") - Length.FromTicks(1),
                    Side = JointSide.Both,
                }
            },
            {
                "Depth",
                "A through peg goes right through: A is 3/4 in thick, and the depth here is 1/2 in.",
                Peg with
                {
                    Depth = In("1/2"),
                },
                Peg
            },
            {
                "Depth",
                "Nothing is cut for this joint. Leave the depth empty.",
                Nailed with
                {
                    Depth = In("1/4"),
                },
                Nailed
            },
            {
                "Width",
                "The dado is 13/16 in wide, but B is only 3/4 in thick: it would be loose.",
                Dado with
                {
                    Width = In("13/16"),
                },
                Dado with
                {
                    Width = null,
                }
            },
            {
                "Width",
                "Write how wide the notch is, since no part enters it.",
                Notch with
                {
                    Width = null,
                },
                Notch with
                {
                    Width = null,
                    Mate = "B",
                }
            },
            {
                "Across",
                "It reaches 6 1/16 in across, but A is only 6 in wide.",
                Dado with
                {
                    Across = In("6 1/16"),
                },
                Dado with
                {
                    Across = In("6"),
                }
            },
            {
                "Across",
                "The tenon is 2 1/2 in by 13/16 in, more than C has: 3/4 in by 2 1/2 in.",
                Mortise with
                {
                    Across = In("13/16"),
                },
                Mortise with
                {
                    Across = In("3/4"),
                }
            },
            {
                "Across",
                "The tenon is 2 9/16 in by 1/2 in, more than C has: 3/4 in by 2 1/2 in.",
                Mortise with
                {
                    Width = In("2 9/16"),
                },
                Mortise
            },
            {
                "Across",
                "The mortise reaches 6 in across, but A is only 6 in wide: no wood is left beside it.",
                Mortise with
                {
                    Mate = "B",
                    Width = In("3/4"),
                    Across = In("6"),
                },
                Mortise with
                {
                    Mate = "B",
                    Width = In("3/4"),
                    Across = In("5 15/16"),
                }
            },
            {
                "FromEdge",
                "-1/16 in is before the reference edge of A.",
                Dado with
                {
                    FromEdge = Length.Zero - In("1/16"),
                },
                Dado with
                {
                    FromEdge = Length.Zero,
                }
            },
            {
                "FromEdge",
                "6 in from the reference edge is off A, which is 6 in wide.",
                Dado with
                {
                    FromEdge = In("6"),
                },
                Dado with
                {
                    FromEdge = In("6") - Length.FromTicks(1),
                }
            },
            {
                "FromEdge",
                "The dado would reach from 1 1/16 in to 6 1/16 in across, but A is only 6 in wide.",
                Dado with
                {
                    Across = In("5"),
                    FromEdge = In("1 1/16"),
                },
                Dado with
                {
                    Across = In("5"),
                    FromEdge = In("1"),
                }
            },
            {
                "FromEdge",
                "The mortise would break out at the edge of A, which is 6 in wide. Leave wood on both sides of it.",
                Mortise with
                {
                    FromEdge = In("5 1/2"),
                },
                Mortise with
                {
                    FromEdge = In("5 1/2") - Length.FromTicks(1),
                }
            },
            {
                "FromEdge",
                "The peg hole would break out at the edge of A, which is 6 in wide. Leave wood on both sides of it.",
                Peg with
                {
                    FromEdge = Length.Zero,
                },
                Peg with
                {
                    FromEdge = Length.FromTicks(1),
                }
            },
            {
                "FromEdge",
                "A notch begins at its edge. Choose the edge, and leave the place across empty.",
                Notch with
                {
                    FromEdge = In("1"),
                },
                Notch
            },
            {
                "FromEdge",
                "This joint has no place across the part. Leave it empty.",
                Nailed with
                {
                    FromEdge = In("1"),
                },
                Nailed
            },
            {
                "Positions",
                "Write where it lies, from the reference end of A to its near side.",
                Dado with
                {
                    Positions = [],
                },
                Dado with
                {
                    Positions = [Length.Zero],
                }
            },
            {
                "Positions",
                "-1/16 in is before the reference end of A.",
                Dado with
                {
                    Positions = [In("2"), Length.Zero - In("1/16")],
                },
                Dado with
                {
                    Positions = [In("2"), Length.Zero],
                }
            },
            {
                "Positions",
                "The dado at 13 5/16 in would end at 14 1/16 in, but A is only 14 in long.",
                Dado with
                {
                    Positions = [In("2"), In("13 5/16")],
                },
                Dado with
                {
                    Positions = [In("2"), In("13 1/4")],
                }
            },
            {
                "Positions",
                "The dados at 2 in and 2 11/16 in overlap: each is 3/4 in wide.",
                Dado with
                {
                    Positions = [In("2 11/16"), In("2")],
                },
                Dado with
                {
                    Positions = [In("2 3/4"), In("2")],
                }
            },
            {
                "Positions",
                "This joint lies at the end of the part. Leave the places empty.",
                Nailed with
                {
                    Positions = [In("2")],
                },
                Nailed
            },
        };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_wrong_joint_is_named_at_its_field_and_one_only_just_right_is_not(
        string field,
        string sentence,
        Joint wrong,
        Joint right
    )
    {
        Assert.Equal([(field, sentence)], Problems(wrong));
        Assert.Empty(Problems(right));
    }

    [Fact]
    public void Two_joints_at_the_same_place_of_one_face_overlap_and_side_by_side_do_not()
    {
        Assert.Equal(
            [
                (
                    "Positions",
                    "The mortise at 4 in and the dado at 6 7/16 in of A overlap. Move one of them."
                ),
            ],
            Problems(Mortise, Dado with { Positions = [In("6 7/16")] })
        );
        Assert.Empty(Problems(Mortise, Dado with { Positions = [In("6 1/2")] }));
        Assert.Empty(
            Problems(Mortise, Dado with { Part = "C", Mate = "A", Positions = [In("4")] })
        );
    }

    [Fact]
    public void Dados_opposite_each_other_may_not_meet_in_the_middle_of_the_wood()
    {
        var opposite = Dado with { Side = JointSide.Opposite, Depth = In("1/2") };

        Assert.Equal(
            [
                (
                    "Positions",
                    "The dado at 2 in and the dado at 2 in lie opposite each other and meet: 1/4 in and 1/2 in of 3/4 in."
                ),
            ],
            Problems(Dado, opposite)
        );
        Assert.Empty(Problems(Dado, opposite with { Depth = In("1/2") - Length.FromTicks(1) }));
    }

    [Fact]
    public void Joints_at_one_place_along_are_told_apart_by_their_places_across()
    {
        var first = Mortise with { FromEdge = In("1") };
        var touching = Mortise with { FromEdge = In("1 1/2") };

        Assert.Empty(Problems(first, touching));
        Assert.Equal(
            [
                (
                    "Positions",
                    "The mortise at 4 in and the mortise at 4 in of A overlap. Move one of them."
                ),
            ],
            Problems(first, touching with { FromEdge = In("1 1/2") - Length.FromTicks(1) })
        );
        // Opposite each other they meet only where they lie over one another.
        var deep = Dado with
        {
            Depth = In("1/2"),
            Across = In("3"),
            FromEdge = Length.Zero,
        };
        var opposite = deep with { Side = JointSide.Opposite, FromEdge = In("3") };
        Assert.Empty(Problems(deep, opposite));
        Assert.Contains(
            "lie opposite each other and meet",
            Assert.Single(Problems(deep, opposite with { FromEdge = In("2 63/64") })).Sentence
        );
    }

    [Fact]
    public void A_notch_in_an_edge_and_a_dado_in_a_face_may_cross() =>
        Assert.Empty(Problems(Notch with { Side = JointSide.Both }, Dado));

    [Fact]
    public void A_project_holds_sixty_joints()
    {
        Joint[] others = [.. Enumerable.Repeat(Nailed, 60)];

        Assert.Equal(
            [("", "A project holds at most 60 joints. This would be number 61.")],
            Problems(Nailed, others)
        );
        Assert.Empty(Problems(Nailed, others[..59]));
    }

    private static Joint Peg { get; } =
        new()
        {
            Kind = JointKind.ThroughPeg,
            Part = "A",
            Mate = "C",
            Depth = In("3/4"),
            Width = In("3/4"),
            Across = In("3/4"),
            Positions = [In("4")],
        };

    private static Joint Nailed { get; } =
        new()
        {
            Kind = JointKind.Nailed,
            Part = "A",
            Mate = "C",
        };

    private static Joint Lap(string part, string mate) =>
        new()
        {
            Kind = JointKind.HalfLap,
            Part = part,
            Mate = mate,
            Depth = In("3/8"),
            Width = In("2"),
            Positions = [In("5")],
        };

    private static IReadOnlyList<(string Field, string Sentence)> Problems(
        Joint joint,
        params Joint[] others
    ) => JointChecks.ProblemsIn(joint, others, Parts, UnitSystem.Inch);

    internal static Part Made(
        string letter,
        string thickness,
        string width,
        string length,
        int quantity
    ) =>
        new()
        {
            Letter = letter,
            Name = "part",
            Finished = new(In(thickness), In(width), In(length)),
            Quantity = quantity,
        };

    internal static Length In(string text) => LengthReader.Read(text, UnitSystem.Inch).Value;
}

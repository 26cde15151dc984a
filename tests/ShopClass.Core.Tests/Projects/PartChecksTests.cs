using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;

namespace ShopClass.Core.Tests.Projects;

public class PartChecksTests
{
    private static readonly CourseRules Rules = CourseRules.DefaultsFor(UnitSystem.Inch);

    private static Part Side { get; } =
        new()
        {
            Letter = "A",
            Name = "side",
            Finished = new(In("3/4"), In("6"), In("14")),
            Quantity = 2,
            JointNotes = "Dado for the shelf",
            Open = [new(PartDimension.Width, In("1/4"), "the shelf dry-fits")],
        };

    private static readonly Part[] Others = [Side with { Letter = "B", Name = "shelf" }];

    [Fact]
    public void A_usual_part_is_right() => Assert.Empty(Problems(Side));

    // Grain runs along the length: a back 14 wide and 6 long is an odd part, but a right one.
    [Fact]
    public void A_part_may_be_shorter_than_it_is_wide() =>
        Assert.Empty(Problems(Side with { Finished = new(In("3/4"), In("14"), In("6")) }));

    // Each pair: the first breaks the check, the second only just does not.
    public static TheoryData<string, string, Part, Part> Pairs =>
        new()
        {
            {
                "Letter",
                "Mark the part with one or two capital letters, A to Z.",
                Side with
                {
                    Letter = "",
                },
                Side with
                {
                    Letter = "Z",
                }
            },
            {
                "Letter",
                "Mark the part with one or two capital letters, A to Z.",
                Side with
                {
                    Letter = "a",
                },
                Side with
                {
                    Letter = "AA",
                }
            },
            {
                "Letter",
                "Mark the part with one or two capital letters, A to Z.",
                Side with
                {
                    Letter = "ABC",
                },
                Side with
                {
                    Letter = "AB",
                }
            },
            {
                "Letter",
                "Mark the part with one or two capital letters, A to Z.",
                Side with
                {
                    Letter = "Ä",
                },
                Side with
                {
                    Letter = "A",
                }
            },
            {
                "Letter",
                "B already marks “shelf”. Choose another letter.",
                Side with
                {
                    Letter = "B",
                },
                Side with
                {
                    Letter = "BB",
                }
            },
            {
                "Name",
                "A name is missing. Write a word or two.",
                Side with
                {
                    Name = "",
                },
                Side with
                {
                    Name = "s",
                }
            },
            {
                "Name",
                "The name has 61 characters. Use at most 60.",
                Side with
                {
                    Name = new string('x', 61),
                },
                Side with
                {
                    Name = new string('x', 60),
                }
            },
            {
                "Thickness",
                "The thickness is 0 in. Write the size, more than zero.",
                Sized("0", "6", "14"),
                Sized("1/32", "6", "14")
            },
            {
                "Thickness",
                "The thickness is 4 1/16 in. The most taken here is 4 in; check the number and its unit.",
                Sized("4 1/16", "6", "14"),
                Sized("4", "6", "14")
            },
            {
                "Width",
                "The width is 0.1 mm, too small to saw. The least is 1/32 in.",
                Sized("3/4", "0.1 mm", "14"),
                Sized("3/4", "1/32", "14")
            },
            {
                "Width",
                "The width is 48 1/64 in. The most taken here is 48 in; check the number and its unit.",
                Sized("3/4", "48 1/64", "14"),
                Sized("3/4", "48", "14")
            },
            {
                "Length",
                "The length is -1 in. Write the size, more than zero.",
                Side with
                {
                    Finished = Side.Finished with { Length = -In("1") },
                },
                Sized("3/4", "6", "1")
            },
            {
                "Length",
                "The length is 240 1/64 in. The most taken here is 240 in; check the number and its unit.",
                Sized("3/4", "6", "240 1/64"),
                Sized("3/4", "6", "240")
            },
            {
                "Quantity",
                "The quantity is 0. Make at least 1 and at most 50 of a part.",
                Side with
                {
                    Quantity = 0,
                },
                Side with
                {
                    Quantity = 1,
                }
            },
            {
                "Quantity",
                "The quantity is 51. Make at least 1 and at most 50 of a part.",
                Side with
                {
                    Quantity = 51,
                },
                Side with
                {
                    Quantity = 50,
                }
            },
            {
                "JointNotes",
                "The notes have 501 characters. Use at most 500.",
                Side with
                {
                    JointNotes = new string('x', 501),
                },
                Side with
                {
                    JointNotes = new string('x', 500),
                }
            },
            {
                "JointNotes",
                "The notes have characters that cannot be printed. Type them again.",
                Side with
                {
                    JointNotes = "dado\0",
                },
                Side with
                {
                    JointNotes = "dado\nat 4 in",
                }
            },
            {
                "Open.Width",
                "The width is left open by 0 in. Write how much over its finished size it stays, more than zero.",
                Open(PartDimension.Width, "0", "the shelf dry-fits"),
                Open(PartDimension.Width, "1/64", "the shelf dry-fits")
            },
            {
                "Open.Length",
                "The length is left open by 12 1/16 in. The most is 12 in.",
                Open(PartDimension.Length, "12 1/16", "the shelf dry-fits"),
                Open(PartDimension.Length, "12", "the shelf dry-fits")
            },
            {
                "Open.Thickness",
                "The thickness is left open by 1 1/16 in. The most is 1 in.",
                Open(PartDimension.Thickness, "1 1/16", "the joint is cut"),
                Open(PartDimension.Thickness, "1", "the joint is cut")
            },
            {
                "Open.Width",
                "Say until when the width stays open, such as “the ends dry-fit”.",
                Open(PartDimension.Width, "1/4", " "),
                Open(PartDimension.Width, "1/4", "fitted")
            },
            {
                "Open.Width",
                "Say until when the width stays open on one line of at most 120 characters.",
                Open(PartDimension.Width, "1/4", new string('x', 121)),
                Open(PartDimension.Width, "1/4", new string('x', 120))
            },
            {
                "Open.Width",
                "The width is left open twice. Keep one of the two.",
                Side with
                {
                    Open = [Side.Open[0], Side.Open[0]],
                },
                Side with
                {
                    Open = [Side.Open[0], Side.Open[0] with { Dimension = PartDimension.Length }],
                }
            },
        };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_wrong_part_is_named_at_its_field_and_one_only_just_right_is_not(
        string field,
        string sentence,
        Part wrong,
        Part right
    )
    {
        Assert.Equal([(field, sentence)], Problems(wrong));
        Assert.Empty(Problems(right));
    }

    [Fact]
    public void A_parts_list_holds_sixty_parts()
    {
        var others = Enumerable
            .Range(0, 60)
            .Select(i => Side with { Letter = $"{(char)('B' + i / 26)}{(char)('A' + i % 26)}" })
            .ToList();
        Assert.Equal(
            [("Letter", "A parts list holds at most 60 parts. This would be number 61.")],
            PartChecks.ProblemsIn(Side, others, Rules)
        );
        Assert.Empty(PartChecks.ProblemsIn(Side, others[..59], Rules));
    }

    [Fact]
    public void Every_problem_is_told_at_once() =>
        Assert.Equal(
            ["Letter", "Name", "Thickness", "Width", "Length", "Quantity"],
            Problems(Side with { Letter = "?", Name = "", Finished = default, Quantity = -3 })
                .Select(p => p.Field)
        );

    private static IReadOnlyList<(string Field, string Sentence)> Problems(Part part) =>
        PartChecks.ProblemsIn(part, Others, Rules);

    private static Part Sized(string thickness, string width, string length) =>
        Side with
        {
            Finished = new(In(thickness), In(width), In(length)),
        };

    private static Part Open(PartDimension dimension, string extra, string until) =>
        Side with
        {
            Open = [new(dimension, In(extra), until)],
        };

    private static Length In(string text) => LengthReader.Read(text, UnitSystem.Inch).Value;
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Lumber;

public class BoardChecksTests
{
    private static readonly CourseRules InchRules = CourseRules.DefaultsFor(UnitSystem.Inch);
    private static readonly CourseRules MetricRules = CourseRules.DefaultsFor(UnitSystem.Metric);

    private static Board Pine { get; } =
        new()
        {
            Id = "1",
            Name = "Board 1",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = In("3/4"),
            WidthAtStart = In("9 1/4"),
            WidthAtMiddle = In("9 3/16"),
            WidthAtEnd = In("9 1/4"),
            Length = In("72"),
            TrimStart = In("1"),
            TrimEnd = In("1"),
            Defects = [Knot("10", "12", "3", "5")],
        };

    [Fact]
    public void A_measured_board_is_right() => Assert.Empty(Problems(Pine));

    // Each pair: the first breaks the check, the second only just does not.
    public static TheoryData<string, string, Board, Board> Pairs =>
        new()
        {
            {
                "Name",
                "A name is missing. Write a word or two.",
                Pine with
                {
                    Name = " ",
                },
                Pine with
                {
                    Name = "A",
                }
            },
            {
                "Name",
                "The name has 61 characters. Use at most 60.",
                Pine with
                {
                    Name = new string('x', 61),
                },
                Pine with
                {
                    Name = new string('x', 60),
                }
            },
            {
                "Name",
                "The name has characters that cannot be printed. Type it again on one line.",
                Pine with
                {
                    Name = "two\nlines",
                },
                Pine with
                {
                    Name = "the “cherry” 🪵",
                }
            },
            {
                "Name",
                "The name has characters that cannot be printed. Type it again on one line.",
                Pine with
                {
                    Name = "half \ud83e",
                },
                Pine with
                {
                    Name = "\ud83e\udeb5",
                }
            },
            {
                "Species",
                "Choose a species from the list.",
                Pine with
                {
                    SpeciesId = "plastic",
                },
                Pine with
                {
                    SpeciesId = "teak",
                }
            },
            {
                "Surfacing",
                "Choose how the board was surfaced from the list.",
                Pine with
                {
                    Surfacing = (Surfacing)9,
                },
                Pine with
                {
                    Surfacing = Surfacing.Rough,
                }
            },
            {
                "Thickness",
                "The thickness is 0 in. Write the size, more than zero.",
                Pine with
                {
                    Thickness = Length.Zero,
                },
                Pine with
                {
                    Thickness = In("1/32"),
                }
            },
            {
                "Thickness",
                "The thickness is -1 in. Write the size, more than zero.",
                Pine with
                {
                    Thickness = -In("1"),
                },
                Pine with
                {
                    Thickness = In("1"),
                }
            },
            {
                "Thickness",
                "The thickness is 1/64 in, too small to saw. The least is 1/32 in.",
                Pine with
                {
                    Thickness = In("1/64"),
                },
                Pine with
                {
                    Thickness = In("1/32"),
                }
            },
            {
                "Thickness",
                "The thickness is 4 1/64 in. The most taken here is 4 in; check the number and its unit.",
                Pine with
                {
                    Thickness = In("4 1/64"),
                },
                Pine with
                {
                    Thickness = In("4"),
                }
            },
            {
                "WidthAtStart",
                "The width at the start is 0 in. Write the size, more than zero.",
                Pine with
                {
                    WidthAtStart = Length.Zero,
                },
                Pine with
                {
                    WidthAtStart = In("5"),
                }
            },
            {
                "WidthAtMiddle",
                "The width in the middle is 48 1/16 in. The most taken here is 48 in; check the number and its unit.",
                Pine with
                {
                    WidthAtMiddle = In("48 1/16"),
                },
                Pine with
                {
                    WidthAtMiddle = In("48"),
                }
            },
            {
                "WidthAtEnd",
                "The width at the far end is 1300 mm. The most taken here is 48 in; check the number and its unit.",
                Pine with
                {
                    WidthAtEnd = In("1300 mm"),
                },
                Pine with
                {
                    WidthAtEnd = In("1200 mm"),
                }
            },
            {
                "Length",
                "The length is 63360 in. The most taken here is 240 in; check the number and its unit.",
                Pine with
                {
                    Length = Length.FromInches(63_360),
                }, // a mile
                Pine with
                {
                    Length = In("240"),
                }
            },
            {
                "TrimStart",
                "The trim is -1/2 in. Write zero to leave the end as it is, or how much to saw off.",
                Pine with
                {
                    TrimStart = -In("1/2"),
                },
                Pine with
                {
                    TrimStart = Length.Zero,
                }
            },
            {
                "TrimEnd",
                "A trim of 3/64 in is less than the saw turns to dust, 1/16 in. Write zero to leave the end as it is, or at least that much.",
                Pine with
                {
                    TrimEnd = In("3/64"),
                },
                Pine with
                {
                    TrimEnd = In("1/16"),
                }
            },
            {
                "TrimEnd",
                "The trims take 72 in, and the board is 72 in long. Nothing would be left; trim less.",
                Pine with
                {
                    TrimEnd = In("71"),
                },
                Pine with
                {
                    TrimEnd = In("70 63/64"),
                }
            },
            {
                "Price",
                "The price is less than zero. Leave it empty or write what it cost.",
                Pine with
                {
                    Price = new(-1, "USD"),
                },
                Pine with
                {
                    Price = new(0, "USD"),
                }
            },
            {
                "Price",
                "The currency is missing. Write its three letters, such as USD.",
                Pine with
                {
                    Price = new(100, "$"),
                },
                Pine with
                {
                    Price = new(100, "EUR"),
                }
            },
            {
                "Defects[30]",
                "31 defects are marked. Mark at most 30; put neighbours into one.",
                Pine with
                {
                    Defects = Knots(31),
                },
                Pine with
                {
                    Defects = Knots(30),
                }
            },
            {
                "Defects[0]",
                "Choose what the defect is and where it shows from the lists.",
                With(Knot("1", "2", "1", "2") with { Kind = (DefectKind)99 }),
                With(Knot("1", "2", "1", "2") with { Kind = DefectKind.Other })
            },
            {
                "Defects[0].From",
                "-1 in is off the board. Measure from the start, zero or more.",
                With(Knot("-1", "2", "1", "2")),
                With(Knot("0", "2", "1", "2"))
            },
            {
                "Defects[0].To",
                "72 1/16 in from the start is off the board, which is 72 in long.",
                With(Knot("70", "72 1/16", "1", "2")),
                With(Knot("70", "72", "1", "2"))
            },
            {
                "Defects[0].To",
                "The defect ends at 10 in and begins at 10 in. The end must be the larger.",
                With(Knot("10", "10", "1", "2")),
                With(Knot("10", "10 1/64", "1", "2"))
            },
            {
                "Defects[0].Near",
                "-1/4 in is off the board. Measure from the near edge, zero or more.",
                With(Knot("10", "12", "-1/4", "2")),
                With(Knot("10", "12", "0", "2"))
            },
            {
                "Defects[0].Far",
                "9 1/2 in from the near edge is off the board, which is 9 1/4 in wide.",
                With(Knot("10", "12", "8", "9 1/2")),
                With(Knot("10", "12", "8", "9 1/4"))
            },
            {
                "Defects[0].Far",
                "The defect ends at 2 in and begins at 3 in. The end must be the larger.",
                With(Knot("10", "12", "3", "2")),
                With(Knot("10", "12", "2", "3"))
            },
        };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_wrong_board_is_named_at_its_field_and_one_only_just_right_is_not(
        string field,
        string sentence,
        Board wrong,
        Board right
    )
    {
        Assert.Equal([(field, sentence)], Problems(wrong));
        Assert.Empty(Problems(right));
    }

    [Fact]
    public void Sentences_speak_the_unit_of_the_course() =>
        Assert.Equal(
            [
                (
                    "Thickness",
                    "The thickness is 250 mm. The most taken here is 101 mm; check the number and its unit."
                ),
            ],
            BoardChecks.ProblemsIn(
                Pine with
                {
                    Thickness = Length.FromMillimetres(250),
                },
                MetricRules
            )
        );

    [Fact]
    public void Absurd_figures_do_not_overflow()
    {
        var most = Length.FromTicks(long.MaxValue);
        var problems = Problems(Pine with { Length = most, TrimStart = most, TrimEnd = most });
        Assert.Equal(["Length", "TrimStart"], problems.Select(p => p.Field));

        var least = Length.FromTicks(long.MinValue);
        problems = Problems(Pine with { Thickness = least, TrimStart = least, TrimEnd = most });
        Assert.Equal(["Thickness", "TrimStart"], problems.Select(p => p.Field));
    }

    // PS 20-20 Table 3: nominal 1x10 is dressed to 3/4 x 9 1/4 in.
    [Fact]
    public void A_board_typed_as_1_by_10_gets_a_question() =>
        Assert.Equal(
            "1 × 10 is a seller's name for a planed board of about 3/4 × 9 1/4 in. Did you measure it?",
            BoardChecks.NominalQuestion(Typed("1", "10"), InchRules)
        );

    [Fact]
    public void The_question_is_asked_in_the_unit_of_the_course() =>
        Assert.Equal(
            "2 × 4 is a seller's name for a planed board of about 38 × 89 mm. Did you measure it?",
            BoardChecks.NominalQuestion(Typed("2", "4"), MetricRules)
        );

    [Theory]
    [InlineData("3/4", "9 1/4")]
    [InlineData("1", "9 63/64")]
    [InlineData("25 mm", "250 mm")]
    public void A_measured_size_gets_no_question(string thickness, string width) =>
        Assert.Null(BoardChecks.NominalQuestion(Typed(thickness, width), InchRules));

    [Fact]
    public void Three_different_widths_were_surely_measured() =>
        Assert.Null(
            BoardChecks.NominalQuestion(
                Typed("1", "10") with
                {
                    WidthAtEnd = In("10 1/16"),
                },
                InchRules
            )
        );

    private static IReadOnlyList<(string Field, string Sentence)> Problems(Board board) =>
        BoardChecks.ProblemsIn(board, InchRules);

    private static Board Typed(string thickness, string width) =>
        Pine with
        {
            Thickness = In(thickness),
            WidthAtStart = In(width),
            WidthAtMiddle = In(width),
            WidthAtEnd = In(width),
        };

    private static Board With(Defect defect) => Pine with { Defects = [defect] };

    private static Defect[] Knots(int count) =>
        [.. Enumerable.Repeat(Knot("10", "11", "1", "2"), count)];

    private static Defect Knot(string from, string to, string near, string far) =>
        new(DefectKind.Knot, new(In(from), In(to), In(near), In(far)));

    private static Length In(string text) =>
        text.StartsWith('-') ? -In(text[1..])
        : LengthReader.Read(text, UnitSystem.Inch) is { IsRead: true } read ? read.Value
        : throw new ArgumentException(text, nameof(text));
}

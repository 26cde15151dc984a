using System.Diagnostics;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Web.Features.Projects;
using Xunit;

namespace ShopClass.Web.Tests.Projects;

public sealed class ProjectPasteTests
{
    private static readonly CourseRules Inches = CourseRules.DefaultsFor(UnitSystem.Inch);
    private static readonly CourseRules Millimetres = CourseRules.DefaultsFor(UnitSystem.Metric);

    private static readonly Part Side = new()
    {
        Letter = "A",
        Name = "side",
        Finished = new(
            Length.FromInches(0, 3, 4),
            Length.FromInches(6),
            Length.FromInches(14, 1, 2)
        ),
        Quantity = 2,
        JointNotes = "two dados",
    };

    [Theory]
    [InlineData("A\tside\t2\t3/4\t6\t14 1/2\ttwo dados")]
    [InlineData("A\tside\t2\t3/4\t6\t14 1/2\ttwo dados\r\n\r\n")]
    [InlineData("A;side;2;3/4;6;14 1/2;two dados")]
    [InlineData("A,side,2,3/4,6,14.5,two dados")]
    [InlineData(" a , side , 2 , 0.75 , 6\" , 14-1/2 , two dados ")]
    [InlineData("\"A\",\"side\",\"2\",\"3/4\"\"\",\"6\",\"14 1/2\",\"two dados\"")]
    [InlineData("A\tside\t2\t3/4\"\t\"6\"\"\"\t14 1/2\"\ttwo dados")]
    [InlineData("Letter\tName\tQty\tT\tW\tL\tNotes\nA\tside\t2\t3/4\t6\t14 1/2\ttwo dados")]
    [InlineData(
        "LENGTH,width (in),Thickness,Joints,Part,No. off,Mark\n14.5,6,.75,two dados,side,2,A"
    )]
    [InlineData(
        "Part;Finished length (cm);Finished width (mm);Thick. (in);Quantity;Remarks\nside;36.83;152.4;3/4;2;two dados"
    )]
    public void Reads_a_row_however_it_was_copied(string pasted)
    {
        var reading = ProjectPaste.Read(pasted, [], Inches);

        Assert.Null(reading.Refusal);
        Assert.Empty(reading.Rows.SelectMany(r => r.Problems));
        Assert.True(reading.IsRight);
        var part = Assert.Single(reading.Parts);
        Assert.Equal(Side with { Open = part.Open }, part);
    }

    [Fact]
    public void A_heading_in_millimetres_is_read_as_millimetres_in_an_inch_course()
    {
        var reading = ProjectPaste.Read("name,t (mm),w (mm),l (mm)\nshelf,20,140,512", [], Inches);

        Assert.Equal(
            new FinishedSize(
                Length.FromMillimetres(20),
                Length.FromMillimetres(140),
                Length.FromMillimetres(512)
            ),
            Assert.Single(reading.Parts).Finished
        );
    }

    [Fact]
    public void Marks_that_are_missing_are_given_and_none_twice()
    {
        var reading = ProjectPaste.Read(
            "part,t,w,l,mark\nrail,20,65,500,\npeg,20,20,100,B\ncleat,20,25,180,",
            [Side],
            Millimetres
        );

        Assert.Equal(["C", "B", "D"], reading.Parts.Select(p => p.Letter));
        Assert.All(reading.Parts, part => Assert.Equal(1, part.Quantity));
    }

    [Fact]
    public void A_quoted_cell_may_hold_separators_and_lines()
    {
        var records = PasteSplit.Records("A,\"side, \"\"left\"\"\nor right\",2\nB,shelf,1");

        Assert.Equal([1, 3], records.Select(r => r.Line));
        Assert.Equal(["A", "side, \"left\"\nor right", "2"], records[0].Cells);
    }

    [Fact]
    public void A_quotation_mark_without_a_partner_swallows_nothing()
    {
        var records = PasteSplit.Records("\"A,side,2\nB,shelf,1");

        Assert.Equal(2, records.Count);
        Assert.Equal("\"A", records[0].Cells[0]);
    }

    [Fact]
    public void Each_wrong_row_says_what_is_wrong_and_the_right_ones_stay_right()
    {
        var reading = ProjectPaste.Read(
            "A\tside\t2\t3/4\t6\t14\nB\tshelf\tmany\t3/4\twide\t20\nC\trail\t1\t3/4\t2 1/2\t20\nC\tpeg\t4\t0\t3/4\t4",
            [],
            Inches
        );

        Assert.False(reading.IsRight);
        Assert.Equal([0, 2, 0, 2], reading.Rows.Select(r => r.Problems.Count));
        Assert.Equal(["Width", "Quantity"], reading.Rows[1].Problems.Select(p => p.Field));
        Assert.Equal(["Letter", "Thickness"], reading.Rows[3].Problems.Select(p => p.Field));
        Assert.Equal("wide", reading.Rows[1].Cells[PasteField.Width]);
    }

    [Fact]
    public void A_letter_that_is_in_the_list_already_is_named()
    {
        var reading = ProjectPaste.Read("A\tend\t2\t3/4\t7\t9", [Side], Inches);

        Assert.Equal("Letter", Assert.Single(Assert.Single(reading.Rows).Problems).Field);
    }

    [Fact]
    public void Five_thousand_rows_are_refused_at_once_with_a_sentence()
    {
        var pasted = string.Join(
            "\r\n",
            Enumerable.Range(1, 5000).Select(i => $"\tpart {i}\t1\t3/4\t6\t14")
        );
        var watch = Stopwatch.StartNew();

        var reading = ProjectPaste.Read(pasted, [], Inches);

        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1), $"took {watch.Elapsed}");
        Assert.Contains("5,000 rows", reading.Refusal, StringComparison.Ordinal);
        Assert.Empty(reading.Rows);
        Assert.False(reading.IsRight);
    }

    [Theory]
    [InlineData(PartChecks.MostParts, null)]
    [InlineData(
        PartChecks.MostParts + 1,
        "That is 61 rows. A parts list can have 60; nothing was read."
    )]
    public void As_many_rows_as_a_parts_list_holds_and_no_more(int rows, string? refusal)
    {
        var pasted = string.Join(
            '\n',
            Enumerable.Range(1, rows).Select(i => $"\tpart {i}\t1\t3/4\t6\t14")
        );

        var reading = ProjectPaste.Read(pasted, [], Inches);

        Assert.Equal(refusal, reading.Refusal);
        Assert.Equal(refusal is null, reading.IsRight);
    }

    [Theory]
    [InlineData("", "Nothing was pasted yet.")]
    [InlineData(" \n\t\n ", "Nothing was pasted yet.")]
    [InlineData("mark,part,t,w,l", "Only the headings were pasted; the rows are missing.")]
    [InlineData("mark,part,t,l\nA,side,3/4,14", "No column is headed “width”.")]
    public void What_is_no_list_gets_a_sentence(string pasted, string sentence)
    {
        var reading = ProjectPaste.Read(pasted, [], Inches);

        Assert.StartsWith(sentence, reading.Refusal, StringComparison.Ordinal);
        Assert.False(reading.IsRight);
    }

    [Fact]
    public void A_text_far_too_long_is_not_looked_at()
    {
        var reading = ProjectPaste.Read(new('"', ProjectPaste.MostCharacters + 1), [], Inches);

        Assert.Contains("400,001 characters", reading.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_it_does_not_know_are_named()
    {
        var reading = ProjectPaste.Read("part,colour,t,w,l\nside,red,3/4,6,14", [], Inches);

        Assert.Equal(["colour"], reading.NotRead);
        Assert.True(reading.IsRight);
    }
}

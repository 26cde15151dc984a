using System.Globalization;
using System.Text.RegularExpressions;
using Newtonsoft.Json.Linq;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Students;

namespace ShopClass.Data.CourseFiles;

/// <summary>Reads students and the boards they brought.</summary>
internal static partial class BoardReader
{
    public static StudentDraft? ReadStudent(
        JToken token,
        IReadOnlyList<Project> projects,
        CourseRules rules,
        FileFindings findings
    )
    {
        if (FileNode.Open(token, "a student", findings, FileFields.Student) is not { } node)
            return null;
        var card = StudentStore.Tidy(
            new(node.Text("name"), node.Text("alias", ""), node.Flag("leftHanded"))
        );
        foreach (var (field, sentence) in StudentStore.ProblemsIn(card))
        {
            node.Problem(PartReader.FileFieldOf(field), sentence);
        }

        var most = StoreLimits.BoardsForAProject * StoreLimits.ProjectsInACourse;
        var boards = new List<BoardDraft>();
        foreach (var item in node.Items("boards", most, "boards").TakeWhile(_ => !findings.IsFull))
        {
            if (ReadBoard(item, projects, rules, findings) is { } board)
            {
                boards.Add(board);
            }
        }

        if (boards.GroupBy(b => b.Project).Any(g => g.Count() > StoreLimits.BoardsForAProject))
        {
            node.Problem("boards", Wording.TooManyBoardsInAFile);
        }

        return new(card, boards);
    }

    private static BoardDraft? ReadBoard(
        JToken token,
        IReadOnlyList<Project> projects,
        CourseRules rules,
        FileFindings findings
    )
    {
        if (FileNode.Open(token, "a board", findings, FileFields.Board) is not { } node)
            return null;
        var project = ReadProjectOf(node, projects);
        var board = ReadSizes(node, rules, findings);
        return project is { } at ? new(at, board) : null;
    }

    /// <summary>What a board is and measures, whoever's it is and wherever it lies.</summary>
    public static Board ReadSizes(FileNode node, CourseRules rules, FileFindings findings)
    {
        DefectDraft[] defects =
        [
            .. node.Items("defects", BoardChecks.MostDefects, "defects")
                .Select(item => ReadDefect(item, rules.Unit, findings))
                .OfType<DefectDraft>(),
        ];
        var board = BoardStore.Tidy(
            new Board
            {
                Id = "",
                Name = node.Text("name"),
                SpeciesId = node.Text("species"),
                Surfacing = node.Choice("surfacing", FileWords.Surfacings) ?? default,
                Thickness = Size("thickness"),
                WidthAtStart = Size("widthAtStart"),
                WidthAtMiddle = Size("widthAtMiddle"),
                WidthAtEnd = Size("widthAtEnd"),
                Length = Size("length"),
                Cup = Size("cup", Length.Zero),
                Twist = Size("twist", Length.Zero),
                TrimStart = Size("trimStart", Length.Zero),
                TrimEnd = Size("trimEnd", Length.Zero),
                Defects = [.. defects.Select(d => d.Defect)],
                Price = ReadPrice(node),
            }
        );
        foreach (var (field, sentence) in BoardChecks.ProblemsIn(board, rules))
        {
            PutDown(field, field is "Species" ? SpeciesSentence(board.SpeciesId) : sentence);
        }

        return board;

        Length Size(string field, Length? otherwise = null) =>
            node.Length(field, rules.Unit, otherwise) ?? Length.Zero;

        void PutDown(string field, string sentence)
        {
            if (DefectField().Match(field) is { Success: true } match)
            {
                var index = int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture);
                defects[index]
                    .Node.Problem(PartReader.FileFieldOf(match.Groups["field"].Value), sentence);
            }
            else
            {
                node.Problem(PartReader.FileFieldOf(field), sentence);
            }
        }
    }

    private static int? ReadProjectOf(FileNode node, IReadOnlyList<Project> projects)
    {
        if (!node.Has("project"))
        {
            node.Problem(
                "project",
                "The field “project” is missing in a board: the name of the project it is for."
            );
            return null;
        }

        int[] named = node.At("project") switch
        {
            JValue { Value: string name } =>
            [
                .. projects
                    .Index()
                    .Where(p => p.Item.Name == Wording.Tidy(name))
                    .Select(p => p.Index),
            ],
            JValue { Value: long number } when number >= 1 && number <= projects.Count =>
            [
                (int)number - 1,
            ],
            _ => [],
        };
        if (named.Length == 1)
            return named[0];
        node.Problem(
            "project",
            named.Length > 1
                ? "Several projects of this course have that name. Write the project's number in the list instead, from 1."
                : "This course has no such project. Write the name of one of its projects."
        );
        return null;
    }

    private static DefectDraft? ReadDefect(JToken token, UnitSystem unit, FileFindings findings)
    {
        if (FileNode.Open(token, "a defect", findings, FileFields.Defect) is not { } node)
            return null;
        var kind = node.Choice("kind", FileWords.Defects);
        var reach = node.Choice("shows", FileWords.Reaches, DefectReach.Through);
        var (from, to) = (node.Length("from", unit), node.Length("to", unit));
        var (near, far) = (node.Length("near", unit), node.Length("far", unit));
        return
            kind is { } k
            && reach is { } r
            && from is { } f
            && to is { } t
            && near is { } n
            && far is { } w
            ? new(new(k, new(f, t, n, w), r), node)
            : null;
    }

    internal static Money? ReadPrice(FileNode board) =>
        board.Has("price") && board.Child("price", "a price", FileFields.Price) is { } node
            ? new Money(
                node.Whole("minorUnits", stand: 0, least: 0, most: long.MaxValue),
                node.Text("currency")
            )
            : null;

    internal static string SpeciesSentence(string typed)
    {
        var near = NearestWord.To(typed, SpeciesTable.All.Select(s => s.Id));
        return near is null
            ? "This species is not known. docs/course-file.md says where the list of keys is."
            : $"This species is not known. Is “{near}” meant?";
    }

    [GeneratedRegex(@"^Defects\[(?<index>[0-9]+)\]\.?(?<field>[A-Za-z]*)$")]
    private static partial Regex DefectField();

    private sealed record DefectDraft(Defect Defect, FileNode Node);
}

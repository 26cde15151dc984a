using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Projects;

/// <summary>A row of a pasted list: what its cells say, and the part they make or why they do not.</summary>
public sealed record PasteRow(
    int Line,
    IReadOnlyDictionary<PasteField, string> Cells,
    Part? Part,
    IReadOnlyList<FieldProblem> Problems
);

/// <summary>What was read from a pasted list.</summary>
/// <param name="Rows">Its rows, right or not.</param>
/// <param name="NotRead">Headings of columns that were passed over.</param>
/// <param name="Refusal">Why it was not read at all.</param>
public sealed record PasteReading(
    IReadOnlyList<PasteRow> Rows,
    IReadOnlyList<string> NotRead,
    string? Refusal
)
{
    public bool IsRight =>
        Refusal is null && Rows.Count > 0 && Rows.All(row => row.Problems.Count == 0);

    public IReadOnlyList<Part> Parts => [.. Rows.Select(row => row.Part).OfType<Part>()];

    internal static PasteReading Refused(string sentence) => new([], [], sentence);
}

/// <summary>Reads a parts list pasted from a spreadsheet. Adds nothing by itself.</summary>
public static class ProjectPaste
{
    /// <summary>Most characters looked at; a full parts list is far shorter.</summary>
    public const int MostCharacters = 400_000;

    /// <summary>Most lines looked at: notes in a cell may run over a few, so there may be more of them than rows.</summary>
    public const int MostLines = 10 * PartChecks.MostParts;

    private static readonly (PasteField Field, string Said)[] Sizes =
    [
        (PasteField.Thickness, "thickness"),
        (PasteField.Width, "width"),
        (PasteField.Length, "length"),
    ];

    /// <summary>Reads the list; <paramref name="already"/> are the parts it would join.</summary>
    public static PasteReading Read(string text, IReadOnlyList<Part> already, CourseRules rules)
    {
        if (text.Length > MostCharacters)
            return TooMuch(text.Length);

        var records = PasteSplit.Records(text);
        if (records.Count == 0)
            return PasteReading.Refused("Nothing was pasted yet.");

        var headed = PasteColumns.FromHeadings(records[0].Cells);
        var columns = headed ?? PasteColumns.Usual;
        var rows = headed is null ? records : [.. records.Skip(1)];
        return RefusalOf(columns, rows.Count, already.Count) is { } refusal
            ? PasteReading.Refused(refusal)
            : new(ReadRows(rows, columns, already, rules), columns.NotRead, Refusal: null);
    }

    /// <summary>The answer to a text too long to be a parts list.</summary>
    public static PasteReading TooMuch(long characters) =>
        PasteReading.Refused(
            $"That is far more than a parts list: {characters:N0} characters. At most {PartChecks.MostParts} rows can be pasted."
        );

    /// <summary>The answer to more rows than a parts list holds.</summary>
    public static PasteReading TooManyRows(int rows) =>
        PasteReading.Refused(
            $"That is {rows:N0} rows. A parts list can have {PartChecks.MostParts}; nothing was read."
        );

    private static string? RefusalOf(PasteColumns columns, int rows, int already)
    {
        if (rows == 0)
            return "Only the headings were pasted; the rows are missing.";
        if (rows > PartChecks.MostParts)
            return TooManyRows(rows).Refusal;
        if (already + rows > PartChecks.MostParts)
            return $"The parts list has {already} rows and this would add {rows}. It can have {PartChecks.MostParts}.";
        return Sizes.FirstOrDefault(s => !columns.Places.ContainsKey(s.Field)).Said is { } missing
            ? $"No column is headed “{missing}”. The sizes need the headings thickness, width and length."
            : null;
    }

    private static List<PasteRow> ReadRows(
        IReadOnlyList<(int Line, IReadOnlyList<string> Cells)> records,
        PasteColumns columns,
        IReadOnlyList<Part> already,
        CourseRules rules
    )
    {
        List<Part> before = [.. already];
        List<PasteRow> rows = [];
        // Letters that are written keep their owners; rows without one get what is left.
        List<string> letters =
        [
            .. already.Select(p => p.Letter),
            .. records.Select(r => columns.Cell(PasteField.Letter, r.Cells)),
        ];
        foreach (var (line, cells) in records)
        {
            var said = Enum.GetValues<PasteField>()
                .ToDictionary(f => f, f => columns.Cell(f, cells));
            if (said[PasteField.Letter].Length == 0)
                letters.Add(said[PasteField.Letter] = PartLetters.Next(letters));

            var row = ReadRow(line, said, before, rules);
            rows.Add(row);
            if (row.Part is { } part)
                before.Add(part);
        }

        return rows;
    }

    private static PasteRow ReadRow(
        int line,
        Dictionary<PasteField, string> said,
        IReadOnlyList<Part> before,
        CourseRules rules
    )
    {
        List<FieldProblem> problems = [];
        var sizes = Sizes.ToDictionary(
            s => s.Field,
            s => ReadLength(s.Field, said[s.Field], rules.Unit, problems)
        );
        var quantity = ReadQuantity(said[PasteField.Quantity], problems);
        if (problems.Count > 0)
            return new(line, said, Part: null, problems);

        var part = new Part
        {
            Letter = said[PasteField.Letter].ToUpperInvariant(),
            Name = said[PasteField.Name],
            Finished = new(
                sizes[PasteField.Thickness],
                sizes[PasteField.Width],
                sizes[PasteField.Length]
            ),
            Quantity = quantity,
            JointNotes = said[PasteField.JointNotes],
        };
        problems.AddRange(
            PartChecks
                .ProblemsIn(part, before, rules)
                .Select(p => new FieldProblem(p.Field, p.Sentence))
        );
        return new(line, said, part, problems);
    }

    private static Length ReadLength(
        PasteField field,
        string cell,
        UnitSystem unit,
        List<FieldProblem> problems
    )
    {
        var reading = LengthReader.Read(cell, unit);
        if (reading.Problem is { } problem)
            problems.Add(new(field.ToString(), problem));
        return reading.Value;
    }

    /// <summary>An empty cell is one piece.</summary>
    private static int ReadQuantity(string cell, List<FieldProblem> problems)
    {
        if (cell.Length == 0)
            return 1;
        if (
            int.TryParse(cell, NumberStyles.Integer, CultureInfo.InvariantCulture, out var quantity)
        )
            return quantity;
        problems.Add(
            new(nameof(PasteField.Quantity), $"“{cell}” is not a whole number of pieces.")
        );
        return 0;
    }
}

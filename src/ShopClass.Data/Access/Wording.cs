using ShopClass.Core.Measure;

namespace ShopClass.Data.Access;

/// <summary>Checks of the words people type, and the sentences for what the stores refuse.</summary>
internal static class Wording
{
    public static readonly FieldProblem CourseIsArchived = new(
        "",
        "This course is archived. Take it out of the archive to change it."
    );

    public static readonly FieldProblem TooManyStudents = Full(
        "course",
        StoreLimits.StudentsInACourse,
        "students"
    );

    public static readonly FieldProblem TooManyProjects = Full(
        "course",
        StoreLimits.ProjectsInACourse,
        "projects"
    );

    public static readonly FieldProblem TooManyBoards = new(
        "",
        $"A student can have {StoreLimits.BoardsForAProject} boards for a project, and has them. Remove one first."
    );

    public static readonly string TooManyBoardsInAFile =
        $"A student can have {StoreLimits.BoardsForAProject} boards for a project; here are more.";

    /// <summary>As it is kept: without space around it, lines ended in one way.</summary>
    public static string Tidy(string? text) => (text ?? "").ReplaceLineEndings("\n").Trim();

    public static string? ProblemWithName(string tidy) =>
        TypedText.NameProblem(tidy, StoreLimits.LongestName);

    public static string? ProblemWithAlias(string tidy) =>
        tidy.Length == 0 ? null : TypedText.NameProblem(tidy, StoreLimits.LongestAlias);

    public static string? ProblemWithNotes(string tidy) =>
        TypedText.NotesProblem(tidy, StoreLimits.LongestNotes);

    public static List<FieldProblem> Problems(params (string Field, string? Sentence)[] found) =>
        [
            .. from f in found
            where f.Sentence is not null
            select new FieldProblem(f.Field, f.Sentence),
        ];

    public static List<FieldProblem> Problems(
        IEnumerable<(string Field, string Sentence)> found,
        string prefix = ""
    ) => [.. found.Select(f => new FieldProblem(prefix + f.Field, f.Sentence))];

    private static FieldProblem Full(string holder, int most, string what) =>
        new("", $"A {holder} can have {most} {what}, and this one has them. Remove one first.");
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Data.Students.Logging;

namespace ShopClass.Web.Features.Logging;

/// <summary>A board on the desk: the entry as it is kept, and what it is for.</summary>
public sealed record OnTheDesk(
    StudentViewer Student,
    Guid ProjectId,
    string Project,
    BoardLogging Logging,
    BoardEntryView? Kept
);

/// <summary>Opens, keeps and logs what students enter about a board.</summary>
public sealed class EntryDesk(
    CourseStore courses,
    ProjectStore projects,
    BoardStore boards,
    BoardEntryStore entries
)
{
    /// <summary>The board being logged for this project, or a new one; null when the project is not the student's.</summary>
    public async Task<OnTheDesk?> OpenAsync(
        StudentViewer student,
        Guid projectId,
        CancellationToken cancel
    )
    {
        if (
            await courses.FindAsync(student, student.CourseId, cancel) is not { } course
            || await projects.FindAsync(student, projectId, cancel) is not { } project
        )
            return null;
        var kept = await entries.FindAsync(student, student.StudentId, projectId, cancel);
        var draft = LoggingDraft.FromText(kept?.Draft);
        if (draft.Answered.Count == 0)
            await BeginAsync(student, projectId, draft, course.Rules, cancel);
        return new(student, projectId, project.Name, new(course.Rules, draft), kept);
    }

    /// <summary>Writes what was entered so far; durable when it comes back.</summary>
    public Task<Outcome<BoardEntryView>> KeepAsync(OnTheDesk desk, CancellationToken cancel) =>
        entries.KeepAsync(
            desk.Student,
            desk.Student.StudentId,
            desk.ProjectId,
            desk.Logging.Draft.ToText(),
            cancel
        );

    public Task<Outcome<BoardEntryView>> KeepPhotoAsync(
        StudentViewer student,
        Guid projectId,
        byte[]? jpeg,
        CancellationToken cancel
    ) => entries.KeepPhotoAsync(student, student.StudentId, projectId, jpeg, cancel);

    public Task<Outcome<bool>> DropAsync(OnTheDesk desk, CancellationToken cancel) =>
        entries.DropAsync(desk.Student, desk.Student.StudentId, desk.ProjectId, cancel);

    /// <summary>Whether the board of this entry is logged already.</summary>
    public async Task<bool> IsLoggedAsync(
        StudentViewer student,
        Guid entryId,
        CancellationToken cancel
    ) => await boards.FindAsync(student, entryId, cancel) is not null;

    /// <summary>Logs the board. Sent twice, it is there once.</summary>
    public Task<Outcome<BoardView>> LogAsync(
        OnTheDesk desk,
        Guid entryId,
        Board board,
        CancellationToken cancel
    ) =>
        entries.LogAsync(
            desk.Student,
            desk.Student.StudentId,
            desk.ProjectId,
            entryId,
            board,
            cancel
        );

    /// <summary>The woods of the student's other boards, to be tapped; the commonest to start with where there are none.</summary>
    public async Task<IReadOnlyList<Species>> LikelyWoodsAsync(
        StudentViewer student,
        CancellationToken cancel
    )
    {
        var mine = new List<string>();
        foreach (var project in await projects.ListAsync(student, student.CourseId, cancel))
            mine.AddRange(
                (await boards.ListAsync(student, student.StudentId, project.Id, cancel)).Select(b =>
                    b.Board.SpeciesId
                )
            );
        return
        [
            .. mine.Concat(UsualWoods)
                .Distinct()
                .Select(SpeciesTable.Find)
                .OfType<Species>()
                .Take(6),
        ];
    }

    // Kinds a lumber yard usually has for hand work (common practice).
    private static readonly string[] UsualWoods =
    [
        "eastern-white-pine",
        "yellow-poplar",
        "red-oak",
        "soft-maple",
        "black-cherry",
        "black-walnut",
    ];

    private async Task BeginAsync(
        StudentViewer student,
        Guid projectId,
        LoggingDraft draft,
        CourseRules rules,
        CancellationToken cancel
    )
    {
        var already = await boards.ListAsync(student, student.StudentId, projectId, cancel);
        draft.Board.Name = $"Board {already.Count + 1}";
        draft.Board.TrimStart ??= rules.UsualEndTrim;
        draft.Board.TrimEnd ??= rules.UsualEndTrim;
    }
}

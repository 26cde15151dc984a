using ShopClass.Core.Courses;
using ShopClass.Core.Lessons;
using ShopClass.Core.Lumber;
using ShopClass.Core.Orders;
using ShopClass.Core.Paces;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tools;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.CourseFiles;

/// <summary>A course as a file tells it.</summary>
internal sealed record CourseDraft(
    string Name,
    CourseRules Rules,
    IReadOnlyList<Project> Projects,
    IReadOnlyList<StudentDraft> Students
)
{
    /// <summary>Its sellers and what lies on its rack.</summary>
    public MaterialsDraft Materials { get; init; } = MaterialsDraft.None;

    /// <summary>The supplies of each project, in the order of the projects.</summary>
    public IReadOnlyList<IReadOnlyList<Supply>> Supplies { get; init; } = [];

    /// <summary>Its tools; null where the file has none.</summary>
    public ToolChest? Tools { get; init; }

    /// <summary>Its label sheet; null where the file has none.</summary>
    public LabelSetting? Labels { get; init; }

    public LessonsDraft Lessons { get; init; } = LessonsDraft.None;

    public IReadOnlyList<TechniqueNote> TechniqueNotes { get; init; } = [];

    /// <summary>What the course it was written from has learned.</summary>
    public Learned Learned { get; init; } = Learned.Nothing;

    /// <summary>Whether a student's first cuts are not asked to be timed.</summary>
    public bool FirstCutsUntimed { get; init; }

    /// <summary>Whether a board waits for the instructor's yes before it is sawn.</summary>
    public bool BoardsWaitForYes { get; init; }
}

/// <summary>A student as a file tells them.</summary>
internal sealed record StudentDraft(StudentCard Card, IReadOnlyList<BoardDraft> Boards);

/// <summary>A board as a file tells it.</summary>
/// <param name="Project">The place of its project in the course's list, from 0.</param>
/// <param name="Board">The board, without a key of its own.</param>
internal sealed record BoardDraft(int Project, Board Board);

/// <summary>Turns what was read into rows.</summary>
internal static class Drafts
{
    public static CourseRow ToRow(CourseDraft draft, string ownerId, DateTime madeUtc)
    {
        var course = new CourseRow
        {
            Id = Guid.NewGuid(),
            OwnerId = ownerId,
            Name = draft.Name,
            Rules = draft.Rules,
            TechniqueNotes = draft.TechniqueNotes,
            BoardsWaitForYes = draft.BoardsWaitForYes,
            FirstCutsUntimed = draft.FirstCutsUntimed,
            MadeUtc = madeUtc,
            Version = Guid.NewGuid(),
        };
        course.Projects.AddRange(draft.Projects.Select((p, i) => ToRow(p, course.Id, i + 1)));
        foreach (var (project, supplies) in course.Projects.Zip(draft.Supplies))
            KitsFile.AddSupplies(supplies, project);
        ToolsFile.ToRow(draft.Tools, course);
        if (draft.Labels is { } labels)
            course.Desk = new()
            {
                CourseId = course.Id,
                Labels = labels,
                Version = Guid.NewGuid(),
            };
        if (!draft.Learned.IsNothing)
            course.Start = new() { CourseId = course.Id, Figures = Packed.Pack(draft.Learned) };
        course.Students.AddRange(draft.Students.Select(s => ToRow(s, course)));
        MaterialsFile.ToRows(draft.Materials, course);
        AddLessons(draft.Lessons, course);
        return course;
    }

    public static ProjectRow ToRow(Project draft, Guid courseId, int position)
    {
        var project = new ProjectRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            Name = draft.Name,
            Notes = draft.Notes,
            Joints = draft.Joints,
            SizeChecks = draft.SizeChecks,
            Position = position,
            Version = Guid.NewGuid(),
        };
        project.Parts.AddRange(draft.Parts.Select((p, i) => PartRow.From(p, project.Id, i + 1)));
        return project;
    }

    private static void AddLessons(LessonsDraft draft, CourseRow course)
    {
        if (draft.Stations is not null || draft.Demonstrations.Count > 0)
        {
            course.Shop = new() { CourseId = course.Id };
            course.Shop.Take(draft.Stations ?? StationCounts.Usual, draft.Demonstrations);
        }

        foreach (var (lesson, absent) in draft.Lessons)
        {
            var row = new LessonRow
            {
                Id = Guid.NewGuid(),
                CourseId = course.Id,
                Title = lesson.Title,
            };
            string[] students = [.. absent.Select(a => course.Students[a].Id.ToString())];
            row.Take(lesson with { Absent = [.. students.Order(StringComparer.Ordinal)] });
            course.Lessons.Add(row);
        }
    }

    private static StudentRow ToRow(StudentDraft draft, CourseRow course)
    {
        var student = new StudentRow
        {
            Id = Guid.NewGuid(),
            CourseId = course.Id,
            Name = draft.Card.Name,
            Alias = draft.Card.Alias,
            IsLeftHanded = draft.Card.IsLeftHanded,
            Version = Guid.NewGuid(),
        };
        student.Boards.AddRange(
            draft.Boards.Select(
                (b, i) => BoardRow.From(b.Board, student.Id, course.Projects[b.Project].Id, i + 1)
            )
        );
        return student;
    }
}

using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Learning;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.CourseFiles;

/// <summary>Something wrong in a course file.</summary>
/// <param name="Line">The line, from 1; 0 when it is about the whole file.</param>
/// <param name="Sentence">What is wrong and what is expected.</param>
public sealed record FileProblem(int Line, string Sentence);

/// <summary>What an import did. When there are problems, nothing was changed.</summary>
/// <param name="CourseId">The course that was made, or the one a project was added to.</param>
/// <param name="ProjectId">The project, when the file held a single project.</param>
/// <param name="Summary">What was imported, as a sentence.</param>
/// <param name="Problems">Why nothing was imported; every problem found, in the order of lines.</param>
public sealed record ImportOutcome(
    Guid? CourseId,
    Guid? ProjectId,
    string Summary,
    IReadOnlyList<FileProblem> Problems
)
{
    /// <summary>Whether it was imported.</summary>
    public bool IsImported => Problems.Count == 0;
}

/// <summary>Course files in and out (docs/course-file.md): a whole course, or one project.</summary>
public sealed class CourseFileStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>The largest file that is read.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>The course as a file, or null when it is not the viewer's. Leaves out plans and what was logged, but for what the course has learned.</summary>
    public async Task<string?> ExportCourseAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var course = await shop
            .Courses.AsNoTracking()
            .RunBy(viewer)
            .Include(c => c.Projects)
                .ThenInclude(p => p.Parts)
            .Include(c => c.Projects)
                .ThenInclude(p => p.Kits)
            .Include(c => c.Tools)
            .Include(c => c.Desk)
            .Include(c => c.Students)
                .ThenInclude(s => s.Boards)
            .Include(c => c.Sellers)
            .Include(c => c.Rack)
            .Include(c => c.Lessons)
            .Include(c => c.Shop)
            .AsSplitQuery()
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        return course is null
            ? null
            : CourseFileWriter.Course(course, await LearnedReading.OfAsync(shop, courseId, cancel));
    }

    /// <summary>One project as a file, or null when it is not the viewer's.</summary>
    public async Task<string?> ExportProjectAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var project = await shop
            .Projects.AsNoTracking()
            .RunBy(viewer)
            .Include(p => p.Course)
            .Include(p => p.Parts)
            .Include(p => p.Kits)
            .SingleOrDefaultAsync(p => p.Id == projectId, cancel);
        return project is null
            ? null
            : CourseFileWriter.Project(project, project.Course!.Rules.Unit);
    }

    /// <summary>
    /// Reads a file. A course file makes a new course owned by the viewer; a project file adds a project to
    /// <paramref name="intoCourse"/>. Reads at most <see cref="MostBytes"/> and refuses what is longer.
    /// </summary>
    public async Task<ImportOutcome> ImportAsync(
        Viewer viewer,
        Stream file,
        Guid? intoCourse = null,
        CancellationToken cancel = default
    )
    {
        if (viewer is not InstructorViewer instructor)
            return Refused("Only an instructor can import a course file.");
        if (await ReadAllAsync(file, cancel) is not { } bytes)
        {
            return Refused(
                $"The file is larger than {MostBytes / (1024 * 1024)} MB, the most that is read. A course file is far smaller."
            );
        }

        var contents = CourseFileReader.Read(bytes);
        if (contents.Problems.Count > 0)
            return new(null, null, "", contents.Problems);
        return contents.Course is { } course
            ? await AddCourseAsync(instructor, course, cancel)
            : await AddProjectAsync(instructor, contents, intoCourse, cancel);
    }

    private async Task<ImportOutcome> AddCourseAsync(
        InstructorViewer instructor,
        CourseDraft draft,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (!await shop.Users.AnyAsync(a => a.Id == instructor.UserId, cancel))
            return Refused("Only an instructor can import a course file.");
        var course = Drafts.ToRow(draft, instructor.UserId, clock.GetUtcNow().UtcDateTime);
        shop.Courses.Add(course);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        var boards = draft.Students.Sum(s => s.Boards.Count);
        return new(
            course.Id,
            null,
            $"Imported the course “{draft.Name}” with {Count(draft.Projects.Count, "project")}, "
                + $"{Count(draft.Students.Count, "student")} and {Count(boards, "board")}.",
            []
        );
    }

    private async Task<ImportOutcome> AddProjectAsync(
        InstructorViewer instructor,
        CourseFileReader.Contents contents,
        Guid? intoCourse,
        CancellationToken cancel
    )
    {
        var draft = contents.Project!;
        if (intoCourse is not { } courseId)
        {
            return Refused(
                "This file holds one project. Open the course it should go into and import it there."
            );
        }

        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(instructor)
            .Include(c => c.Projects)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Refused("The course it should go into is not there any more.");
        if (course.IsArchived)
            return Refused(Wording.CourseIsArchived.Sentence);
        if (course.Projects.Count >= StoreLimits.ProjectsInACourse)
            return Refused(Wording.TooManyProjects.Sentence);
        var position = course.Projects.Select(p => p.Position).DefaultIfEmpty(0).Max() + 1;
        var project = Drafts.ToRow(draft, courseId, position);
        KitsFile.AddSupplies(contents.Supplies, project);
        shop.Projects.Add(project);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return new(
            courseId,
            project.Id,
            $"Imported the project “{draft.Name}” with {Count(draft.Parts.Count, "part")}.",
            []
        );
    }

    /// <summary>All of it, or null as soon as it is more than is read.</summary>
    private static async Task<ReadOnlyMemory<byte>?> ReadAllAsync(
        Stream file,
        CancellationToken cancel
    )
    {
        using var all = new MemoryStream();
        var piece = new byte[64 * 1024];
        int read;
        while ((read = await file.ReadAsync(piece, cancel)) > 0)
        {
            if (all.Length + read > MostBytes)
                return null;
            all.Write(piece, 0, read);
        }

        return all.ToArray();
    }

    private static ImportOutcome Refused(string sentence) =>
        new(null, null, "", [new(0, sentence)]);

    private static string Count(int count, string what) =>
        count == 1 ? $"1 {what}" : $"{count} {what}s";
}

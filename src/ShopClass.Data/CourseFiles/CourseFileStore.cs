using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

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

#pragma warning disable CS9113 // Its members follow.
/// <summary>Course files in and out (docs/course-file.md): a whole course, or one project.</summary>
public sealed class CourseFileStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>The largest file that is read.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>The course as a file, or null when it is not the viewer's. Leaves out nothing but plans.</summary>
    public Task<string?> ExportCourseAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>One project as a file, or null when it is not the viewer's.</summary>
    public Task<string?> ExportProjectAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>
    /// Reads a file. A course file makes a new course owned by the viewer; a project file adds a project to
    /// <paramref name="intoCourse"/>. Reads at most <see cref="MostBytes"/> and refuses what is longer.
    /// </summary>
    public Task<ImportOutcome> ImportAsync(
        Viewer viewer,
        Stream file,
        Guid? intoCourse = null,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();
}

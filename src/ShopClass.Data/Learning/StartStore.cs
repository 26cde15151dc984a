using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Paces;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;

namespace ShopClass.Data.Learning;

/// <summary>Figures a course can start from.</summary>
/// <param name="FromCourse">The earlier course; null for what came with the course's file.</param>
/// <param name="Source">Its name; empty for a course file.</param>
/// <param name="Figures">What it has learned.</param>
public sealed record StartOffer(Guid? FromCourse, string Source, Learned Figures);

/// <summary>What a course starts from, or could.</summary>
/// <param name="Choice">What was decided; Offered where nothing was.</param>
/// <param name="Taken">What it starts from; null for the usual rates.</param>
/// <param name="Offers">What it could start from: its file's figures, then the newest of the instructor's other courses of a project of the same name.</param>
public sealed record StartView(
    StartChoice Choice,
    StartOffer? Taken,
    IReadOnlyList<StartOffer> Offers
);

/// <summary>A course starts from what the last one of the same project has learned, where its owner wants that.</summary>
public sealed class StartStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>At most so many earlier courses are offered.</summary>
    public const int MostOffers = 3;

    /// <summary>What the course starts from or could; null when it is not the viewer's own.</summary>
    public async Task<StartView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var course = await CourseAsync(shop, viewer, courseId, cancel);
        return course is null ? null : await ViewAsync(shop, viewer, course, cancel);
    }

    /// <summary>
    /// Starts the course from what an earlier course has learned by now, or from what came with its file. It is a copy: what
    /// the earlier course learns later changes nothing here.
    /// </summary>
    /// <param name="viewer">The owner of both.</param>
    /// <param name="courseId">The course.</param>
    /// <param name="from">The earlier course; null for what came with the file.</param>
    /// <param name="cancel">Gives up before anything is written.</param>
    public Task<Outcome<StartView>> TakeAsync(
        Viewer viewer,
        Guid courseId,
        Guid? from,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            async (shop, course) =>
            {
                if (from is not { } earlier)
                {
                    if (course.Start is not { } offered || offered.ToLearned().IsNothing)
                        return NothingThere;
                    offered.Choice = StartChoice.Taken;
                    return null;
                }

                var source = await shop
                    .Courses.RunBy(viewer)
                    .Where(c => c.Id == earlier && c.Id != courseId)
                    .Select(c => c.Name)
                    .SingleOrDefaultAsync(cancel);
                var learned = source is null
                    ? Learned.Nothing
                    : await LearnedReading.OfAsync(shop, earlier, cancel);
                if (source is null || learned.IsNothing)
                    return NothingThere;
                var row = Row(shop, course);
                (row.Choice, row.Source) = (StartChoice.Taken, source);
                row.Figures = Packed.Pack(learned);
                return null;
            },
            cancel
        );

    /// <summary>Starts the course from the usual rates. What came with its file stays on offer.</summary>
    public Task<Outcome<StartView>> LeaveAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            (shop, course) =>
            {
                Row(shop, course).Choice = StartChoice.Left;
                return Task.FromResult<FieldProblem?>(null);
            },
            cancel
        );

    private static readonly FieldProblem NothingThere = new(
        "",
        "There is nothing there to start from any more. The course goes on as it is."
    );

    private async Task<Outcome<StartView>> ChangeAsync(
        Viewer viewer,
        Guid courseId,
        Func<ShopContext, CourseRow, Task<FieldProblem?>> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (await CourseAsync(shop, viewer, courseId, cancel) is not { } course)
            return Outcome<StartView>.NotFound();
        if (course.IsArchived)
            return Outcome<StartView>.Refused(Wording.CourseIsArchived);
        if (await change(shop, course) is { } problem)
            return Outcome<StartView>.Refused(problem);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StartView>.Saved(await ViewAsync(shop, viewer, course, cancel));
    }

    private static Task<CourseRow?> CourseAsync(
        ShopContext shop,
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel
    ) =>
        shop
            .Courses.RunBy(viewer)
            .Include(c => c.Start)
            .Include(c => c.Projects)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);

    private static StartRow Row(ShopContext shop, CourseRow course)
    {
        if (course.Start is { } there)
            return there;
        var row = new StartRow { CourseId = course.Id, Figures = Packed.Pack(Learned.Nothing) };
        shop.Add(row);
        return row;
    }

    private static async Task<StartView> ViewAsync(
        ShopContext shop,
        Viewer viewer,
        CourseRow course,
        CancellationToken cancel
    )
    {
        var start = course.Start is { } row
            ? new StartOffer(null, row.Source, row.ToLearned())
            : null;
        if (course.Start is { Choice: StartChoice.Taken })
            return new(StartChoice.Taken, start, []);
        List<StartOffer> offers = [];
        string[] names =
        [
            .. course
                .Projects.Select(p => p.Name.Trim())
                .Distinct(StringComparer.OrdinalIgnoreCase),
        ];
        var others = await shop
            .Courses.RunBy(viewer)
            .Where(c => c.Id != course.Id)
            .OrderByDescending(c => c.MadeUtc)
            .ThenBy(c => c.Id)
            .Select(c => new
            {
                c.Id,
                c.Name,
                Projects = c.Projects.Select(p => p.Name).ToList(),
            })
            .ToListAsync(cancel);
        // A copy of a course's figures that was left again stands for a course that is gone.
        if (start is { Figures.IsNothing: false } && others.TrueForAll(o => o.Name != start.Source))
            offers.Add(start);
        foreach (
            var other in others.Where(o =>
                o.Projects.Any(p => names.Contains(p.Trim(), StringComparer.OrdinalIgnoreCase))
            )
        )
        {
            if (offers.Count >= MostOffers)
                break;
            if (
                await LearnedReading.OfAsync(shop, other.Id, cancel) is { IsNothing: false } learned
            )
                offers.Add(new(other.Id, other.Name, learned));
        }

        return new(course.Start?.Choice ?? StartChoice.Offered, null, offers);
    }
}

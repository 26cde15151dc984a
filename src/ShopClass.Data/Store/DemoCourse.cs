using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.CourseFiles;

namespace ShopClass.Data.Store;

/// <summary>The demo course: db/demo-course.json, read by the same importer as anybody's file.</summary>
public static class DemoCourse
{
    private const string UserName = "demo-instructor";

    /// <summary>The file itself.</summary>
    public static Stream Open() =>
        typeof(DemoCourse).Assembly.GetManifestResourceStream("demo-course.json")
        ?? throw new InvalidOperationException("The demo course is missing from this build.");

    internal static async Task LoadOnceAsync(IServiceProvider services, CancellationToken cancel)
    {
        if (await AddOwnerAsync(services, cancel) is not { } ownerId)
            return;
        await using var file = Open();
        var outcome = await services
            .GetRequiredService<CourseFileStore>()
            .ImportAsync(new InstructorViewer(ownerId), file, intoCourse: null, cancel);
        if (!outcome.IsImported)
        {
            var problems = outcome.Problems.Select(p => $"line {p.Line}: {p.Sentence}");
            throw new InvalidOperationException(
                "The demo course cannot be imported. " + string.Join(" ", problems)
            );
        }
    }

    /// <summary>
    /// The owner's key when the course is still to be loaded; null once it has been, even if somebody archived it or
    /// changed it since. A start that was cut off between the two is made good by the next.
    /// </summary>
    private static async Task<string?> AddOwnerAsync(
        IServiceProvider services,
        CancellationToken cancel
    )
    {
        var factory = services.GetRequiredService<IDbContextFactory<ShopContext>>();
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (await shop.Users.SingleOrDefaultAsync(a => a.IsDemo, cancel) is { } there)
        {
            return await shop.Courses.AnyAsync(c => c.OwnerId == there.Id, cancel)
                ? null
                : there.Id;
        }

        var owner = new Account
        {
            IsDemo = true,
            UserName = UserName,
            NormalizedUserName = UserName.ToUpperInvariant(),
            SecurityStamp = Guid.NewGuid().ToString("N"),
        };
        shop.Users.Add(owner);
        await shop.SaveChangesAsync(cancel);
        return owner.Id;
    }
}

using System.Text;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using Xunit;

namespace ShopClass.Data.Tests.Access;

public class ArchivedTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_archived_course_can_be_read_and_not_changed()
    {
        await using var store = shop.Copy();
        var (by, course, project, part) = (
            shop.Owner,
            shop.Course,
            shop.Project,
            shop.Project.Parts[0]
        );
        var archived = Shop.Value(
            await store.Courses.ArchiveAsync(by, course.Id, true, course.Version, Cancel)
        );
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(shop.ProjectFile));

        Assert.NotNull(await store.Projects.FindAsync(by, project.Id, Cancel));
        Assert.NotNull(await store.Boards.FindAsync(shop.Self, shop.Board.Id, Cancel));
        Assert.NotNull(await store.Plans.FindAsync(shop.Self, shop.PlanId, Cancel));
        Refuses(await store.Courses.RenameAsync(by, course.Id, "New", archived.Version, Cancel));
        Refuses(
            await store.Courses.SaveRulesAsync(
                by,
                course.Id,
                CourseRules.DefaultsFor(UnitSystem.Inch),
                archived.Version,
                Cancel
            )
        );
        Refuses(await store.Projects.CreateAsync(by, course.Id, "Box", Cancel));
        Refuses(await store.Projects.SaveAsync(by, project.Id, "Box", "", project.Version, Cancel));
        Refuses(await store.Projects.AddPartsAsync(by, project.Id, [Wood.Side("C")], Cancel));
        Refuses(
            await store.Projects.SavePartAsync(
                by,
                project.Id,
                part.Id,
                part.Part,
                part.Version,
                Cancel
            )
        );
        Refuses(await store.Projects.MovePartAsync(by, project.Id, part.Id, 1, Cancel));
        Refuses(await store.Projects.RemovePartAsync(by, project.Id, part.Id, Cancel));
        Refuses(await store.Projects.RemoveAsync(by, project.Id, Cancel));
        Refuses(await store.Students.AddAsync(by, course.Id, new("Dov", "", false), Cancel));
        Refuses(
            await store.Students.SaveAsync(
                by,
                shop.Student.Id,
                shop.Student.Card,
                shop.Student.Version,
                Cancel
            )
        );
        Refuses(await store.Students.RemoveAsync(by, shop.Student.Id, Cancel));
        Refuses(
            await store.Boards.AddAsync(shop.Self, shop.Student.Id, project.Id, Wood.Pine(), Cancel)
        );
        Refuses(
            await store.Boards.SaveAsync(
                shop.Self,
                shop.Board.Id,
                Wood.Pine(),
                shop.Board.Version,
                Cancel
            )
        );
        Refuses(await store.Boards.RemoveAsync(shop.Self, shop.Board.Id, Cancel));
        Refuses(
            await store.Plans.SaveAsync(shop.Self, shop.Student.Id, project.Id, shop.Plan, Cancel)
        );
        var import = await store.Files.ImportAsync(by, file, course.Id, Cancel);
        Assert.Contains("archived", Assert.Single(import.Problems).Sentence);
    }

    [Fact]
    public async Task Taken_out_of_the_archive_it_can_be_changed_again()
    {
        await using var store = shop.Copy();
        var (by, id) = (shop.Owner, shop.Course.Id);
        var away = Shop.Value(
            await store.Courses.ArchiveAsync(by, id, true, shop.Course.Version, Cancel)
        );

        var back = Shop.Value(
            await store.Courses.ArchiveAsync(by, id, false, away.Version, Cancel)
        );

        Assert.True((await store.Courses.RenameAsync(by, id, "New", back.Version, Cancel)).IsSaved);
    }

    private static void Refuses<T>(Outcome<T> outcome)
    {
        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Contains("archived", Assert.Single(outcome.Problems).Sentence);
    }
}

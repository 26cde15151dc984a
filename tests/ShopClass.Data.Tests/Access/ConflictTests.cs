using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>Two tabs on the same thing: the second to save is told, and sees what the first saved.</summary>
public class ConflictTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_second_to_rename_a_course_sees_the_first_name()
    {
        await using var store = shop.Copy();
        var (id, version) = (shop.Course.Id, shop.Course.Version);
        await store.Courses.RenameAsync(shop.Owner, id, "First", version, Cancel);

        var second = await store.Courses.RenameAsync(shop.Owner, id, "Second", version, Cancel);

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal("First", second.Value?.Name);
        Assert.Equal("First", (await store.Courses.FindAsync(shop.Owner, id, Cancel))?.Name);
    }

    [Fact]
    public async Task The_second_to_save_the_settings_sees_the_first_settings()
    {
        await using var store = shop.Copy();
        var (id, version) = (shop.Course.Id, shop.Course.Version);
        var metric = CourseRules.DefaultsFor(UnitSystem.Metric);
        await store.Courses.SaveRulesAsync(shop.Owner, id, metric, version, Cancel);

        var second = await store.Courses.SaveRulesAsync(
            shop.Owner,
            id,
            CourseRules.DefaultsFor(UnitSystem.Inch),
            version,
            Cancel
        );

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal(metric, second.Value?.Rules);
    }

    [Fact]
    public async Task The_second_to_save_a_project_sees_the_first_notes()
    {
        await using var store = shop.Copy();
        var (id, version) = (shop.Project.Id, shop.Project.Version);
        await store.Projects.SaveAsync(shop.Owner, id, "Shelf", "first", version, Cancel);

        var second = await store.Projects.SaveAsync(
            shop.Owner,
            id,
            "Shelf",
            "second",
            version,
            Cancel
        );

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal("first", second.Value?.Notes);
    }

    [Fact]
    public async Task The_second_to_save_a_part_sees_the_first_part_and_other_rows_are_free()
    {
        await using var store = shop.Copy();
        var (project, row, other) = (shop.Project.Id, shop.Project.Parts[0], shop.Project.Parts[1]);
        var first = Wood.Side() with { Name = "first" };
        await store.Projects.SavePartAsync(shop.Owner, project, row.Id, first, row.Version, Cancel);

        var second = await store.Projects.SavePartAsync(
            shop.Owner,
            project,
            row.Id,
            Wood.Side() with
            {
                Name = "second",
            },
            row.Version,
            Cancel
        );
        var beside = await store.Projects.SavePartAsync(
            shop.Owner,
            project,
            other.Id,
            Wood.Side("B") with
            {
                Name = "beside",
            },
            other.Version,
            Cancel
        );

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal("first", second.Value?.Part.Name);
        Assert.True(beside.IsSaved);
    }

    [Fact]
    public async Task The_second_to_save_a_student_sees_the_first_card()
    {
        await using var store = shop.Copy();
        var (id, version) = (shop.Student.Id, shop.Student.Version);
        await store.Students.SaveAsync(shop.Owner, id, new("Ada", "first", true), version, Cancel);

        var second = await store.Students.SaveAsync(
            shop.Owner,
            id,
            new("Ada", "second", false),
            version,
            Cancel
        );

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal(new("Ada", "first", true), second.Value?.Card);
    }

    [Fact]
    public async Task The_second_to_save_a_board_sees_the_first_whoever_it_was()
    {
        await using var store = shop.Copy();
        var (id, version) = (shop.Board.Id, shop.Board.Version);
        await store.Boards.SaveAsync(shop.Self, id, Wood.Pine("first"), version, Cancel);

        var second = await store.Boards.SaveAsync(
            shop.Owner,
            id,
            Wood.Pine("second"),
            version,
            Cancel
        );

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal("first", second.Value?.Board.Name);
    }

    [Fact]
    public async Task Of_many_who_save_at_once_exactly_one_is_first()
    {
        await using var store = shop.Copy();
        var outcomes = await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(i =>
                    Task.Run(
                        () =>
                            store.Courses.RenameAsync(
                                shop.Owner,
                                shop.Course.Id,
                                $"Name {i}",
                                shop.Course.Version,
                                Cancel
                            ),
                        Cancel
                    )
                )
        );

        var saved = Assert.Single(outcomes, o => o.IsSaved).Value!;
        Assert.All(
            outcomes.Where(o => !o.IsSaved),
            o => Assert.Equal((OutcomeKind.ChangedMeanwhile, saved.Name), (o.Kind, o.Value?.Name))
        );
    }

    [Fact]
    public async Task Boards_logged_at_once_are_all_kept_each_in_a_place_of_its_own()
    {
        await using var store = shop.Copy();
        await Task.WhenAll(
            Enumerable
                .Range(0, 6)
                .Select(i =>
                    Task.Run(
                        () =>
                            store.Boards.AddAsync(
                                shop.Self,
                                shop.Student.Id,
                                shop.Project.Id,
                                Wood.Pine($"Board {i}"),
                                Cancel
                            ),
                        Cancel
                    )
                )
        );

        var boards = await store.Boards.ListAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );

        Assert.Equal(7, boards.Count);
        Assert.Equal(7, boards.Select(b => b.Board.Name).Distinct().Count());
    }
}

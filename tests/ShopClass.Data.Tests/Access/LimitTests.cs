using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>What the stores refuse, and that the last that is allowed goes in.</summary>
public partial class LimitTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(80, true)]
    [InlineData(81, false)]
    [InlineData(0, false)]
    public async Task Names_have_one_to_eighty_characters(int length, bool goesIn)
    {
        await using var store = shop.Copy();
        var name = new string('n', length);
        (OutcomeKind Kind, IReadOnlyList<FieldProblem> Problems)[] outcomes =
        [
            Told(await store.Courses.CreateAsync(shop.Owner, name, UnitSystem.Inch, Cancel)),
            Told(
                await store.Courses.RenameAsync(
                    shop.Owner,
                    shop.Course.Id,
                    name,
                    shop.Course.Version,
                    Cancel
                )
            ),
            Told(await store.Projects.CreateAsync(shop.Owner, shop.Course.Id, name, Cancel)),
            Told(
                await store.Projects.SaveAsync(
                    shop.Owner,
                    shop.Project.Id,
                    name,
                    "",
                    shop.Project.Version,
                    Cancel
                )
            ),
            Told(
                await store.Students.AddAsync(
                    shop.Owner,
                    shop.Course.Id,
                    new(name, "", false),
                    Cancel
                )
            ),
            Told(
                await store.Students.SaveAsync(
                    shop.Owner,
                    shop.Student.Id,
                    new(name, "", false),
                    shop.Student.Version,
                    Cancel
                )
            ),
        ];

        Assert.All(
            outcomes,
            o => Assert.Equal(goesIn ? OutcomeKind.Saved : OutcomeKind.Refused, o.Kind)
        );
        Assert.All(
            outcomes,
            o => Assert.Equal(goesIn ? [] : ["Name"], o.Problems.Select(p => p.Field))
        );
    }

    [Fact]
    public async Task Space_around_names_and_notes_is_not_kept()
    {
        await using var store = shop.Copy();
        var course = Shop.Value(
            await store.Courses.CreateAsync(shop.Owner, "  Evenings \n", UnitSystem.Metric, Cancel)
        );
        var student = Shop.Value(
            await store.Students.AddAsync(shop.Owner, course.Id, new(" Ada ", " A ", true), Cancel)
        );
        var project = Shop.Value(
            await store.Projects.SaveAsync(
                shop.Owner,
                shop.Project.Id,
                "Shelf",
                " one\r\ntwo ",
                shop.Project.Version,
                Cancel
            )
        );

        Assert.Equal(("Evenings", UnitSystem.Metric), (course.Name, course.Rules.Unit));
        Assert.Equal(new("Ada", "A", true), student.Card);
        Assert.Equal("A", student.Shown);
        Assert.Equal("one\ntwo", project.Notes);
    }

    [Fact]
    public async Task A_long_alias_and_long_notes_are_refused_at_their_fields()
    {
        await using var store = shop.Copy();
        var alias = await store.Students.AddAsync(
            shop.Owner,
            shop.Course.Id,
            new("Dov", new string('a', StoreLimits.LongestAlias + 1), false),
            Cancel
        );
        var notes = await store.Projects.SaveAsync(
            shop.Owner,
            shop.Project.Id,
            "Shelf",
            new string('a', StoreLimits.LongestNotes + 1),
            shop.Project.Version,
            Cancel
        );

        Assert.Equal("Alias", Assert.Single(alias.Problems).Field);
        Assert.Equal("Notes", Assert.Single(notes.Problems).Field);
    }

    [Fact]
    public async Task Settings_that_are_not_right_are_refused_by_their_keys()
    {
        await using var store = shop.Copy();
        var rules = shop.Course.Rules with { RipKerf = Length.FromInches(3), HardGoingAbove = 0 };

        var outcome = await store.Courses.SaveRulesAsync(
            shop.Owner,
            shop.Course.Id,
            rules,
            shop.Course.Version,
            Cancel
        );

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Equal(["ripKerf", "hardGoingAbove"], outcome.Problems.Select(p => p.Field));
    }

    [Fact]
    public async Task A_pasted_list_goes_in_whole_or_not_at_all_and_problems_name_the_row()
    {
        await using var store = shop.Copy();
        Part[] rows =
        [
            Wood.Side("C"),
            Wood.Side("D") with
            {
                Quantity = 0,
            },
            Wood.Side("C"),
            Wood.Side("A"),
        ];

        var outcome = await store.Projects.AddPartsAsync(shop.Owner, shop.Project.Id, rows, Cancel);

        Assert.Equal(["2.Quantity", "3.Letter", "4.Letter"], outcome.Problems.Select(p => p.Field));
        var project = await store.Projects.FindAsync(shop.Owner, shop.Project.Id, Cancel);
        Assert.Equal(["A", "B"], project!.Parts.Select(p => p.Part.Letter));
    }

    [Fact]
    public async Task A_paste_of_five_thousand_rows_is_refused_in_one_sentence()
    {
        await using var store = shop.Copy();
        Part[] rows = [.. Enumerable.Repeat(Wood.Side(), 5000)];

        var outcome = await store.Projects.AddPartsAsync(shop.Owner, shop.Project.Id, rows, Cancel);

        Assert.Contains("60 rows", Assert.Single(outcome.Problems).Sentence);
    }

    [Fact]
    public async Task Rows_stay_in_order_as_they_are_added_moved_and_removed()
    {
        await using var store = shop.Copy();
        var (by, id) = (shop.Owner, shop.Project.Id);
        var added = Shop.Value(
            await store.Projects.AddPartsAsync(by, id, [Wood.Side("C"), Wood.Side("D")], Cancel)
        );
        await store.Projects.MovePartAsync(by, id, added[1].Id, -1, Cancel);
        await store.Projects.MovePartAsync(by, id, shop.Project.Parts[0].Id, -1, Cancel);
        await store.Projects.MovePartAsync(by, id, added[0].Id, 1, Cancel);
        await store.Projects.RemovePartAsync(by, id, shop.Project.Parts[1].Id, Cancel);
        await store.Projects.AddPartsAsync(by, id, [Wood.Side("B")], Cancel);

        var project = await store.Projects.FindAsync(by, id, Cancel);

        Assert.Equal(["A", "D", "C", "B"], project!.Parts.Select(p => p.Part.Letter));
    }

    [Fact]
    public async Task A_board_that_is_not_right_is_refused_at_its_fields()
    {
        await using var store = shop.Copy();
        var board = Wood.Pine("") with { SpeciesId = "x", Length = Length.Zero };

        var outcome = await store.Boards.SaveAsync(
            shop.Self,
            shop.Board.Id,
            board,
            shop.Board.Version,
            Cancel
        );

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Superset(
            new HashSet<string>(["Name", "Species", "Length"]),
            outcome.Problems.Select(p => p.Field).ToHashSet()
        );
    }

    [Fact]
    public async Task A_board_gets_a_key_of_its_own_whatever_it_came_with()
    {
        await using var store = shop.Copy();
        var board = Wood.Pine() with { Id = shop.Board.Board.Id };

        var added = Shop.Value(
            await store.Boards.AddAsync(shop.Self, shop.Student.Id, shop.Project.Id, board, Cancel)
        );

        Assert.NotEqual(shop.Board.Id, added.Id);
        Assert.Equal(added.Id.ToString("N"), added.Board.Id);
    }

    private static async Task TheLastAndOneMoreAsync<T>(Func<Task<Outcome<T>>> add)
    {
        Assert.Equal(OutcomeKind.Saved, (await add()).Kind);
        var oneMore = await add();
        Assert.Equal(OutcomeKind.Refused, oneMore.Kind);
        Assert.NotEmpty(Assert.Single(oneMore.Problems).Sentence);
    }

    private static (OutcomeKind Kind, IReadOnlyList<FieldProblem> Problems) Told<T>(
        Outcome<T> outcome
    ) => (outcome.Kind, outcome.Problems);
}

using ShopClass.Core.Measure;
using ShopClass.Web.Features.Projects;
using Xunit;

namespace ShopClass.Web.Tests.Projects;

public sealed class ProjectEditorTests
{
    [Fact]
    public async Task A_new_row_is_stored_when_its_last_field_is_typed_and_not_before()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var editor = Edit(shop);
        var row = editor.Add();
        Assert.Equal("B", row.Letter);

        row.Name = "shelf";
        await editor.ChangedAsync(row, "Name");
        row.Thickness = Length.FromInches(0, 3, 4);
        await editor.ChangedAsync(row, "Thickness");
        row.Width = Length.FromInches(6);
        await editor.ChangedAsync(row, "Width");
        Assert.Equal(RowState.NotSaved, row.State);
        Assert.Equal(["the length"], row.Missing);
        Assert.Null(row.ProblemAt("Length"));
        Assert.Single(await shop.StoredAsync());

        row.Length = Length.FromInches(20, 1, 2);
        await editor.ChangedAsync(row, "Length");

        Assert.Equal(RowState.Saved, row.State);
        Assert.Equal(["side", "shelf"], (await shop.StoredAsync()).Select(p => p.Part.Name));
    }

    [Fact]
    public async Task A_row_that_is_not_right_is_not_stored_and_says_where()
    {
        await using var shop = await Shop.OpenAsync(
            Shop.Part("A", "side"),
            Shop.Part("B", "shelf")
        );
        var editor = Edit(shop);
        var row = editor.Rows[1];

        row.Letter = "a";
        row.Quantity = "two";
        await editor.ChangedAsync(row, "Quantity");
        Assert.NotNull(row.ProblemAt("Quantity"));
        row.Quantity = "2";
        await editor.ChangedAsync(row, "Quantity");

        Assert.NotNull(row.ProblemAt("Letter"));
        Assert.Equal(RowState.NotSaved, row.State);
        Assert.Equal("B", (await shop.StoredAsync())[1].Part.Letter);
        Assert.Equal("B", editor.AsDrawn.Parts[1].Letter);
    }

    [Fact]
    public async Task What_is_typed_is_checked_while_something_else_is_still_missing()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var editor = Edit(shop);
        var row = editor.Add();

        row.Quantity = "5000";
        await editor.ChangedAsync(row, "Quantity");

        Assert.Contains("5000", row.ProblemAt("Quantity"), StringComparison.Ordinal);
        Assert.Null(row.ProblemAt("Width"));
        Assert.Contains("the width", row.Missing);
        Assert.DoesNotContain("how many", row.Missing);
    }

    [Fact]
    public async Task Half_an_open_dimension_is_asked_about()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var editor = Edit(shop);
        var row = editor.Rows[0];

        row.Open[2].Extra = Length.FromInches(0, 1, 2);
        await editor.ChangedAsync(row, "Open.Length");
        Assert.NotNull(row.ProblemAt("Open.Length"));
        Assert.Empty((await shop.StoredAsync())[0].Part.Open);

        row.Open[2].Until = "the ends dry-fit";
        await editor.ChangedAsync(row, "Open.Length");
        Assert.Equal(
            "the ends dry-fit",
            Assert.Single((await shop.StoredAsync())[0].Part.Open).Until
        );
    }

    [Fact]
    public async Task Two_fields_changed_in_quick_succession_are_both_stored()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var editor = Edit(shop);
        var row = editor.Rows[0];

        row.Name = "end";
        var first = editor.ChangedAsync(row, "Name");
        row.Quantity = "4";
        var second = editor.ChangedAsync(row, "Quantity");
        await Task.WhenAll(first, second);

        Assert.Equal(RowState.Saved, row.State);
        var stored = Assert.Single(await shop.StoredAsync()).Part;
        Assert.Equal(("end", 4), (stored.Name, stored.Quantity));
    }

    [Fact]
    public async Task A_row_changed_in_another_tab_waits_for_a_choice_and_can_be_kept()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var (here, elsewhere) = (Edit(shop), Edit(shop));
        elsewhere.Rows[0].Name = "theirs";
        await elsewhere.ChangedAsync(elsewhere.Rows[0], "Name");

        var row = here.Rows[0];
        row.Name = "mine";
        await here.ChangedAsync(row, "Name");
        Assert.Equal(RowState.ChangedElsewhere, row.State);
        Assert.Equal("theirs", row.Theirs!.Part.Name);
        Assert.Equal("mine", row.Name);
        Assert.Equal("theirs", (await shop.StoredAsync())[0].Part.Name);

        await here.KeepMineAsync(row);
        Assert.Equal(RowState.Saved, row.State);
        Assert.Equal("mine", (await shop.StoredAsync())[0].Part.Name);
    }

    [Fact]
    public async Task Theirs_can_be_taken_instead()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var (here, elsewhere) = (Edit(shop), Edit(shop));
        elsewhere.Rows[0].Name = "theirs";
        await elsewhere.ChangedAsync(elsewhere.Rows[0], "Name");
        here.Rows[0].Name = "mine";
        await here.ChangedAsync(here.Rows[0], "Name");

        here.TakeTheirs(here.Rows[0]);
        here.Rows[0].Quantity = "3";
        await here.ChangedAsync(here.Rows[0], "Quantity");

        var stored = (await shop.StoredAsync())[0].Part;
        Assert.Equal(("theirs", 3), (stored.Name, stored.Quantity));
    }

    [Fact]
    public async Task A_row_taken_out_elsewhere_can_be_kept_as_a_new_one()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var (here, elsewhere) = (Edit(shop), Edit(shop));
        await elsewhere.RemoveAsync(elsewhere.Rows[0]);
        here.Rows[0].Name = "mine";
        await here.ChangedAsync(here.Rows[0], "Name");
        Assert.Equal(RowState.ChangedElsewhere, here.Rows[0].State);

        await here.KeepMineAsync(here.Rows[0]);

        Assert.Equal("mine", Assert.Single(await shop.StoredAsync()).Part.Name);
    }

    [Fact]
    public async Task A_row_taken_out_comes_back_where_it_was()
    {
        await using var shop = await Shop.OpenAsync(
            Shop.Part("A", "side"),
            Shop.Part("B", "shelf"),
            Shop.Part("C", "rail")
        );
        var editor = Edit(shop);

        var removed = await editor.RemoveAsync(editor.Rows[0]);
        Assert.Equal(["B", "C"], (await shop.StoredAsync()).Select(p => p.Part.Letter));
        await editor.PutBackAsync(removed!);

        Assert.Equal(["A", "B", "C"], editor.Rows.Select(r => r.Letter));
        Assert.Equal(["A", "B", "C"], (await shop.StoredAsync()).Select(p => p.Part.Letter));
    }

    [Fact]
    public async Task A_copy_gets_the_next_letter_and_everything_else()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var editor = Edit(shop);
        editor.Rows[0].ShowFace = true;
        await editor.ChangedAsync(editor.Rows[0], "ShowFace");

        await editor.DuplicateAsync(editor.Rows[0]);

        var stored = await shop.StoredAsync();
        Assert.Equal(
            stored[0].Part with
            {
                Letter = "B",
                Open = stored[1].Part.Open,
            },
            stored[1].Part
        );
    }

    [Fact]
    public async Task A_pasted_list_is_added_whole_or_not_at_all()
    {
        await using var shop = await Shop.OpenAsync(Shop.Part("A", "side"));
        var editor = Edit(shop);

        var refused = await editor.AddAllAsync([Shop.Part("B", "shelf"), Shop.Part("A", "twin")]);
        Assert.Single(refused);
        Assert.Single(await shop.StoredAsync());

        Assert.Empty(await editor.AddAllAsync([Shop.Part("B", "shelf"), Shop.Part("C", "rail")]));
        Assert.Equal(["A", "B", "C"], (await shop.StoredAsync()).Select(p => p.Part.Letter));
        Assert.Equal(["A", "B", "C"], editor.Rows.Select(r => r.Letter));
    }

    private static ProjectEditor Edit(Shop shop) =>
        new(shop.Store.Projects, shop.Instructor, shop.Course.Rules, shop.Project);
}

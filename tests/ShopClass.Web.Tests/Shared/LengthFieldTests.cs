using Bunit;
using ShopClass.Core.Measure;
using ShopClass.Web.Features.Shared;
using Xunit;

namespace ShopClass.Web.Tests.Shared;

public sealed class LengthFieldTests : BunitContext
{
    private readonly List<Length?> given = [];

    [Theory]
    // Typed as the answer is written: nothing to add.
    [InlineData("9 1/4", UnitSystem.Inch, null)]
    [InlineData("9 1/4\"", UnitSystem.Inch, null)]
    [InlineData("9 1/4 in", UnitSystem.Inch, null)]
    [InlineData("235", UnitSystem.Metric, null)]
    [InlineData("235 mm", UnitSystem.Metric, null)]
    // Typed in another way.
    [InlineData("9.25", UnitSystem.Inch, "= 9 1/4 in")]
    [InlineData("9-1/4", UnitSystem.Inch, "= 9 1/4 in")]
    [InlineData("½", UnitSystem.Inch, "= 1/2 in")]
    [InlineData("3' 4 1/2\"", UnitSystem.Inch, "= 40 1/2 in")]
    [InlineData("23.5 cm", UnitSystem.Metric, "= 235 mm")]
    [InlineData("9 1/4 in", UnitSystem.Metric, "= 234.95 mm")]
    // 235 / 25.4 = 9.2520 in, which is on no inch rule.
    [InlineData("235mm", UnitSystem.Inch, "about 9 1/4 in")]
    public void Says_what_it_read_where_the_text_does_not(
        string typed,
        UnitSystem unit,
        string? note
    )
    {
        var field = RenderField(unit);

        field.Find("input").Change(typed);

        Assert.Equal(note, field.FindAll(".field-note").SingleOrDefault()?.TextContent);
        Assert.Equal(typed, field.Find("input").GetAttribute("value"));
        Assert.NotNull(Assert.Single(given));
    }

    [Theory]
    [InlineData("nine")]
    [InlineData("-3")]
    [InlineData("1 mile")]
    [InlineData("<script>alert(1)</script>")]
    public void Keeps_what_cannot_be_read_and_says_why_at_the_field(string typed)
    {
        var field = RenderField(UnitSystem.Inch, value: Length.FromInches(6));

        field.Find("input").Change(typed);

        var input = field.Find("input");
        var problem = field.Find(".field-problem");
        Assert.Equal(typed, input.GetAttribute("value"));
        Assert.Equal("true", input.GetAttribute("aria-invalid"));
        Assert.Equal(problem.Id, input.GetAttribute("aria-describedby"));
        Assert.Equal(LengthReader.Read(typed, UnitSystem.Inch).Problem, problem.TextContent);
        Assert.Empty(field.FindAll("script"));
        Assert.Null(Assert.Single(given));
    }

    [Fact]
    public void An_owner_that_keeps_its_old_value_does_not_wipe_what_was_typed()
    {
        var field = RenderField(UnitSystem.Inch, value: Length.FromInches(6));
        field.Find("input").Change("6 and a bit");

        field.Render(p => p.Add(f => f.Value, Length.FromInches(6)).Add(f => f.HelperText, "x"));

        Assert.Equal("6 and a bit", field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void Another_value_from_its_owner_replaces_the_text()
    {
        var field = RenderField(UnitSystem.Inch, value: Length.FromInches(6));
        field.Find("input").Change("nonsense");

        field.Render(p => p.Add(f => f.Value, Length.FromInches(7, 1, 2)));

        Assert.Equal("7 1/2", field.Find("input").GetAttribute("value"));
        Assert.Null(field.Find("input").GetAttribute("aria-invalid"));
    }

    [Fact]
    public void What_it_was_given_back_leaves_the_text_as_typed()
    {
        var field = RenderField(UnitSystem.Inch);
        field.Find("input").Change("9.25");

        field.Render(p => p.Add(f => f.Value, given[0]));

        Assert.Equal("9.25", field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void An_empty_field_is_wrong_only_where_a_length_is_required()
    {
        var optional = RenderField(UnitSystem.Inch, value: Length.FromInches(6));
        optional.Find("input").Change("");
        Assert.Empty(optional.FindAll(".field-problem"));

        var required = RenderField(UnitSystem.Inch, value: Length.FromInches(6), required: true);
        required.Find("input").Change(" ");
        Assert.Single(required.FindAll(".field-problem"));

        Assert.Equal([null, null], given);
    }

    [Fact]
    public void A_length_off_the_inch_rule_is_shown_so_that_saving_it_again_changes_nothing()
    {
        var stored = Length.FromMillimetres(235);
        var field = RenderField(UnitSystem.Inch, value: stored);
        var shown = field.Find("input").GetAttribute("value");

        field.Find("input").Change(shown!);

        Assert.Equal(stored, Assert.Single(given));
    }

    [Fact]
    public void Its_label_belongs_to_its_input_and_the_owners_sentence_is_shown()
    {
        var field = Render<LengthField>(p =>
            p.Add(f => f.Label, "Width").Add(f => f.Error, "Wider than any board.")
        );

        Assert.Equal(field.Find("input").Id, field.Find("label").GetAttribute("for"));
        Assert.Equal("Wider than any board.", field.Find(".field-problem").TextContent);
    }

    private IRenderedComponent<LengthField> RenderField(
        UnitSystem unit,
        Length? value = null,
        bool required = false
    ) =>
        Render<LengthField>(p =>
            p.Add(f => f.Label, "Width")
                .Add(f => f.Unit, unit)
                .Add(f => f.Value, value)
                .Add(f => f.Required, required)
                .Add(f => f.ValueChanged, given.Add)
        );
}

using AngleSharp.Dom;
using Bunit;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Data.Courses;
using ShopClass.Web.Features.Courses;

namespace ShopClass.Web.Tests.Courses;

public sealed class SettingsPageTests : IAsyncLifetime
{
    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    private Office office = default!;

    public async ValueTask InitializeAsync() => office = await Office.OpenAsync();

    public ValueTask DisposeAsync() => office.DisposeAsync();

    [Fact]
    public void Every_length_shows_its_default_and_what_stands_behind_it()
    {
        var page = Open();

        var rows = page.FindAll(".rule")
            .Where(r => r.QuerySelector(".length-field") is not null)
            .ToList();

        Assert.Equal(RuleBook.Lengths.Count, rows.Count);
        Assert.All(
            RuleBook.Lengths.Zip(rows),
            pair =>
            {
                Assert.Contains(
                    pair.First.Meaning,
                    pair.Second.TextContent,
                    StringComparison.Ordinal
                );
                Assert.Contains(
                    pair.First.Source,
                    pair.Second.TextContent,
                    StringComparison.Ordinal
                );
            }
        );
    }

    [Fact]
    public async Task A_saved_length_is_what_the_course_has_from_then_on()
    {
        var page = Open();

        await Type(page, "crosscutKerf", "3/64");
        await Save(page);

        Assert.Equal(Length.FromInches(0, 3, 64), (await Stored()).Rules.CrosscutKerf);
        Assert.Contains("Saved", page.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a hair", "crosscutKerf")]
    [InlineData("", "crosscutKerf")]
    [InlineData("-1/16", "crosscutKerf")]
    [InlineData("2 miles", "crosscutKerf")]
    [InlineData("9", "crosscutKerf")]
    [InlineData("30", "benchHookLimit")]
    public async Task What_cannot_be_is_said_at_the_field_and_nothing_is_saved(
        string typed,
        string key
    )
    {
        var before = await Stored();
        var page = Open();

        await Type(page, key, typed);
        await Save(page);

        var field = page.Find($"#{key}");
        Assert.Equal("true", field.GetAttribute("aria-invalid"));
        Assert.NotEqual(
            "",
            page.Find($"#{field.GetAttribute("aria-describedby")}").TextContent.Trim()
        );
        Assert.Equal(before, await Stored());
    }

    [Fact]
    public async Task The_most_strips_in_a_glue_up_are_chosen_and_kept()
    {
        var page = Open();

        await page.Find("#most-strips").ChangeAsync(new() { Value = "3" });
        await Save(page);

        Assert.Equal(3, (await Stored()).Rules.MostGlueUpStrips);
    }

    [Fact]
    public async Task Back_to_the_default_takes_one_length_back()
    {
        var page = Open();
        await Type(page, "ripKerf", "3/32");
        await Type(page, "crosscutKerf", "3/64");

        await page.Find("button[aria-label='Rip kerf: back to the default']").ClickAsync(new());
        await Save(page);

        var rules = (await Stored()).Rules;
        Assert.Equal(CourseRules.DefaultsFor(UnitSystem.Inch).RipKerf, rules.RipKerf);
        Assert.Equal(Length.FromInches(0, 3, 64), rules.CrosscutKerf);
    }

    [Fact]
    public async Task Another_unit_converts_nothing_and_offers_its_own_defaults()
    {
        var page = Open();

        await page.FindAll("input[name=unit]")[1].ChangeAsync(new() { Value = "on" });

        Assert.Equal("25.4", page.Find("#lengthAllowance").GetAttribute("value"));
        var offer = page.FindAll("button")
            .Single(b => b.TextContent.Contains("metric defaults", StringComparison.Ordinal));
        await offer.ClickAsync(new());
        Assert.Equal("25", page.Find("#lengthAllowance").GetAttribute("value"));
        await Save(page);
        Assert.Equal(CourseRules.DefaultsFor(UnitSystem.Metric), (await Stored()).Rules);
    }

    [Fact]
    public async Task What_somebody_else_saved_is_shown_beside_what_was_typed()
    {
        var page = Open();
        await Type(page, "crosscutKerf", "3/64");
        var theirs = office.Course.Rules with
        {
            CrosscutKerf = Length.FromInches(0, 1, 32),
            PlaningTaught = false,
        };
        await office.Store.Courses.SaveRulesAsync(
            office.Instructor,
            office.Course.Id,
            theirs,
            office.Course.Version,
            Cancel
        );

        await Save(page);

        Assert.Equal("3/64", page.Find("#crosscutKerf").GetAttribute("value"));
        Assert.Contains("Stored now: 1/32", page.Markup, StringComparison.Ordinal);
        Assert.Contains("planing is not taught", page.Markup, StringComparison.Ordinal);
        Assert.Equal(theirs, (await Stored()).Rules);
        await Save(page);
        Assert.Equal(Length.FromInches(0, 3, 64), (await Stored()).Rules.CrosscutKerf);
    }

    [Theory]
    [InlineData("0.6", 60)]
    [InlineData("0,62", 62)]
    public async Task Specific_gravity_is_typed_as_books_print_it(string typed, int hundredths)
    {
        var page = Open();

        await page.Find("#hard-going").ChangeAsync(new() { Value = typed });
        await Save(page);

        Assert.Equal(hundredths, (await Stored()).Rules.HardGoingAbove);
    }

    // Wood Handbook (FPL-GTR-282), Table 4-2: 70 °F (21 °C), 40 % air, 7.7 % moisture.
    [Fact]
    public async Task Humidity_is_typed_in_per_cent_and_says_what_wood_comes_to_there()
    {
        var page = Open();

        await page.Find("#shop-humidity").ChangeAsync(new() { Value = "40 %" });
        Assert.Contains(
            "Wood comes to about 7.7 % moisture",
            page.Markup,
            StringComparison.Ordinal
        );
        await page.Find("#room-humidity").ChangeAsync(new() { Value = "dry" });
        await Save(page);
        Assert.Contains(
            "\"dry\" is not a humidity",
            page.Find("#room-humidity-problem").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("dry", page.Find("#room-humidity").GetAttribute("value"));
        Assert.Equal(RuleBook.UsualShopHumidity, (await Stored()).Rules.ShopHumidity);

        await page.Find("#room-humidity").ChangeAsync(new() { Value = "9" });
        await Save(page);
        Assert.Contains(
            "10 to 90 %",
            page.Find("#room-humidity-problem").TextContent,
            StringComparison.Ordinal
        );

        await page.Find("#room-humidity").ChangeAsync(new() { Value = "30" });
        await Save(page);
        var rules = (await Stored()).Rules;
        Assert.Equal((40, 30), (rules.ShopHumidity, rules.RoomHumidity));
    }

    [Fact]
    public async Task Settings_of_an_archived_course_are_read_only()
    {
        await office.Store.Courses.ArchiveAsync(
            office.Instructor,
            office.Course.Id,
            archived: true,
            office.Course.Version,
            Cancel
        );

        var page = Open();

        Assert.Empty(page.FindAll(".save-bar"));
        Assert.True(page.Find("#crosscutKerf").HasAttribute("readonly"));
    }

    private IRenderedComponent<SettingsPage> Open() =>
        office.Open<SettingsPage>(p => p.Add(x => x.CourseId, office.Course.Id));

    private async Task<CourseView> Stored() =>
        (await office.Store.Courses.FindAsync(office.Instructor, office.Course.Id, Cancel))!;

    private static Task Type(IRenderedComponent<SettingsPage> page, string key, string text) =>
        page.Find($"#{key}").ChangeAsync(new() { Value = text });

    private static Task Save(IRenderedComponent<SettingsPage> page) =>
        page.Find(".save-bar button").ClickAsync(new());
}

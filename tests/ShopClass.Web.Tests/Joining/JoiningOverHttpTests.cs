using System.Net;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Joining;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Joining;

public sealed class JoiningOverHttpTests : IAsyncLifetime
{
    private readonly WorkingShop shop = new();
    private InstructorViewer owner = default!;
    private CourseView course = default!;
    private DoorView door = default!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        owner = await shop.AddInstructorAsync("teacher");
        course = (
            await shop.Get<CourseStore>()
                .CreateAsync(owner, "Evening class", Core.Measure.UnitSystem.Inch, Cancel)
        ).Value!;
        door = (await shop.Get<DoorStore>().OpenAsync(owner, course.Id, 7, true, Cancel)).Value!;
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_listed_student_types_code_and_name_and_is_in()
    {
        await AddAsync("Mira Ash");
        var visitor = shop.Visit();

        var arrived = await JoinAsync(visitor, "Mira Ash");

        Assert.Equal("/my/steps", arrived.Headers.Location!.AbsolutePath());
        var cookie = Assert.Single(
            arrived.Headers.GetValues("Set-Cookie"),
            c => c.StartsWith(DeviceSession.CookieName, StringComparison.Ordinal)
        );
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        var home = await visitor.Read("/my");
        Assert.Contains("Mira Ash", home.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_else_waits_and_is_in_once_the_instructor_says_so()
    {
        var visitor = shop.Visit();
        var arrived = await JoinAsync(visitor, "Late Comer");
        Assert.Equal("/join/waiting", arrived.Headers.Location!.AbsolutePath());
        Assert.Contains(
            "Late Comer",
            (await visitor.Read("/join/waiting")).Body!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("/join/waiting", (await visitor.Get("/my")).Headers.Location!.AbsolutePath());

        var doors = shop.Get<DoorStore>();
        var device = Assert.Single(await doors.DevicesAsync(owner, course.Id, Cancel));
        await doors.AdmitAsync(owner, device.Id, null, Cancel);

        Assert.Equal(
            "/my/steps",
            (await visitor.Get("/join/waiting")).Headers.Location!.AbsolutePath()
        );
        await visitor.Read("/my");
    }

    [Fact]
    public async Task Who_was_turned_away_or_ended_is_out_at_the_next_request()
    {
        await AddAsync("Mira Ash");
        var visitor = shop.Visit();
        await JoinAsync(visitor, "Mira Ash");
        await visitor.Read("/my");

        var doors = shop.Get<DoorStore>();
        var device = Assert.Single(await doors.DevicesAsync(owner, course.Id, Cancel));
        await doors.EndAsync(owner, device.Id, Cancel);

        var response = await visitor.Get("/my");
        Assert.Equal("/join/waiting", response.Headers.Location!.AbsolutePath());
        Assert.Equal(
            "/join",
            (await visitor.Get("/join/waiting")).Headers.Location!.AbsolutePath()
        );
    }

    [Fact]
    public async Task Signing_out_ends_the_device_and_clears_what_is_kept_on_it()
    {
        await AddAsync("Mira Ash");
        var visitor = shop.Visit();
        await JoinAsync(visitor, "Mira Ash");

        var gone = await visitor.Submit("/my", "Sign out");

        Assert.Equal("\"storage\"", Assert.Single(gone.Headers.GetValues("Clear-Site-Data")));
        Assert.Empty(await shop.Get<DoorStore>().DevicesAsync(owner, course.Id, Cancel));
        Assert.Equal(HttpStatusCode.Redirect, (await visitor.Get("/my")).StatusCode);
    }

    [Theory]
    [InlineData("CDFG-HJKM")]
    [InlineData("0000 0000")]
    [InlineData("<script>alert(1)</script>")]
    public async Task A_wrong_code_is_refused_with_a_sentence(string code)
    {
        var response = await shop.Visit().Submit("/join", "Go on", ("code", code));

        var page = await Visitor.Parse(response);
        Assert.Contains(
            "not a code of a class",
            page.QuerySelector("[role=alert]")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Empty(page.QuerySelectorAll("main script"));
        Assert.DoesNotContain("<script>alert", page.Source.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_of_300_characters_and_a_script_for_a_name_leave_a_sentence_or_text()
    {
        var visitor = shop.Visit();
        var tooLong = await Visitor.Parse(await JoinAsync(visitor, new string('x', 300)));
        Assert.Contains(
            "300 characters",
            tooLong.QuerySelector("[role=alert]")!.TextContent,
            StringComparison.Ordinal
        );

        await JoinAsync(visitor, "<img src=x onerror=alert(1)>");
        var waiting = await visitor.Read("/join/waiting");
        Assert.Empty(waiting.QuerySelectorAll("img"));
        Assert.Contains("<img src=x", waiting.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Guessing_is_stopped_and_even_the_right_code_must_wait()
    {
        var guesser = shop.Visit();
        for (var i = 0; i < CodeTries.FromOneAddress; i++)
            await guesser.Submit("/join", "Go on", ("code", "CDFGHJKM"));

        var response = await guesser.Submit("/join", "Go on", ("code", door.Code));

        Assert.Contains(
            "Too many wrong codes",
            (await Visitor.Parse(response)).QuerySelector("[role=alert]")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_post_without_our_token_is_refused()
    {
        var response = await shop.Visit()
            .Post(
                "/join",
                new Dictionary<string, string>(StringComparer.Ordinal)
                {
                    ["_handler"] = "join",
                    ["Entry.Code"] = door.Code,
                }
            );

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task A_one_time_code_asks_whether_it_is_them()
    {
        var ada = await AddAsync("Ada");
        var code = (
            await shop.Get<DoorStore>().NewStudentCodeAsync(owner, ada.Id, false, Cancel)
        ).Value!;
        var visitor = shop.Visit();

        var asked = await Visitor.Parse(
            await visitor.Submit("/join", "Go on", ("code", JoinCode.Write(code)))
        );
        Assert.Contains("Are you Ada?", asked.Body!.TextContent, StringComparison.Ordinal);
        var arrived = await visitor.Post("/join", Visitor.Hidden(asked));

        Assert.Equal("/my/steps", arrived.Headers.Location!.AbsolutePath());
    }

    [Fact]
    public async Task The_students_pages_carry_no_name_and_no_code_in_an_address()
    {
        await AddAsync("Mira Ash");
        var visitor = shop.Visit();

        var arrived = await JoinAsync(visitor, "Mira Ash");

        Assert.DoesNotContain(
            "Mira",
            arrived.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            door.Code,
            arrived.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
        Assert.True((await visitor.Get("/join")).Headers.CacheControl!.NoStore);
    }

    private async Task<StudentView> AddAsync(string name) =>
        (
            await shop.Get<StudentStore>()
                .AddAsync(owner, course.Id, new(name, "", IsLeftHanded: false), Cancel)
        ).Value!;

    private async Task<HttpResponseMessage> JoinAsync(Visitor visitor, string name)
    {
        var asked = await Visitor.Parse(
            await visitor.Submit("/join", "Go on", ("code", JoinCode.Write(door.Code)))
        );
        var fields = Visitor.Hidden(asked);
        fields["Entry.Name"] = name;
        return await visitor.Post("/join", fields);
    }
}

internal static class Addresses
{
    /// <summary>The path, whether the address was given whole or not.</summary>
    public static string AbsolutePath(this Uri address) =>
        new Uri(new Uri("https://shop.test"), address).AbsolutePath;
}

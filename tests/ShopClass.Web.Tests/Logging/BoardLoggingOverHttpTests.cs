using System.Net;
using System.Net.Http.Headers;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Data.Students.Logging;
using ShopClass.Web.Features.Logging;
using ShopClass.Web.Tests.Access;
using ShopClass.Web.Tests.Progress;

namespace ShopClass.Web.Tests.Logging;

/// <summary>Boards logged with no script at all, and what must not happen.</summary>
public sealed class BoardLoggingOverHttpTests : IAsyncLifetime
{
    private readonly Benches shop = new();
    private Guid _project;
    private StudentView _student = default!;
    private InstructorViewer _owner = default!;
    private Visitor _visitor = default!;
    private HttpClient _phone = default!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private StudentViewer Me => new(_student.Id, _student.CourseId);

    public async ValueTask InitializeAsync()
    {
        var (owner, course, students) = await shop.DemoAsync();
        _owner = owner;
        _student = students.Single(s => s.Shown == "Wendell Frost");
        _project = (await shop.Get<ProjectStore>().ListAsync(owner, course.Id, Cancel))[0].Id;
        _phone = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        _visitor = await new Visitor(_phone).OpenDemoAs(_student.Id);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_board_is_logged_screen_by_screen_and_judged_at_once()
    {
        var before = (await BoardsAsync()).Count;
        await AnswerAllAsync();
        var entry = await shop.Get<BoardEntryStore>().FindAsync(Me, _student.Id, _project, Cancel);

        var logged = await PostAsync(EntryScreen.Log, ("Entry.Text", "Mine"), ("Entry.Go", "log"));

        Assert.StartsWith("/my/board?", logged.Headers.Location!.OriginalString.Split("test")[^1]);
        var boards = await BoardsAsync();
        Assert.Equal(before + 1, boards.Count);
        Assert.Equal(entry!.Id, boards[^1].Id);
        var page = await _visitor.Read($"/my/board?project={_project}");
        Assert.NotNull(page.QuerySelector(".verdict"));
        Assert.Contains("Mine", page.Body!.TextContent, StringComparison.Ordinal);

        // Sent again, as a phone does that never heard the answer.
        var again = await PostAsync(
            EntryScreen.Log,
            ("Entry.Text", "Mine"),
            ("Entry.Go", "log"),
            ("Entry.Board", entry.Id.ToString())
        );
        Assert.Equal(HttpStatusCode.Redirect, again.StatusCode);
        Assert.Equal(before + 1, (await BoardsAsync()).Count);
        Assert.Null(await shop.Get<BoardEntryStore>().FindAsync(Me, _student.Id, _project, Cancel));
    }

    [Fact]
    public async Task What_is_wrong_is_said_at_its_field_and_stays_as_typed()
    {
        var page = await Visitor.Parse(
            await PostAsync(EntryScreen.Length, ("Entry.Text", "so <b>long</b>"))
        );
        Assert.NotEmpty(page.QuerySelector("#size-problem")!.TextContent);
        Assert.Equal("so <b>long</b>", page.QuerySelector("#size")!.GetAttribute("value"));

        var unit = await Visitor.Parse(await PostAsync(EntryScreen.Start, ("Entry.Text", "235")));
        Assert.Contains(
            "235 mm",
            unit.QuerySelector("#size-problem")!.TextContent,
            StringComparison.Ordinal
        );

        await AnswerAllAsync();
        var named = await Visitor.Parse(
            await PostAsync(
                EntryScreen.Log,
                ("Entry.Text", new string('n', 300)),
                ("Entry.Go", "log")
            )
        );
        Assert.NotEmpty(named.QuerySelector("#name-problem")!.TextContent);
        Assert.Equal(300, named.QuerySelector("#name")!.GetAttribute("value")!.Length);

        await PostAsync(
            EntryScreen.Log,
            ("Entry.Text", "<script>alert(1)</script>"),
            ("Entry.Go", "log")
        );
        var shown = await _visitor.Read($"/my/board?project={_project}");
        Assert.Empty(shown.QuerySelectorAll("main script"));
        Assert.Contains(
            "<script>alert(1)</script>",
            shown.QuerySelectorAll("h2").Select(h => h.TextContent)
        );
    }

    [Fact]
    public async Task A_cup_and_a_twist_are_asked_for_checked_and_kept_with_the_board()
    {
        await AnswerAllAsync();
        var wrong = await Visitor.Parse(
            await PostAsync(EntryScreen.Flat, ("Entry.Cup", "a bit <b>"), ("Entry.Twist", "2 1/2"))
        );
        Assert.NotEmpty(wrong.QuerySelector("#cup-problem")!.TextContent);
        Assert.Equal("a bit <b>", wrong.QuerySelector("#cup")!.GetAttribute("value"));
        // The same sentence as the instructor's board page gives, from the same check.
        Assert.Contains(
            "The most taken here is 1 in",
            wrong.QuerySelector("#twist-problem")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("2 1/2", wrong.QuerySelector("#twist")!.GetAttribute("value"));

        await PostAsync(EntryScreen.Flat, ("Entry.Cup", "1/8"), ("Entry.Twist", "6 mm"));
        var last = await _visitor.Read(EntryScreens.Address(_project, EntryScreen.Log));
        Assert.Contains("cup 1/8", last.Body!.TextContent, StringComparison.Ordinal);
        await PostAsync(EntryScreen.Log, ("Entry.Text", "Mine"), ("Entry.Go", "log"));

        var board = (await BoardsAsync())[^1].Board;
        Assert.Equal(Core.Measure.Length.FromInches(0, 1, 8), board.Cup);
        Assert.Equal(Core.Measure.Length.FromMillimetres(6), board.Twist);
    }

    [Fact]
    public async Task A_flat_board_is_one_tap_and_takes_back_what_was_measured()
    {
        await AnswerAllAsync();
        await PostAsync(EntryScreen.Flat, ("Entry.Cup", "1/8"), ("Entry.Twist", ""));
        await PostAsync(EntryScreen.Flat, ("Entry.Cup", "1/8"), ("Entry.Go", "flat"));
        await PostAsync(EntryScreen.Log, ("Entry.Text", "Mine"), ("Entry.Go", "log"));

        var board = (await BoardsAsync())[^1].Board;
        Assert.Equal(
            (Core.Measure.Length.Zero, Core.Measure.Length.Zero),
            (board.Cup, board.Twist)
        );
    }

    [Fact]
    public async Task A_tap_sent_twice_marks_one_place()
    {
        await AnswerAllAsync();
        foreach (var _ in Enumerable.Range(0, 3))
            await PostAsync(
                EntryScreen.Bad,
                ("Entry.Go", "add"),
                ("Entry.Count", "0"),
                ("Entry.X", "0.5"),
                ("Entry.Y", "0.5")
            );

        var page = await _visitor.Read(EntryScreens.Address(_project, EntryScreen.Bad));
        Assert.Single(page.QuerySelectorAll(".step-list li"));
    }

    [Fact]
    public async Task A_photo_is_kept_bare_and_seen_by_its_student_and_their_instructor_alone()
    {
        await AnswerAllAsync();
        var sent = await SendPhotoAsync(Photos.Jpeg(2000, 1500));
        Assert.Equal(HttpStatusCode.Redirect, sent.StatusCode);
        await PostAsync(EntryScreen.Log, ("Entry.Text", "Mine"), ("Entry.Go", "log"));
        var address = $"/files/board/{(await BoardsAsync())[^1].Id}/photo";

        var mine = await _visitor.Get(address);

        Assert.Equal("image/jpeg", mine.Content.Headers.ContentType!.MediaType);
        Assert.True(mine.Headers.CacheControl!.NoStore);
        Assert.False(Photos.Holds(await mine.Content.ReadAsByteArrayAsync(Cancel), "Exif"));
        var instructor = await shop.Visit().OpenDemo();
        Assert.Equal(HttpStatusCode.OK, (await instructor.Get(address)).StatusCode);
        var (_, _, students) = await shop.DemoAsync();
        var classmate = await shop.Visit().OpenDemoAs(students.First(s => s.Id != _student.Id).Id);
        Assert.Equal(HttpStatusCode.NotFound, (await classmate.Get(address)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await shop.Visit().Get(address)).StatusCode);
    }

    [Fact]
    public async Task A_photo_of_40_megabytes_and_a_file_that_is_none_get_a_sentence_and_nothing_is_lost()
    {
        await AnswerAllAsync();
        var before = await EntryAsync();

        foreach (
            var (file, word) in (IEnumerable<(byte[], string)>)
                [
                    (new byte[40 * 1024 * 1024], "larger than"),
                    ([.. "%PDF-1.7 no photo"u8], "no photo"),
                    ([], "No photo was chosen"),
                ]
        )
        {
            var sent = await SendPhotoAsync(file);
            var page = await _visitor.Read(sent.Headers.Location!.OriginalString);
            Assert.Contains(
                word,
                page.QuerySelector("#photo-problem")!.TextContent,
                StringComparison.Ordinal
            );
        }

        Assert.Equal(before, await EntryAsync());
    }

    [Fact]
    public async Task A_photo_without_our_form_is_refused()
    {
        using var form = Multipart(Photos.Jpeg(100, 100), token: null);
        var answer = await _phone.PostAsync(PhotoAddress, form, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task Every_screen_is_light_and_private()
    {
        await AnswerAllAsync();
        await PostAsync(EntryScreen.Bad, ("Entry.Go", "add"));
        _phone.DefaultRequestHeaders.AcceptEncoding.ParseAdd("br");
        foreach (
            var address in EntryScreens
                .All.Select(s => EntryScreens.Address(_project, s))
                .Append(EntryScreens.PlaceAddress(_project, 1))
                .Append($"/my/board?project={_project}")
        )
        {
            var answer = await _visitor.Get(address);
            var bytes = await answer.Content.ReadAsByteArrayAsync(Cancel);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.True(bytes.Length <= 25 * 1024, $"{address}: {bytes.Length} bytes");
            Assert.True(answer.Headers.CacheControl!.NoStore);
        }
    }

    [Fact]
    public async Task A_project_of_another_course_has_no_screens()
    {
        var other = await shop.AddInstructorAsync("other@school.test");
        var course = (
            await shop.Get<Data.Courses.CourseStore>()
                .CreateAsync(other, "Other", Core.Measure.UnitSystem.Inch, Cancel)
        ).Value!;
        var theirs = (
            await shop.Get<ProjectStore>().CreateAsync(other, course.Id, "Box", Cancel)
        ).Value!;

        Assert.Equal(
            HttpStatusCode.NotFound,
            (await _visitor.Get(EntryScreens.Address(theirs.Id, EntryScreen.Length))).StatusCode
        );
    }

    [Fact]
    public async Task Where_the_course_wants_a_yes_nothing_is_sawn_before_it()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var me = new StudentViewer(student.Id, student.CourseId);
        var yes = shop.Get<BoardYesStore>();
        Assert.True((await yes.WantAsync(owner, student.CourseId, true, Cancel)).IsSaved);
        var phone = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        await new Visitor(phone).OpenDemoAs(student.Id);

        await TickUpToTheSawAsync(plan, phone);
        var saw = plan.Progress.Steps.First(s => s.Step.Saw is not null).Step.Number;
        var refused = await Benches.SendAsync(phone, Benches.Entry(plan, StepActionKind.Tick, saw));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains(
            "has not said yes",
            await refused.Content.ReadAsStringAsync(Cancel),
            StringComparison.Ordinal
        );

        foreach (
            var board in await shop.Get<BoardStore>()
                .ListAsync(me, student.Id, plan.Plan.ProjectId, Cancel)
        )
        {
            Assert.Equal(
                OutcomeKind.NotFound,
                (await yes.SayAsync(me, board.Id, board.Version, "", Cancel)).Kind
            );
            Assert.True((await yes.SayAsync(owner, board.Id, board.Version, "", Cancel)).IsSaved);
        }

        var taken = await Benches.SendAsync(phone, Benches.Entry(plan, StepActionKind.Tick, saw));
        Assert.Equal(HttpStatusCode.OK, taken.StatusCode);
    }

    private static async Task TickUpToTheSawAsync(Data.Progress.PlanInHand plan, HttpClient phone)
    {
        foreach (var state in plan.Progress.Steps.TakeWhile(s => s.Step.Saw is null))
        {
            var answer = await Benches.SendAsync(
                phone,
                Benches.Entry(plan, StepActionKind.Tick, state.Step.Number)
            );
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
    }

    private Uri PhotoAddress => new($"/my/board/new/{_project}/photo/send", UriKind.Relative);

    private Task<IReadOnlyList<BoardView>> BoardsAsync() =>
        shop.Get<BoardStore>().ListAsync(_owner, _student.Id, _project, Cancel);

    private async Task<string> EntryAsync() =>
        (await shop.Get<BoardEntryStore>().FindAsync(Me, _student.Id, _project, Cancel))!.Draft;

    private Task AnswerAllAsync() => _visitor.AnswerAllAsync(_project);

    private Task<HttpResponseMessage> PostAsync(
        EntryScreen screen,
        params (string Name, string Value)[] filled
    ) => _visitor.AnswerAsync(_project, screen, filled);

    private async Task<HttpResponseMessage> SendPhotoAsync(byte[] file)
    {
        var page = await _visitor.Read(EntryScreens.Address(_project, EntryScreen.Photo));
        var token = page.QuerySelector("form[data-photo] input[name=__RequestVerificationToken]")!
            .GetAttribute("value");
        using var form = Multipart(file, token);
        return await _phone.PostAsync(PhotoAddress, form, Cancel);
    }

    private static MultipartFormDataContent Multipart(byte[] file, string? token)
    {
        var photo = new ByteArrayContent(file);
        photo.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");
        var form = new MultipartFormDataContent { { photo, "photo", "board.jpg" } };
        if (token is not null)
            form.Add(new StringContent(token), "__RequestVerificationToken");
        return form;
    }
}

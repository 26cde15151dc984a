using System.Net;
using ShopClass.Core.Progress;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Progress;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Joining;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Progress;

/// <summary>Every kind of visitor against every address about a student's work, their own and another's: each cell is expected.</summary>
public sealed class WhoMayOverHttpTests(Benches shop) : IClassFixture<Benches>
{
    private static readonly string[] Visitors =
    [
        "nobody",
        "self",
        "classmate",
        "student of another course",
        "waiting at the door",
        "instructor",
        "another instructor",
    ];

    // What is asked about the student's work, and who is answered.
    private static readonly Dictionary<string, string[]> Operations = new(StringComparer.Ordinal)
    {
        ["GET /my/steps/{plan}/1"] = ["self"],
        ["GET /my/steps/{plan}/all"] = ["self"],
        ["say a note"] = ["self"],
        ["say it is checked off"] = [],
        ["GET /courses/{course}/joining"] = ["instructor"],
        ["GET /courses/{course}/room"] = ["instructor"],
        ["GET /courses/{course}/students/{student}"] = ["self", "instructor"],
        ["GET /sheets/kit/{plan}"] = ["self", "instructor"],
    };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, bool> Cells
    {
        get
        {
            var cells = new TheoryData<string, string, bool>();
            foreach (var (operation, who) in Operations)
            foreach (var visitor in Visitors)
                cells.Add(visitor, operation, who.Contains(visitor));
            return cells;
        }
    }

    [Theory]
    [MemberData(nameof(Cells))]
    public async Task Each_is_answered_or_told_that_it_is_not_there(
        string visitor,
        string operation,
        bool may
    )
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var before = await SaidAsync(plan);
        var client = await ComeAsync(visitor);

        var response = operation.StartsWith("GET ", StringComparison.Ordinal)
            ? await client.GetAsync(
                new Uri(
                    operation[4..]
                        .Replace("{plan}", plan.Plan.Id.ToString(), StringComparison.Ordinal)
                        .Replace("{course}", plan.CourseId.ToString(), StringComparison.Ordinal)
                        .Replace("{student}", student.Id.ToString(), StringComparison.Ordinal),
                    UriKind.Relative
                ),
                Cancel
            )
            : await Benches.SendAsync(
                client,
                Benches.Entry(
                    plan,
                    operation == "say a note"
                        ? StepActionKind.PleaseCheck
                        : StepActionKind.CheckedOff
                )
            );

        Assert.Equal(may, response.StatusCode == HttpStatusCode.OK);
        if (!may)
        {
            Assert.Contains(
                response.StatusCode,
                (HttpStatusCode[])
                    [
                        HttpStatusCode.NotFound,
                        HttpStatusCode.Redirect,
                        HttpStatusCode.UnprocessableEntity,
                        HttpStatusCode.Unauthorized,
                    ]
            );
            var text = await response.Content.ReadAsStringAsync(Cancel);
            Assert.DoesNotContain(student.Card.Name, text, StringComparison.Ordinal);
            Assert.Equal(before, await SaidAsync(plan));
        }
    }

    private async Task<string> SaidAsync(PlanInHand plan)
    {
        var (owner, _, _) = await shop.DemoAsync();
        var now = await shop.Get<ProgressStore>().FindAsync(owner, plan.Plan.Id, Cancel);
        return string.Join(
            ' ',
            now!.Progress.Steps.Select(s => $"{s.IsDone}{s.Check}{s.Notes.Count}")
        );
    }

    private async Task<HttpClient> ComeAsync(string visitor)
    {
        var client = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        var (owner, course, students) = await shop.DemoAsync();
        switch (visitor)
        {
            case "self":
                await PhoneOfAsync(owner, students.Single(s => s.Shown == "Maren Tveit").Id);
                break;
            case "classmate":
                await PhoneOfAsync(owner, students.First(s => s.Shown != "Maren Tveit").Id);
                break;
            case "student of another course":
                var other = await shop.AddInstructorAsync($"other-{Guid.NewGuid():N}");
                var theirs = (
                    await shop.Get<CourseStore>()
                        .CreateAsync(other, "Mornings", Core.Measure.UnitSystem.Inch, Cancel)
                ).Value!;
                var cleo = await shop.Get<StudentStore>()
                    .AddAsync(other, theirs.Id, new("Cleo", "", false), Cancel);
                await PhoneOfAsync(other, cleo.Value!.Id);
                break;
            case "waiting at the door":
                var door = await shop.Get<DoorStore>()
                    .OpenAsync(owner, course.Id, 1, false, Cancel);
                var asked = await shop.Get<JoinDesk>()
                    .AskAsync(door.Value!.Code, "Somebody", "x", Cancel);
                Carry(asked.Value!.Token);
                break;
            case "instructor":
                await new Visitor(client).OpenDemo();
                break;
            case "another instructor":
                var name = $"other-{Guid.NewGuid():N}";
                await shop.AddInstructorAsync(name);
                await new Visitor(client).SignIn(name);
                break;
        }

        return client;

        async Task PhoneOfAsync(Data.Access.InstructorViewer who, Guid student)
        {
            var code = await shop.Get<DoorStore>().NewStudentCodeAsync(who, student, false, Cancel);
            Carry(
                (await shop.Get<JoinDesk>().UseStudentCodeAsync(code.Value!, "x", Cancel))
                    .Value!
                    .Token
            );
        }

        void Carry(string token) =>
            client.DefaultRequestHeaders.Add("Cookie", $"{DeviceSession.CookieName}={token}");
    }
}

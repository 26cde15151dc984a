using System.Security.Claims;
using Microsoft.Net.Http.Headers;
using ShopClass.Data.Progress;
using ShopClass.Print.Sheets;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Features.Lessons;
using ShopClass.Web.Features.Room;

namespace ShopClass.Web.Features.Sheets;

/// <summary>Sheets of a class as it stands, for whoever works its room.</summary>
internal static class ClassSheetRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes
            .MapGet(
                "/sheets/state/{courseId:guid}",
                (Guid courseId, [AsParameters] Asked asked) =>
                    asked.SheetAsync(
                        courseId,
                        now => "state-of-the-class",
                        (now, paper) =>
                            ClassStateSheet.Make(now.Course.Name, now.State(), now.Plans.Day, paper)
                    )
            )
            .RequireAuthorization();
        routes
            .MapGet(
                "/sheets/catch-up/{courseId:guid}/{studentId:guid}/{number:int}",
                (Guid courseId, Guid studentId, int number, [AsParameters] Asked asked) =>
                    asked.SheetAsync(
                        courseId,
                        now =>
                            now.Find(studentId) is { } who
                            && now.Plans.PlanFor(who) is { } plan
                            && number >= 1
                            && number <= plan.Request.Lessons.Count
                                ? $"catch-up-{who.Shown}"
                                : null,
                        (now, paper) => CatchUp(now, now.Find(studentId)!, number - 1, paper)
                    )
            )
            .RequireAuthorization();
        routes
            .MapGet(
                "/sheets/take-home/{courseId:guid}/{studentId:guid}",
                (Guid courseId, Guid studentId, [AsParameters] Asked asked) =>
                    asked.SheetAsync(
                        courseId,
                        now =>
                            now.Find(studentId) is { InHand: not null } who
                                ? $"take-home-{who.Shown}"
                                : null,
                        (now, paper) =>
                        {
                            var who = now.Find(studentId)!;
                            var open = who.InHand!.Progress.Steps.Where(s => !s.IsDone);
                            return TakeHomeSheet.Make(
                                Content(now, who),
                                [.. open.Select(s => who.InHand.Paced(s.Step))],
                                paper
                            );
                        }
                    )
            )
            .RequireAuthorization();
    }

    private static byte[] CatchUp(ClassNow now, StudentAtWork who, int lesson, Paper paper)
    {
        var plan = now.Plans.PlanFor(who)!;
        var asked = plan.Request.Lessons[lesson];
        return CatchUpSheet.Make(
            Content(now, who),
            $"{lesson + 1}. {asked.Title}, {LessonLines.Date(asked.Date)}",
            ClassNow.MissedBy(who, plan, lesson),
            paper
        );
    }

    private static OpenStepContent Content(ClassNow now, StudentAtWork who) =>
        new(
            now.Course.Name,
            who.InHand!.Plan.Checked.Request.Project.Name,
            who.Shown,
            who.InHand.Plan.Number,
            now.Course.Rules.Unit,
            now.Plans.Day
        )
        {
            Basis = who.InHand.Pace.Basis,
        };

    /// <summary>What every sheet here needs.</summary>
    private sealed record Asked(
        string? Paper,
        ClaimsPrincipal Person,
        HttpResponse Response,
        ClassDesk Desk,
        CancellationToken Cancel
    )
    {
        public async Task<IResult> SheetAsync(
            Guid courseId,
            Func<ClassNow, string?> nameOf,
            Func<ClassNow, Paper, byte[]> make
        )
        {
            if (SheetRoutes.PaperNamed(Paper) is not { } format)
                return SheetRoutes.NoSuchPaper();
            if (
                Person.ToViewer() is not { } viewer
                || await Desk.ReadAsync(viewer, courseId, Cancel) is not { } now
                || nameOf(now) is not { } name
            )
                return Results.NotFound();
            Response.Headers.CacheControl = "no-store";
            Response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline")
            {
                FileName = $"{SheetName.Safe(name)}.pdf",
            }.ToString();
            return Results.Bytes(make(now, format), "application/pdf");
        }
    }
}

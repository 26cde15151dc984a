using System.Net.Http.Json;
using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Progress;

/// <summary>The demo class at its benches: some with a plan made.</summary>
public class Benches : OpenShop
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>A student of the demo course with a plan of their own.</summary>
    public async Task<(InstructorViewer Owner, StudentView Student, PlanInHand Plan)> AtWorkAsync(
        string name = "Maren Tveit"
    )
    {
        var (owner, course, students) = await DemoAsync();
        var student = students.Single(s => s.Shown == name);
        var plans = Get<PlanStore>();
        var project = (await Get<ProjectStore>().ListAsync(owner, course.Id, Cancel))[0].Id;
        if (await plans.NewestAsync(owner, student.Id, project, Cancel) is null)
        {
            var request = await plans.RequestAsync(owner, student.Id, project, Cancel);
            var made = await plans.SaveAsync(
                owner,
                student.Id,
                project,
                CheckedPlan.Make(request!),
                Cancel
            );
            Assert.True(made.IsSaved);
        }

        var current = await Get<ProgressStore>().CurrentAsync(owner, student.Id, project, Cancel);
        return (owner, student, current!);
    }

    /// <summary>Sends it as a phone's queue does.</summary>
    public static Task<HttpResponseMessage> SendAsync(
        HttpClient phone,
        SayEntry entry,
        bool fromUs = true,
        string? site = null
    )
    {
        var request = new HttpRequestMessage(HttpMethod.Post, ProgressRoutes.Address)
        {
            Content = JsonContent.Create(
                new
                {
                    entry.Id,
                    entry.Plan,
                    entry.Step,
                    Kind = entry.Kind.ToString(),
                    entry.Text,
                    entry.Size,
                    entry.Minutes,
                    entry.Said,
                }
            ),
        };
        if (fromUs)
            request.Headers.Add(ProgressRoutes.Header, "steps");
        if (site is not null)
            request.Headers.Add("Sec-Fetch-Site", site);
        return phone.SendAsync(request, Cancel);
    }

    public static SayEntry Entry(PlanInHand plan, StepActionKind kind, int step = 1) =>
        new()
        {
            Id = Guid.NewGuid(),
            Plan = plan.Plan.Id,
            Step = plan.Progress.Steps[step - 1].Step.Id,
            Kind = kind,
        };
}

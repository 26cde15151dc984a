using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>A student with a phone in the shop: their own board, their own plan, one step at a time.</summary>
[Collection(OneApp.Name)]
public sealed class StudentOnAPhoneTests(RunningApp app)
{
    [Fact]
    public async Task Sees_the_own_board_makes_the_plan_and_takes_the_first_step()
    {
        await using var student = await Person.OnAPhone(app);
        var page = student.Page;
        await student.OpenDemoAsStudent("Maren Tveit");
        await Assertions
            .Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Hello, Maren Tveit" }))
            .ToBeVisibleAsync();

        var next = page.Locator(".next-thing a.button");
        Assert.True(
            (await next.BoundingBoxAsync())!.Height >= 48,
            "The next thing to do is a big enough target."
        );
        await next.ClickAsync();
        await Assertions
            .Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        var forward = page.GetByRole(AriaRole.Button, new() { Name = "Next step" });
        Assert.True(
            (await forward.BoundingBoxAsync())!.Height >= 48,
            "The next step is a big enough target."
        );
        await forward.TapAsync();
        await Assertions
            .Expect(page.Locator(".stepper-where"))
            .ToContainTextAsync(new Regex(@"2 of \d+"));
        await NothingHangsOverTheEdge(page);
        student.SawNothingStrange();
    }

    [Fact]
    public async Task Is_shown_nothing_of_anybody_else()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        var pages = await DemoPages.All(instructor);
        var others = pages.Single(p => p.Name == "student").Path;

        await using var student = await Person.OnAPhone(app);
        await student.OpenDemoAsStudent("Wendell Frost");
        var answer = await student.Page.APIRequest.GetAsync(student.AddressOf(others));
        Assert.Equal((int)HttpStatusCode.NotFound, answer.Status);
        await student.Open(others);
        await Assertions
            .Expect(
                student.Page.GetByRole(AriaRole.Heading, new() { Name = "There is no such page" })
            )
            .ToBeVisibleAsync();
    }

    private static async Task NothingHangsOverTheEdge(IPage page) =>
        Assert.True(
            await page.EvaluateAsync<bool>(
                "document.documentElement.scrollWidth <= document.documentElement.clientWidth"
            ),
            "The page is wider than the phone."
        );
}

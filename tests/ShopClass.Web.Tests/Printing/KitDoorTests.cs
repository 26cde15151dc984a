using System.Net;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Printing;
using ShopClass.Web.Tests.Access;
using ShopClass.Web.Tests.Joining;

namespace ShopClass.Web.Tests.Printing;

/// <summary>The code on a kit's label, read by different phones.</summary>
public sealed class KitDoorTests : IAsyncLifetime
{
    private readonly WorkingShop shop = new();
    private InstructorViewer owner = default!;
    private CourseView course = default!;
    private StudentView student = default!;
    private string label = "";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        owner = await shop.AddInstructorAsync("teacher");
        course = (
            await shop.Get<CourseStore>()
                .CreateAsync(owner, "Evening class", UnitSystem.Inch, Cancel)
        ).Value!;
        student = (
            await shop.Get<StudentStore>()
                .AddAsync(owner, course.Id, new("Mira", "", false), Cancel)
        ).Value!;
        var project = (
            await shop.Get<ProjectStore>().CreateAsync(owner, course.Id, "Shelf", Cancel)
        ).Value!;
        label = KitDoor.AddressOf(student.Id, project.Id);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_new_phone_comes_to_the_door_with_the_code_filled_in_and_still_has_to_ask()
    {
        var door = (
            await shop.Get<DoorStore>().OpenAsync(owner, course.Id, 7, false, Cancel)
        ).Value!;
        var visitor = shop.Visit();

        var sent = (await visitor.Get(label)).Headers.Location!.OriginalString;
        Assert.StartsWith("/join?code=", sent, StringComparison.Ordinal);
        Assert.DoesNotContain("Mira", sent, StringComparison.Ordinal);
        var page = await visitor.Read(sent);
        Assert.Equal(JoinCode.Write(door.Code), page.QuerySelector("#code")!.GetAttribute("value"));

        var asked = await Visitor.Parse(
            await visitor.Submit(sent, "Go on", ("code", JoinCode.Write(door.Code)))
        );
        var fields = Visitor.Hidden(asked);
        fields["Entry.Name"] = "Mira";
        var arrived = await visitor.Post("/join", fields);
        Assert.Equal("/join/waiting", arrived.Headers.Location!.AbsolutePath());
    }

    [Fact]
    public async Task With_the_door_shut_or_a_label_of_nobody_there_is_no_code()
    {
        Assert.Equal("/join", (await shop.Visit().Get(label)).Headers.Location!.OriginalString);
        await shop.Get<DoorStore>().OpenAsync(owner, course.Id, 7, false, Cancel);
        await shop.Get<DoorStore>().CloseAsync(owner, course.Id, Cancel);
        Assert.Equal("/join", (await shop.Visit().Get(label)).Headers.Location!.OriginalString);
        var nobody = KitDoor.AddressOf(Guid.NewGuid(), Guid.NewGuid());
        Assert.Equal("/join", (await shop.Visit().Get(nobody)).Headers.Location!.OriginalString);
    }
}

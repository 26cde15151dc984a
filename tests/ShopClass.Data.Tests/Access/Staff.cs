using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Keeping;
using ShopClass.Data.Orders;
using ShopClass.Data.People;
using ShopClass.Data.Store;
using ShopClass.Data.Students.Logging;
using ShopClass.Data.Tests.Orders;
using ShopClass.Data.Tools;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>The shop with one of everything in it, and with instructors of every role.</summary>
public sealed class Staff : IAsyncLifetime
{
    private ThrowAwayStore? _store;

    public Shop Shop { get; } = new();

    public string BackupPath => _store!.FilePath + ".staff";

    public IReadOnlyDictionary<string, Guid> Keys { get; private set; } =
        new Dictionary<string, Guid>();

    public ClassOrder Order { get; private set; } = default!;

    public PrintDeskView Desk { get; private set; } = default!;

    public ToolsView Tools { get; private set; } = default!;

    public static RackReturn AReturn(Guid source) =>
        new(
            source,
            [OrderSamples.Piece("Rack 3")],
            "Rack 3",
            new Dictionary<string, int>(StringComparer.Ordinal)
        );

    public InstructorViewer Helper { get; private set; } = default!;

    public InstructorViewer StandIn { get; private set; } = default!;

    /// <summary>Stands in for a lesson of another day.</summary>
    public InstructorViewer OfAnotherDay { get; private set; } = default!;

    /// <summary>Helps in the other course.</summary>
    public InstructorViewer HelperElsewhere { get; private set; } = default!;

    public static DateOnly Today => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);

    public Viewer As(string who) =>
        who switch
        {
            "helper" => Helper,
            "stand-in" => StandIn,
            "stand-in of another day" => OfAnotherDay,
            "helper elsewhere" => HelperElsewhere,
            _ => Shop.As(who),
        };

    public ThrowAwayStore Copy() => ThrowAwayStore.Copy(BackupPath);

    public async ValueTask InitializeAsync()
    {
        await Shop.InitializeAsync();
        var store = _store = Shop.Copy();
        T Get<T>()
            where T : notnull => store.Services.GetRequiredService<T>();
        var (owner, course, project) = (Shop.Owner, Shop.Course.Id, Shop.Project.Id);
        Shop.Value(
            await store.Courses.SaveTechniqueAsync(owner, course, "Rip", was: "", "Long strokes.")
        );
        Order = await OrderSamples.MakeAsync(Shop, store);
        var order = Shop.Value(await Get<OrderStore>().SaveAsync(owner, project, Order));
        var rack = Shop.Value(
            await Get<RackStore>().AddAsync(owner, course, OrderSamples.Piece("Rack 1"))
        );
        Shop.Value(await Get<RackStore>().ReturnAsync(owner, course, AReturn(order.Id)));
        Tools = (await Get<ToolStore>().FindAsync(owner, course))!;
        Shop.Value(await Get<KeepingStore>().SaveAsync(owner, course, new(2030, 1, 1)));
        Desk = (await Get<KitStore>().DeskAsync(owner, course))!;
        var today = Shop.Value(
            await store.Lessons.AddAsync(
                owner,
                course,
                Shop.AnEvening with
                {
                    Title = "Tonight",
                    Date = Today,
                }
            )
        );
        Shop.Value(await store.Yes.WantAsync(owner, course, true));
        var entry = Shop.Value(
            await store.Entries.KeepPhotoAsync(owner, Shop.Student.Id, project, [1, 2, 3])
        );
        await using (var behind = store.Open())
        {
            behind.Add(new BoardPhotoRow { BoardId = Shop.Board.Id, Jpeg = [1, 2, 3] });
            await behind.SaveChangesAsync();
        }

        Helper = await JoinAsync(course, owner, null, "helper");
        StandIn = await JoinAsync(course, owner, today.Id, "stand-in");
        OfAnotherDay = await JoinAsync(course, owner, Shop.Lesson.Id, "another day");
        HelperElsewhere = await JoinAsync(
            Shop.OtherCourse.Id,
            Shop.OtherInstructor,
            null,
            "elsewhere"
        );
        var people = Get<PeopleStore>();
        var invitation = Shop.Value(await people.InviteHelperAsync(owner, course));
        Keys = new Dictionary<string, Guid>(StringComparer.Ordinal)
        {
            ["courseId"] = course,
            ["intoCourse"] = course,
            ["projectId"] = project,
            ["studentId"] = Shop.Student.Id,
            ["boardId"] = Shop.Board.Id,
            ["entryId"] = entry.Id,
            ["planId"] = Shop.PlanId,
            ["partId"] = Shop.Project.Parts[0].Id,
            ["deviceId"] = Shop.WaitingDevice,
            ["lessonId"] = today.Id,
            ["lessonPlanId"] = Shop.LessonPlan.Id,
            ["sellerId"] = (await Get<SellerStore>().ListAsync(owner, course))[0].Id,
            ["orderId"] = order.Id,
            ["pieceId"] = rack.Id,
            ["invitationId"] = invitation.Invitation.Id,
            ["personId"] = (await people.FindAsync(owner, course))!.People[0].Id,
        };
        await Get<StoreBackup>().WriteAsync(BackupPath);
    }

    public async ValueTask DisposeAsync()
    {
        await _store!.DisposeAsync();
        await Shop.DisposeAsync();
    }

    private async Task<InstructorViewer> JoinAsync(
        Guid course,
        InstructorViewer owner,
        Guid? lesson,
        string name
    )
    {
        var people = _store!.Services.GetRequiredService<PeopleStore>();
        var made = Shop.Value(
            lesson is { } of
                ? await people.InviteStandInAsync(owner, course, of)
                : await people.InviteHelperAsync(owner, course)
        );
        var viewer = await _store.AddInstructorAsync(name);
        Shop.Value(
            await _store
                .Services.GetRequiredService<Invitations>()
                .UseAsync(viewer, made.Code, default)
        );
        return viewer;
    }
}

using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Data.Tests;
using ShopClass.Web.Features.Remakes;

namespace ShopClass.Web.Tests;

/// <summary>A course with one project and one student in a real throw-away store, and a renderer that uses it.</summary>
public sealed class Classroom : IAsyncDisposable
{
    private Classroom(
        ThrowAwayStore store,
        Viewer instructor,
        CourseView course,
        ProjectView project,
        StudentView student
    )
    {
        (Store, Instructor, Course, Project, Student) = (
            store,
            instructor,
            course,
            project,
            student
        );
        Page.JSInterop.Mode = JSRuntimeMode.Loose;
        Page.Services.AddSingleton(TimeProvider.System);
        Page.Services.AddSingleton(store.Courses);
        Page.Services.AddSingleton(store.Projects);
        Page.Services.AddSingleton(store.Students);
        Page.Services.AddSingleton(store.Boards);
        Page.Services.AddSingleton(store.Yes);
        Page.Services.AddSingleton(store.Plans);
        Page.Services.AddSingleton(store.Remakes);
        Page.Services.AddSingleton(store.Starts);
        Page.Services.AddSingleton(store.Paces);
        Page.Services.AddSingleton<ShopClass.Web.Features.Guide.GuideShelf>();
        Page.Services.AddSingleton(
            new SuppliesAtHand(
                store.Services.GetRequiredService<RackStore>(),
                store.Services.GetRequiredService<SellerStore>()
            )
        );
    }

    public ThrowAwayStore Store { get; }

    public Viewer Instructor { get; }

    public CourseView Course { get; }

    public ProjectView Project { get; }

    public StudentView Student { get; }

    public BunitContext Page { get; } = new();

    /// <summary>A planed pine board, 3/4 x 7 1/4 x 72 in.</summary>
    public static Board Pine { get; } =
        new()
        {
            Id = "new",
            Name = "Board 1",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Length.FromInches(0, 3, 4),
            WidthAtStart = Length.FromInches(7, 1, 4),
            WidthAtMiddle = Length.FromInches(7, 1, 4),
            WidthAtEnd = Length.FromInches(7, 1, 4),
            Length = Length.FromInches(72),
        };

    /// <summary>Opens one with a project of two sides and a rail.</summary>
    public static async Task<Classroom> OpenAsync(bool isLeftHanded = false)
    {
        var store = await ThrowAwayStore.MakeAsync();
        var instructor = await store.AddInstructorAsync();
        var course = (
            await store.Courses.CreateAsync(instructor, "Tuesday evenings", UnitSystem.Inch)
        ).Value!;
        var project = (
            await store.Projects.CreateAsync(instructor, course.Id, "Small shelf")
        ).Value!;
        await store.Projects.AddPartsAsync(
            instructor,
            project.Id,
            [Part("A", "side", 2, 6, 14), Part("B", "rail", 1, 3, 20)]
        );
        var card = new StudentCard("Juno Alder", "", isLeftHanded);
        var student = (await store.Students.AddAsync(instructor, course.Id, card)).Value!;
        return new(store, instructor, course, project, student);
    }

    public async Task<BoardView> LogAsync(Board board) =>
        (await Store.Boards.AddAsync(Instructor, Student.Id, Project.Id, board)).Value!;

    public Task<IReadOnlyList<BoardView>> BoardsAsync() =>
        Store.Boards.ListAsync(Instructor, Student.Id, Project.Id);

    /// <summary>Renders a page as this viewer sees it.</summary>
    public IRenderedComponent<T> Open<T>(
        Action<ComponentParameterCollectionBuilder<T>> parameters,
        Viewer? viewer = null
    )
        where T : IComponent =>
        Page.Render<T>(p =>
        {
            p.AddCascadingValue(viewer ?? Instructor);
            parameters(p);
        });

    public async ValueTask DisposeAsync()
    {
        await Page.DisposeAsync();
        await Store.DisposeAsync();
    }

    private static Part Part(string letter, string name, int quantity, int width, int length) =>
        new()
        {
            Letter = letter,
            Name = name,
            Quantity = quantity,
            Finished = new(
                Length.FromInches(0, 3, 4),
                Length.FromInches(width),
                Length.FromInches(length)
            ),
        };
}

using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;
using ShopClass.Data.Tests;
using ShopClass.Web.Features.Printing;

namespace ShopClass.Web.Tests.Courses;

/// <summary>An instructor with one course in a store of its own, and a renderer for its pages.</summary>
internal sealed class Office : IAsyncDisposable
{
    private readonly BunitContext screen = new();

    private Office(ThrowAwayStore store, InstructorViewer instructor, CourseView course)
    {
        (Store, Instructor, Course) = (store, instructor, course);
        screen.JSInterop.Mode = JSRuntimeMode.Loose;
        screen.Services.AddSingleton(store.Courses);
        screen.Services.AddSingleton(store.Projects);
        screen.Services.AddSingleton(store.Students);
        screen.Services.AddSingleton(store.Boards);
        screen.Services.AddSingleton(store.Yes);
        screen.Services.AddSingleton(store.Plans);
        screen.Services.AddSingleton(store.Files);
        screen.Services.AddSingleton(
            store.Services.GetRequiredService<ShopClass.Data.People.Invitations>()
        );
        screen.Services.AddSingleton(store.Services.GetRequiredService<SellerStore>());
        screen.Services.AddSingleton(store.Services.GetRequiredService<RackStore>());
        screen.Services.AddSingleton(store.Services.GetRequiredService<OrderStore>());
        screen.Services.AddSingleton(store.Services.GetRequiredService<KitStore>());
        screen.Services.AddSingleton(
            store.Services.GetRequiredService<ShopClass.Data.Tools.ToolStore>()
        );
        screen.Services.AddSingleton(store.Progress);
        screen.Services.AddSingleton(store.Starts);
        screen.Services.AddSingleton(store.Paces);
        screen.Services.AddSingleton(TimeProvider.System);
        screen.Services.AddSingleton<PrintTray>();
    }

    public ThrowAwayStore Store { get; }

    public InstructorViewer Instructor { get; }

    public CourseView Course { get; }

    public string Address => screen.Services.GetRequiredService<NavigationManager>().Uri;

    public static async Task<Office> OpenAsync()
    {
        var store = await ThrowAwayStore.MakeAsync();
        var instructor = await store.AddInstructorAsync();
        var made = await store.Courses.CreateAsync(instructor, "Evening class", UnitSystem.Inch);
        return new(store, instructor, made.Value!);
    }

    public IRenderedComponent<T> Open<T>(
        Action<ComponentParameterCollectionBuilder<T>>? parameters = null,
        Viewer? viewer = null
    )
        where T : IComponent =>
        screen.Render<T>(p =>
        {
            p.AddCascadingValue(viewer ?? Instructor);
            parameters?.Invoke(p);
        });

    public async ValueTask DisposeAsync()
    {
        await screen.DisposeAsync();
        await Store.DisposeAsync();
    }
}

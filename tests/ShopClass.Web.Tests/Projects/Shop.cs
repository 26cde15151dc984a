using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Projects;
using ShopClass.Data.Tests;

namespace ShopClass.Web.Tests.Projects;

/// <summary>An instructor with an inch course and a project of two parts, in a store of its own.</summary>
internal sealed record Shop(
    ThrowAwayStore Store,
    InstructorViewer Instructor,
    CourseView Course,
    ProjectView Project
) : IAsyncDisposable
{
    public static async Task<Shop> OpenAsync(params Part[] parts)
    {
        var store = await ThrowAwayStore.MakeAsync();
        var instructor = await store.AddInstructorAsync();
        var course = (
            await store.Courses.CreateAsync(instructor, "Evening class", UnitSystem.Inch)
        ).Value!;
        var made = (await store.Projects.CreateAsync(instructor, course.Id, "Wall shelf")).Value!;
        await store.Projects.AddPartsAsync(instructor, made.Id, parts);
        var project = await store.Projects.FindAsync(instructor, made.Id);
        return new(store, instructor, course, project!);
    }

    public static Part Part(string letter, string name, int width = 6) =>
        new()
        {
            Letter = letter,
            Name = name,
            Finished = new(
                Length.FromInches(0, 3, 4),
                Length.FromInches(width),
                Length.FromInches(14)
            ),
            Quantity = 2,
        };

    public async Task<IReadOnlyList<PartView>> StoredAsync() =>
        (await Store.Projects.FindAsync(Instructor, Project.Id))!.Parts;

    public ValueTask DisposeAsync() => Store.DisposeAsync();
}

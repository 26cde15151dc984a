using System.Text;
using ShopClass.Data.Access;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

public class RoundTripTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_demo_course_comes_out_as_it_went_in()
    {
        await using var store = await ThrowAwayStore.MakeAsync();
        var viewer = await store.AddInstructorAsync();
        var demo = await DemoTextAsync();

        Assert.Equal(demo, await ThroughTheStoreAsync(store, viewer, demo));
    }

    private static async Task<string> DemoTextAsync()
    {
        using var reader = new StreamReader(DemoCourse.Open());
        return await reader.ReadToEndAsync(Cancel);
    }

    private static async Task<string?> ThroughTheStoreAsync(
        ThrowAwayStore store,
        InstructorViewer viewer,
        string text
    )
    {
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(text));
        var outcome = await store.Files.ImportAsync(viewer, file, cancel: Cancel);
        Assert.Empty(outcome.Problems);
        return await store.Files.ExportCourseAsync(viewer, outcome.CourseId!.Value, Cancel);
    }
}

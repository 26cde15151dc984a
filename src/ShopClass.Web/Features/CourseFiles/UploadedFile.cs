using Microsoft.AspNetCore.Components.Forms;
using ShopClass.Data.Access;
using ShopClass.Data.CourseFiles;

namespace ShopClass.Web.Features.CourseFiles;

/// <summary>A file somebody picked, on its way to the importer. One that is too big is not even fetched.</summary>
public static class UploadedFile
{
    public static string MostInWords { get; } = InWords(CourseFileStore.MostBytes);

    public static async Task<ImportOutcome> ImportAsync(
        CourseFileStore files,
        Viewer viewer,
        IBrowserFile file,
        Guid? intoCourse
    )
    {
        if (file.Size > CourseFileStore.MostBytes)
            return Refused(
                $"The file has {InWords(file.Size)}. A course file has at most {MostInWords}; is it the right one?"
            );
        if (file.Size == 0)
            return Refused("The file is empty.");
        using var copy = new MemoryStream();
        try
        {
            await using var upload = file.OpenReadStream(CourseFileStore.MostBytes);
            await upload.CopyToAsync(copy);
        }
        catch (Exception e)
            when (e is IOException or TimeoutException or OperationCanceledException)
        {
            return Refused(
                "The file did not arrive whole. Check the connection and pick it again."
            );
        }
        copy.Position = 0;
        return await files.ImportAsync(viewer, copy, intoCourse);
    }

    private static string InWords(long bytes) =>
        bytes >= 1024 * 1024 ? $"{(bytes + (512 * 1024)) / (1024 * 1024)} MB"
        : bytes >= 1024 ? $"{bytes / 1024} kB"
        : $"{bytes} bytes";

    private static ImportOutcome Refused(string sentence) =>
        new(CourseId: null, ProjectId: null, Summary: "", [new(0, sentence)]);
}

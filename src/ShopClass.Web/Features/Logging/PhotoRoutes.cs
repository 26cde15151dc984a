using System.Security.Claims;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using ShopClass.Data.Access;
using ShopClass.Data.Students.Logging;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Logging;

/// <summary>Photos of boards: sent by who logs the board, seen by them and by who runs the course.</summary>
public static class PhotoRoutes
{
    // What is too large for us is still received, so that whoever sent it gets a sentence and not a broken line.
    private const long MostReceived = 64L * 1024 * 1024;

    public static void AddBoardLogging(this IServiceCollection services)
    {
        services.AddSingleton<EntryDesk>();
        services.AddSingleton<VerdictDesk>();
    }

    public static void MapBoardLogging(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/my/board/new/{project:guid}/photo/send", SendAsync)
            .RequireAuthorization()
            .DisableAntiforgery()
            .WithMetadata(new RequestSizeLimitAttribute(MostReceived));
        routes
            .MapGet("/files/board-entry/{entryId:guid}/photo", EntryPhotoAsync)
            .RequireAuthorization();
        routes.MapGet("/files/board/{boardId:guid}/photo", BoardPhotoAsync).RequireAuthorization();
    }

    private static async Task<IResult> SendAsync(
        Guid project,
        HttpContext http,
        EntryDesk desk,
        IAntiforgery antiforgery,
        CancellationToken cancel
    )
    {
        if (http.User.ToViewer() is not StudentViewer student)
            return TypedResults.NotFound();
        var page = EntryScreens.Address(project, EntryScreen.Photo);
        if (http.Request.ContentLength > PhotoReader.MostBytes + 64 * 1024)
        {
            await http.Request.Body.CopyToAsync(Stream.Null, cancel);
            return Back(page, PhotoFault.TooLarge);
        }

        http.Features.Set<IFormFeature>(
            new FormFeature(
                http.Request,
                new() { MultipartBodyLengthLimit = PhotoReader.MostBytes + 64 * 1024 }
            )
        );
        if (!await antiforgery.IsRequestValidAsync(http))
            return TypedResults.BadRequest();
        var form = await http.Request.ReadFormAsync(cancel);
        if (form.Files.GetFile("photo") is not { Length: > 0 } file)
            return Back(page, PhotoFault.Nothing);
        using var bytes = new MemoryStream((int)file.Length);
        await file.CopyToAsync(bytes, cancel);
        var (jpeg, fault) = await Task.Run(() => PhotoReader.Read(bytes.ToArray()), cancel);
        if (fault is { } why)
            return Back(page, why);
        var kept = await desk.KeepPhotoAsync(student, project, jpeg, cancel);
        return kept.IsSaved ? TypedResults.LocalRedirect(page) : TypedResults.NotFound();
    }

    private static RedirectHttpResult Back(string page, PhotoFault fault) =>
        TypedResults.LocalRedirect($"{page}?photo={fault}");

    private static async Task<IResult> EntryPhotoAsync(
        Guid entryId,
        ClaimsPrincipal person,
        HttpResponse response,
        BoardEntryStore entries,
        CancellationToken cancel
    ) =>
        person.ToViewer() is { } viewer
            ? Photo(response, await entries.PhotoAsync(viewer, entryId, cancel))
            : TypedResults.NotFound();

    private static async Task<IResult> BoardPhotoAsync(
        Guid boardId,
        ClaimsPrincipal person,
        HttpResponse response,
        BoardYesStore boards,
        CancellationToken cancel
    ) =>
        person.ToViewer() is { } viewer
            ? Photo(response, await boards.PhotoAsync(viewer, boardId, cancel))
            : TypedResults.NotFound();

    private static IResult Photo(HttpResponse response, byte[]? jpeg)
    {
        if (jpeg is null)
            return TypedResults.NotFound();
        response.Headers.CacheControl = "no-store";
        return TypedResults.Bytes(jpeg, "image/jpeg");
    }
}

using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using ShopClass.Data.Students.Logging;

namespace ShopClass.Data.Keeping;

/// <summary>Everything that is kept about one student, as one readable file.</summary>
public sealed class StudentExport(IDbContextFactory<ShopContext> factory)
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The file's text; null when the student is not the viewer's. A student may have their own.</summary>
    public async Task<string?> WriteAsync(
        Viewer viewer,
        Guid studentId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var student = await shop
            .Students.AsNoTracking()
            .SeenBy(viewer)
            .Include(s => s.Course)
            .Include(s => s.Boards)
                .ThenInclude(b => b.Project)
            .SingleOrDefaultAsync(s => s.Id == studentId, cancel);
        if (student is null)
            return null;
        var unit = student.Course!.Rules.Unit;
        var photos = await shop.Set<BoardPhotoRow>()
            .Where(p => p.Board!.StudentId == studentId)
            .ToDictionaryAsync(p => p.BoardId, p => p.Jpeg, cancel);
        string Say(Length length) => LengthWriter.WriteExactWithUnit(length, unit);
        return JsonSerializer.Serialize(
            new
            {
                Course = student.Course.Name,
                student.Name,
                student.Alias,
                student.IsLeftHanded,
                student.HasConsented,
                student.ConsentOn,
                Boards = student
                    .Boards.OrderBy(b => b.Position)
                    .Select(row => new
                    {
                        row.Name,
                        Species = row.SpeciesId,
                        Thickness = Say(row.Thickness),
                        Widths = new[]
                        {
                            Say(row.WidthAtStart),
                            Say(row.WidthAtMiddle),
                            Say(row.WidthAtEnd),
                        },
                        Length = Say(row.Length),
                        BadPlaces = row.Defects.Count,
                        row.SentBack,
                        Photo = photos.GetValueOrDefault(row.Id),
                    }),
                BoardBegun = await shop.Set<BoardEntryRow>()
                    .Where(e => e.StudentId == studentId)
                    .Select(e => new
                    {
                        Project = e.Project!.Name,
                        Entered = e.Draft,
                        e.Photo,
                        e.ChangedUtc,
                    })
                    .ToListAsync(cancel),
                Plans = await PlansAsync(shop, studentId, cancel),
                Steps = await SaidAsync(shop, studentId, Say, cancel),
                Devices = await shop.Set<DeviceRow>()
                    .Where(d => d.StudentId == studentId)
                    .Select(d => new
                    {
                        d.AskedName,
                        d.Kind,
                        d.AskedUtc,
                        d.SeenUtc,
                    })
                    .ToListAsync(cancel),
            },
            Readable
        );
    }

    private static async Task<object> PlansAsync(
        ShopContext shop,
        Guid studentId,
        CancellationToken cancel
    ) =>
        await shop
            .Plans.Where(p => p.StudentId == studentId)
            .OrderBy(p => p.MadeUtc)
            .Select(p => new
            {
                Project = p.Project!.Name,
                p.Number,
                p.MadeUtc,
                Verdict = p.Sentence,
            })
            .ToListAsync(cancel);

    private static async Task<object> SaidAsync(
        ShopContext shop,
        Guid studentId,
        Func<Length, string> say,
        CancellationToken cancel
    )
    {
        var rows = await shop.Set<StepActionRow>()
            .AsNoTracking()
            .Where(a => a.Plan!.StudentId == studentId)
            .OrderBy(a => a.Number)
            .Select(a => new
            {
                Plan = a.Plan!.Number,
                a.StepId,
                a.Kind,
                a.Text,
                a.Size,
                a.Minutes,
                a.ByInstructor,
                a.SaidUtc,
            })
            .ToListAsync(cancel);
        return rows.Select(a => new
        {
            a.Plan,
            Step = a.StepId,
            Said = a.Kind.ToString(),
            a.Text,
            Size = a.Size is { } size ? say(size) : null,
            a.Minutes,
            By = a.ByInstructor ? "instructor" : "student",
            a.SaidUtc,
        });
    }
}

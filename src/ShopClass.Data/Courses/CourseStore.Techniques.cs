using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;

namespace ShopClass.Data.Courses;

// The instructor's own words for how the work is done.
public sealed partial class CourseStore
{
    /// <summary>The notes in the instructor's own words, in the order of their keys; none where the course is not the viewer's.</summary>
    public async Task<IReadOnlyList<TechniqueNote>> TechniqueNotesAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop
                .Courses.SeenBy(viewer, Deed.SeeCourse)
                .Where(c => c.Id == courseId)
                .Select(c => c.TechniqueNotes)
                .SingleOrDefaultAsync(cancel)
            ?? [];
    }

    /// <summary>
    /// Saves one technique note; empty words put the usual ones back. <paramref name="was"/> are the own words it was read
    /// with (empty for none): where others are stored by now, nothing is written and the notes as they are come back.
    /// </summary>
    public async Task<Outcome<IReadOnlyList<TechniqueNote>>> SaveTechniqueAsync(
        Viewer viewer,
        Guid courseId,
        string key,
        string was,
        string text,
        CancellationToken cancel = default
    )
    {
        var tidy = Wording.Tidy(text);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop
            .Courses.RunBy(viewer)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (row is null)
            return Outcome<IReadOnlyList<TechniqueNote>>.NotFound();
        if (row.IsArchived)
            return Outcome<IReadOnlyList<TechniqueNote>>.Refused(Wording.CourseIsArchived);
        if (TechniqueNotes.Problem(key, tidy) is { } problem)
            return Outcome<IReadOnlyList<TechniqueNote>>.Refused(new FieldProblem(key, problem));
        var stored = row.TechniqueNotes.FirstOrDefault(n => n.Key == key)?.Text ?? "";
        if (stored != was)
            return Outcome<IReadOnlyList<TechniqueNote>>.ChangedMeanwhile(row.TechniqueNotes);
        row.TechniqueNotes = With(row.TechniqueNotes, new(key, tidy));
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<IReadOnlyList<TechniqueNote>>.Saved(row.TechniqueNotes);
    }

    /// <summary>In the order of the keys; the usual words are not kept.</summary>
    internal static IReadOnlyList<TechniqueNote> With(
        IReadOnlyList<TechniqueNote> notes,
        TechniqueNote note
    ) =>
        [
            .. notes
                .Where(n => n.Key != note.Key)
                .Append(note)
                .Where(n => n.Text.Length > 0 && n.Text != Techniques.Usual[n.Key])
                .OrderBy(n => n.Key, StringComparer.Ordinal),
        ];
}

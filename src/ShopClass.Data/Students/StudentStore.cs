using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Drawings;
using ShopClass.Data.Access;
using ShopClass.Data.Keeping;
using ShopClass.Data.Store;

namespace ShopClass.Data.Students;

/// <summary>Whether a student, or who answers for them, has agreed to what is kept. No paper and no signature is kept.</summary>
/// <param name="IsGiven">Yes or no.</param>
/// <param name="On">The day they said so; not one that is still to come.</param>
public sealed record Consent(bool IsGiven, DateOnly On);

/// <summary>What is kept about a student.</summary>
public sealed record StudentCard(string Name, string Alias, bool IsLeftHanded)
{
    /// <summary>What they said about what is kept; null while nobody has noted it.</summary>
    public Consent? Consent { get; init; }
}

/// <summary>A stored student.</summary>
public sealed record StudentView(Guid Id, Guid CourseId, StudentCard Card, Guid Version)
{
    /// <summary>
    /// What the class sees: the alias where there is one, else the name; set apart where it runs from right to left, so that it
    /// can stand in any sentence.
    /// </summary>
    public string Shown => ReadingOrder.Apart(Card.Alias.Length > 0 ? Card.Alias : Card.Name);
}

/// <summary>Students of a course.</summary>
public sealed class StudentStore(IDbContextFactory<ShopContext> factory, ClassNews news)
{
    /// <summary>By shown name; for a student viewer, only themselves.</summary>
    public Task<IReadOnlyList<StudentView>> ListAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => ListForAsync(viewer, courseId, Deed.SeeClass, cancel);

    /// <summary>The same for whoever needs the names to do something else.</summary>
    internal async Task<IReadOnlyList<StudentView>> ListForAsync(
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var rows = await shop
            .Students.AsNoTracking()
            .SeenBy(viewer, deed)
            .Where(s => s.CourseId == courseId)
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => r.ToView())
                .OrderBy(s => s.Shown, Ordering.OfNames)
                .ThenBy(s => s.Id),
        ];
    }

    public async Task<StudentView?> FindAsync(
        Viewer viewer,
        Guid studentId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .Students.AsNoTracking()
            .SeenBy(viewer, Deed.SeeClass)
            .SingleOrDefaultAsync(s => s.Id == studentId, cancel);
        return row?.ToView();
    }

    public async Task<Outcome<StudentView>> AddAsync(
        Viewer viewer,
        Guid courseId,
        StudentCard card,
        CancellationToken cancel = default
    )
    {
        var tidy = Tidy(card);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .Where(c => c.Id == courseId)
            .Select(c => new { c.IsArchived, Students = c.Students.Count })
            .SingleOrDefaultAsync(cancel);
        if (course is null)
            return Outcome<StudentView>.NotFound();
        if (course.IsArchived)
            return Outcome<StudentView>.Refused(Wording.CourseIsArchived);
        if (course.Students >= StoreLimits.StudentsInACourse)
            return Outcome<StudentView>.Refused(Wording.TooManyStudents);
        if (ProblemsIn(tidy, shop.Today) is { Count: > 0 } problems)
            return Outcome<StudentView>.Refused(problems);
        var row = new StudentRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            Name = tidy.Name,
            Alias = tidy.Alias,
            IsLeftHanded = tidy.IsLeftHanded,
            Version = Guid.NewGuid(),
        };
        row.Take(tidy.Consent);
        shop.Students.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StudentView>.Saved(row.ToView());
    }

    public async Task<Outcome<StudentView>> SaveAsync(
        Viewer viewer,
        Guid studentId,
        StudentCard card,
        Guid version,
        CancellationToken cancel = default
    )
    {
        var tidy = Tidy(card);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await RunByAsync(shop, viewer, studentId, cancel);
        if (row is null)
            return Outcome<StudentView>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<StudentView>.Refused(Wording.CourseIsArchived);
        if (row.Version != version)
            return Outcome<StudentView>.ChangedMeanwhile(row.ToView());
        if (ProblemsIn(tidy, shop.Today) is { Count: > 0 } problems)
            return Outcome<StudentView>.Refused(problems);
        (row.Name, row.Alias, row.IsLeftHanded) = tidy;
        row.Take(tidy.Consent);
        row.Version = Guid.NewGuid();
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StudentView>.Saved(row.ToView());
    }

    /// <summary>
    /// Removes the student with their boards, plans and devices, and their name wherever the course stays without them:
    /// orders, the rack, remakes and plans of lessons. Their open pages end at once.
    /// </summary>
    public async Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid studentId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await RunByAsync(shop, viewer, studentId, cancel);
        if (row is null)
            return Outcome<bool>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<bool>.Refused(Wording.CourseIsArchived);
        await StudentForgetting.ForgetAsync(shop, row, cancel);
        shop.Students.Remove(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Ended, row.CourseId, studentId));
        return Outcome<bool>.Saved(true);
    }

    internal static StudentCard Tidy(StudentCard card) =>
        card with
        {
            Name = Wording.Tidy(card.Name),
            Alias = Wording.Tidy(card.Alias),
        };

    private static List<FieldProblem> ProblemsIn(StudentCard card, DateOnly today) =>
        [
            .. ProblemsIn(card),
            .. card.Consent is { On: var day } && day > today
                ? Wording.Problems(
                    (
                        "Consent",
                        "The day of the consent is still to come. Give the day it was said."
                    )
                )
                : [],
        ];

    internal static List<FieldProblem> ProblemsIn(StudentCard card) =>
        Wording.Problems(
            ("Name", Wording.ProblemWithName(card.Name)),
            ("Alias", Wording.ProblemWithAlias(card.Alias))
        );

    private static Task<StudentRow?> RunByAsync(
        ShopContext shop,
        Viewer viewer,
        Guid studentId,
        CancellationToken cancel
    ) =>
        shop
            .Students.RunBy(viewer)
            .Include(s => s.Course)
            .SingleOrDefaultAsync(s => s.Id == studentId, cancel);
}

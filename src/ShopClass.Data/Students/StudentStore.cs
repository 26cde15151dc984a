using ShopClass.Data.Access;

namespace ShopClass.Data.Students;

/// <summary>What is kept about a student.</summary>
public sealed record StudentCard(string Name, string Alias, bool IsLeftHanded);

/// <summary>A stored student.</summary>
public sealed record StudentView(Guid Id, Guid CourseId, StudentCard Card, Guid Version)
{
    /// <summary>What the class sees: the alias where there is one, else the name.</summary>
    public string Shown => Card.Alias.Length > 0 ? Card.Alias : Card.Name;
}

/// <summary>Students of a course.</summary>
public sealed class StudentStore
{
    /// <summary>By shown name; for a student viewer, only themselves.</summary>
    public Task<IReadOnlyList<StudentView>> ListAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<StudentView?> FindAsync(
        Viewer viewer,
        Guid studentId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<Outcome<StudentView>> AddAsync(
        Viewer viewer,
        Guid courseId,
        StudentCard card,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<Outcome<StudentView>> SaveAsync(
        Viewer viewer,
        Guid studentId,
        StudentCard card,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Removes the student with their boards and plans.</summary>
    public Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid studentId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();
}

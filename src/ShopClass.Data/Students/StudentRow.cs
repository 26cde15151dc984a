using ShopClass.Data.Courses;
using ShopClass.Data.Plans;

namespace ShopClass.Data.Students;

/// <summary>A student as stored.</summary>
public sealed class StudentRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public required string Name { get; set; }

    public string Alias { get; set; } = "";

    public bool IsLeftHanded { get; set; }

    /// <summary>Whether they agreed to what is kept; null while nobody has noted it.</summary>
    public bool? HasConsented { get; set; }

    /// <summary>The day they said so.</summary>
    public DateOnly? ConsentOn { get; set; }

    public Guid Version { get; set; }

    public List<BoardRow> Boards { get; } = [];

    public List<PlanRow> Plans { get; } = [];

    internal StudentView ToView() =>
        new(
            Id,
            CourseId,
            new StudentCard(Name, Alias, IsLeftHanded)
            {
                Consent =
                    HasConsented is { } isGiven && ConsentOn is { } day ? new(isGiven, day) : null,
            },
            Version
        );

    internal void Take(Consent? consent) =>
        (HasConsented, ConsentOn) = (consent?.IsGiven, consent?.On);
}

using ShopClass.Data.Access;

namespace ShopClass.Data.People;

/// <summary>Somebody besides the owner.</summary>
/// <param name="Id">Key of the role.</param>
/// <param name="Name">The name they sign in with.</param>
/// <param name="Role">What they are.</param>
/// <param name="Lesson">The lesson a stand-in takes; empty for a helper.</param>
/// <param name="Day">Its day; null for a helper.</param>
public sealed record PersonView(
    Guid Id,
    string Name,
    CourseRole Role,
    string Lesson,
    DateOnly? Day
);

/// <summary>An invitation nobody has used yet. Its code is shown once and not kept.</summary>
/// <param name="Id">Its key.</param>
/// <param name="Role">What it makes of somebody.</param>
/// <param name="Day">For a stand-in, the day of the lesson.</param>
/// <param name="UntilUtc">When it runs out.</param>
public sealed record InvitationView(Guid Id, CourseRole Role, DateOnly? Day, DateTime UntilUtc);

/// <summary>Everybody of a course besides its owner and its students.</summary>
public sealed record PeopleView(
    IReadOnlyList<PersonView> People,
    IReadOnlyList<InvitationView> Invitations
);

/// <summary>An invitation that has just been made.</summary>
/// <param name="Code">To be handed on now: only its hash is kept.</param>
/// <param name="Invitation">The invitation.</param>
public sealed record NewInvitation(string Code, InvitationView Invitation);

/// <summary>What a code makes of whoever uses it.</summary>
/// <param name="Course">The course's name.</param>
/// <param name="Role">The role.</param>
/// <param name="Day">For a stand-in, the day.</param>
public sealed record InvitationFound(string Course, CourseRole Role, DateOnly? Day);

/// <summary>A day on which an account stands in, today or later.</summary>
/// <param name="Course">The course's name.</param>
/// <param name="Lesson">The lesson's title.</param>
/// <param name="Day">The day.</param>
public sealed record StandInDay(string Course, string Lesson, DateOnly Day);

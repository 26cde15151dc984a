namespace ShopClass.Data.Access;

/// <summary>
/// Which role may do what, as one table. The stores ask it through <see cref="Scope"/>; pages ask it only to leave out
/// what would be refused.
/// </summary>
public static class RolePolicy
{
    // An owner may do everything; this is what else is allowed.
    private static readonly Dictionary<Deed, CourseRole[]> Others = new()
    {
        [Deed.SeeCourse] = [CourseRole.Helper, CourseRole.StandIn],
        [Deed.WorkTheRoom] = [CourseRole.Helper, CourseRole.StandIn],
        [Deed.SeeLessons] = [CourseRole.Helper, CourseRole.StandIn],
        [Deed.SeeClass] = [CourseRole.Helper],
        [Deed.LogWork] = [CourseRole.Helper],
    };

    /// <summary>Whether somebody of this role may do it. For a stand-in: on the day of their lesson.</summary>
    public static bool May(CourseRole role, Deed deed) =>
        role is CourseRole.Owner || OthersThat(deed).Contains(role);

    /// <summary>The roles besides the owner that may do it.</summary>
    internal static CourseRole[] OthersThat(Deed deed) => Others.GetValueOrDefault(deed, []);
}

using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Joining;

/// <summary>Everything the joining page shows, read together.</summary>
/// <param name="Course">The course.</param>
/// <param name="Door">Its door; null where none was ever opened.</param>
/// <param name="Students">Its students, by shown name.</param>
/// <param name="Devices">All devices, those that wait first.</param>
public sealed record JoiningBoard(
    CourseView Course,
    DoorView? Door,
    IReadOnlyList<StudentView> Students,
    IReadOnlyList<DeviceView> Devices
)
{
    public IReadOnlyList<DeviceView> Waiting => [.. Devices.Where(d => d.StudentId is null)];

    public IReadOnlyList<DeviceView> DevicesOf(Guid studentId) =>
        [.. Devices.Where(d => d.StudentId == studentId)];

    /// <summary>Who is probably meant: the only student of that name or alias.</summary>
    public StudentView? Meant(DeviceView waiting)
    {
        var named = Students.Where(s => Same(s.Card.Name) || Same(s.Card.Alias)).ToList();
        return named is [var only] ? only : null;

        bool Same(string listed) =>
            string.Equals(listed, waiting.AskedName, StringComparison.OrdinalIgnoreCase);
    }

    public static async Task<JoiningBoard?> ReadAsync(
        Viewer viewer,
        Guid courseId,
        CourseStore courses,
        StudentStore students,
        DoorStore doors
    )
    {
        if (await courses.FindForAsync(viewer, courseId, Deed.RunTheDoor) is not { } course)
            return null;
        return new(
            course,
            await doors.FindAsync(viewer, courseId),
            await students.ListAsync(viewer, courseId),
            await doors.DevicesAsync(viewer, courseId)
        );
    }
}

using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Joining;

/// <summary>The student a device is let in as.</summary>
internal static class NewStudents
{
    /// <summary>The one of the list that is meant, or a new one of the name the device gave; saved with the caller's transaction.</summary>
    public static async Task<Outcome<Guid>> FindOrAddAsync(
        ShopContext shop,
        DeviceRow device,
        Guid? studentId,
        CancellationToken cancel
    )
    {
        var inCourse = shop.Students.Where(s => s.CourseId == device.CourseId);
        if (studentId is { } meant)
            return await inCourse.AnyAsync(s => s.Id == meant, cancel)
                ? Outcome<Guid>.Saved(meant)
                : Outcome<Guid>.NotFound();
        if (await inCourse.CountAsync(cancel) >= StoreLimits.StudentsInACourse)
            return Outcome<Guid>.Refused(Wording.TooManyStudents);
        var added = new StudentRow
        {
            Id = Guid.NewGuid(),
            CourseId = device.CourseId,
            Name = device.AskedName,
            Version = Guid.NewGuid(),
        };
        shop.Students.Add(added);
        return Outcome<Guid>.Saved(added.Id);
    }
}

namespace ShopClass.Data.Joining;

/// <summary>The door of a course as its instructor sees it.</summary>
/// <param name="Code">The class code, as stored.</param>
/// <param name="UntilUtc">When it runs out.</param>
/// <param name="IsOpen">Whether it is turned on.</param>
/// <param name="ListedComeIn">Whether listed names come straight in.</param>
public sealed record DoorView(string Code, DateTime UntilUtc, bool IsOpen, bool ListedComeIn);

/// <summary>A device as the instructor sees it.</summary>
/// <param name="Id">Its key.</param>
/// <param name="StudentId">Whose; null while it waits.</param>
/// <param name="AskedName">The name given at the door.</param>
/// <param name="Kind">What sort of device.</param>
/// <param name="AskedUtc">When it asked to come in.</param>
/// <param name="SeenUtc">When it was last used, to the day.</param>
public sealed record DeviceView(
    Guid Id,
    Guid? StudentId,
    string AskedName,
    string Kind,
    DateTime AskedUtc,
    DateTime SeenUtc
);

/// <summary>What a code opens.</summary>
public enum CodeOpens
{
    /// <summary>Nothing: no such code.</summary>
    Nothing,

    /// <summary>Nothing any more: it has run out or is turned off.</summary>
    NothingNow,

    /// <summary>A class: who comes with it says who they are.</summary>
    Class,

    /// <summary>One student's work, once.</summary>
    Student,
}

/// <summary>What was found behind a code.</summary>
/// <param name="Opens">What it opens.</param>
/// <param name="Shown">The course's name, or the student's shown name; empty where it opens nothing.</param>
public sealed record CodeFound(CodeOpens Opens, string Shown);

/// <summary>Somebody is through the door, or stands before it.</summary>
/// <param name="Token">For the device's cookie; known to nobody else, and only its hash is stored.</param>
/// <param name="IsIn">Whether they are in; otherwise they wait for the instructor.</param>
public sealed record Arrival(string Token, bool IsIn);

/// <summary>The device behind a cookie.</summary>
/// <param name="DeviceId">Its key.</param>
/// <param name="CourseId">Its course.</param>
/// <param name="StudentId">Whose it is; null while it waits.</param>
/// <param name="Shown">The student's shown name, or the name given at the door.</param>
public sealed record KnownDevice(Guid DeviceId, Guid CourseId, Guid? StudentId, string Shown);

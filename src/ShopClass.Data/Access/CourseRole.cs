namespace ShopClass.Data.Access;

/// <summary>What an instructor is to one course. See docs/decisions/0024-instructor-roles.md.</summary>
public enum CourseRole
{
    /// <summary>Whose course it is: may do everything.</summary>
    Owner,

    /// <summary>Helps in every lesson.</summary>
    Helper,

    /// <summary>Takes one lesson, and is somebody to the course on the day of that lesson alone.</summary>
    StandIn,
}

/// <summary>What may be done in a course, as far as roles differ in it.</summary>
public enum Deed
{
    /// <summary>See that the course is there, its settings as they bear on the work, and what is built in it.</summary>
    SeeCourse,

    /// <summary>See the room, answer calls, check off and send back.</summary>
    WorkTheRoom,

    /// <summary>See lessons, their plan, the checklists and the state of the class.</summary>
    SeeLessons,

    /// <summary>See the students, their boards and their plans.</summary>
    SeeClass,

    /// <summary>Log boards, make plans, save remakes.</summary>
    LogWork,

    /// <summary>List, change and remove students.</summary>
    ChangeClass,

    /// <summary>Make class codes, let phones in, end them.</summary>
    RunTheDoor,

    /// <summary>Write projects and their parts.</summary>
    ChangeProjects,

    /// <summary>Write lessons and stations, plan the lessons.</summary>
    PlanLessons,

    /// <summary>Prices, the rack, orders, kits and what they cost.</summary>
    BuyMaterials,

    /// <summary>Print for the whole class.</summary>
    PrintForClass,

    /// <summary>Name, archive, settings, words of technique.</summary>
    ChangeSettings,

    /// <summary>Course files, in and out.</summary>
    CarryFiles,

    /// <summary>When names go, what is kept about a student.</summary>
    KeepAndErase,

    /// <summary>Invite helpers and stand-ins, and remove them.</summary>
    ChoosePeople,
}

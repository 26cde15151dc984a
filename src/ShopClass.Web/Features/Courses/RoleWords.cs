using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Courses;

/// <summary>Roles and what they may do, in words.</summary>
public static class RoleWords
{
    public static string Of(CourseRole role) =>
        role switch
        {
            CourseRole.Owner => "Owner",
            CourseRole.Helper => "Helper",
            _ => "Stand-in",
        };

    /// <summary>What the viewer is here, as a sentence.</summary>
    public static string Here(CourseRole role) =>
        role switch
        {
            CourseRole.Owner => "This is your course.",
            CourseRole.Helper => "You help in this course.",
            _ => "You stand in for today's lesson.",
        };

    public static string Of(Deed deed) =>
        deed switch
        {
            Deed.SeeCourse => "See the course and what is built in it",
            Deed.WorkTheRoom => "The room: answer calls, check off, send back",
            Deed.SeeLessons => "Lessons, checklists and the state of the class",
            Deed.SeeClass => "Students, their boards and plans",
            Deed.LogWork => "Log boards, make plans, save remakes",
            Deed.ChangeClass => "Add, change and remove students",
            Deed.RunTheDoor => "Class codes and phones",
            Deed.ChangeProjects => "Write projects and parts",
            Deed.PlanLessons => "Write and plan lessons",
            Deed.BuyMaterials => "Prices, the rack, orders, kits and costs",
            Deed.PrintForClass => "Print for the whole class",
            Deed.ChangeSettings => "Settings, the course's name, the archive",
            Deed.CarryFiles => "Course files",
            Deed.KeepAndErase => "What is kept, and deleting it",
            Deed.ChoosePeople => "Invite helpers and stand-ins, and remove them",
            _ => deed.ToString(),
        };
}

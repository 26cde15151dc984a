using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;

namespace ShopClass.Data.Tests.Access;

// What is asked, by whom.
public partial class WhoMayTests
{
    // What is asked; who gets it; and what it is. Whoever is not named must be told that it is not there.
    private static readonly (string What, string[] Who, Func<Asking, Task<bool>> Ask)[] Table =
    [
        (
            "list courses",
            ["owner", "self", "classmate"],
            async a => (await a.Store.Courses.ListAsync(a.By)).Any(c => c.Id == a.Shop.Course.Id)
        ),
        (
            "see the course",
            ["owner", "self", "classmate"],
            async a => await a.Store.Courses.FindAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "rename the course",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.RenameAsync(
                        a.By,
                        a.Shop.Course.Id,
                        "New",
                        a.Shop.Course.Version
                    )
                )
        ),
        (
            "archive the course",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.ArchiveAsync(
                        a.By,
                        a.Shop.Course.Id,
                        true,
                        a.Shop.Course.Version
                    )
                )
        ),
        (
            "change the settings",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.SaveRulesAsync(
                        a.By,
                        a.Shop.Course.Id,
                        CourseRules.DefaultsFor(UnitSystem.Metric),
                        a.Shop.Course.Version
                    )
                )
        ),
        (
            "list projects",
            ["owner", "self", "classmate"],
            async a => (await a.Store.Projects.ListAsync(a.By, a.Shop.Course.Id)).Count > 0
        ),
        (
            "see the project",
            ["owner", "self", "classmate"],
            async a => await a.Store.Projects.FindAsync(a.By, a.Shop.Project.Id) is not null
        ),
        (
            "add a project",
            ["owner"],
            async a => Done(await a.Store.Projects.CreateAsync(a.By, a.Shop.Course.Id, "Box"))
        ),
        (
            "change the project",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.SaveAsync(
                        a.By,
                        a.Shop.Project.Id,
                        "Box",
                        "",
                        a.Shop.Project.Version
                    )
                )
        ),
        (
            "remove the project",
            ["owner"],
            async a => Done(await a.Store.Projects.RemoveAsync(a.By, a.Shop.Project.Id))
        ),
        (
            "add parts",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.AddPartsAsync(a.By, a.Shop.Project.Id, [Wood.Side("C")])
                )
        ),
        (
            "change a part",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.SavePartAsync(
                        a.By,
                        a.Shop.Project.Id,
                        a.Shop.Project.Parts[0].Id,
                        Wood.Side("D"),
                        a.Shop.Project.Parts[0].Version
                    )
                )
        ),
        (
            "remove a part",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.RemovePartAsync(
                        a.By,
                        a.Shop.Project.Id,
                        a.Shop.Project.Parts[0].Id
                    )
                )
        ),
        (
            "move a part",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.MovePartAsync(
                        a.By,
                        a.Shop.Project.Id,
                        a.Shop.Project.Parts[0].Id,
                        1
                    )
                )
        ),
        (
            "write a technique note",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.SaveTechniqueAsync(
                        a.By,
                        a.Shop.Course.Id,
                        "Rip",
                        was: "",
                        "Long strokes."
                    )
                )
        ),
        (
            "write a joint",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.PutJointAsync(
                        a.By,
                        a.Shop.Project.Id,
                        was: null,
                        Wood.Dado()
                    )
                )
        ),
        (
            "remove a joint",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.RemoveJointAsync(a.By, a.Shop.Project.Id, Wood.Nailed())
                )
        ),
        (
            "write a sum of sizes",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.PutSizeCheckAsync(
                        a.By,
                        a.Shop.Project.Id,
                        was: null,
                        Wood.EqualWidths()
                    )
                )
        ),
        (
            "remove a sum of sizes",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.RemoveSizeCheckAsync(
                        a.By,
                        a.Shop.Project.Id,
                        Wood.EqualWidths()
                    )
                )
        ),
        (
            "see Ada in a list",
            ["owner", "self"],
            async a =>
                (await a.Store.Students.ListAsync(a.By, a.Shop.Course.Id)).Any(s =>
                    s.Id == a.Shop.Student.Id
                )
        ),
        (
            "see Ada",
            ["owner", "self"],
            async a => await a.Store.Students.FindAsync(a.By, a.Shop.Student.Id) is not null
        ),
        (
            "add a student",
            ["owner"],
            async a =>
                Done(await a.Store.Students.AddAsync(a.By, a.Shop.Course.Id, new("Dov", "", false)))
        ),
        (
            "change Ada",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Students.SaveAsync(
                        a.By,
                        a.Shop.Student.Id,
                        new("Eve", "", true),
                        a.Shop.Student.Version
                    )
                )
        ),
        (
            "remove Ada",
            ["owner"],
            async a => Done(await a.Store.Students.RemoveAsync(a.By, a.Shop.Student.Id))
        ),
        (
            "list Ada's boards",
            ["owner", "self"],
            async a =>
                (await a.Store.Boards.ListAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)).Count
                > 0
        ),
        (
            "see Ada's board",
            ["owner", "self"],
            async a => await a.Store.Boards.FindAsync(a.By, a.Shop.Board.Id) is not null
        ),
        (
            "log a board for Ada",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Boards.AddAsync(
                        a.By,
                        a.Shop.Student.Id,
                        a.Shop.Project.Id,
                        Wood.Pine()
                    )
                )
        ),
        (
            "change Ada's board",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Boards.SaveAsync(
                        a.By,
                        a.Shop.Board.Id,
                        Wood.Pine("Fir"),
                        a.Shop.Board.Version
                    )
                )
        ),
        (
            "remove Ada's board",
            ["owner", "self"],
            async a => Done(await a.Store.Boards.RemoveAsync(a.By, a.Shop.Board.Id))
        ),
        (
            "ask for Ada's plan",
            ["owner", "self"],
            async a =>
                await a.Store.Plans.RequestAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)
                    is not null
        ),
        (
            "see Ada's newest plan",
            ["owner", "self"],
            async a =>
                await a.Store.Plans.NewestAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)
                    is not null
        ),
        (
            "see one of Ada's plans",
            ["owner", "self"],
            async a => await a.Store.Plans.FindAsync(a.By, a.Shop.PlanId) is not null
        ),
        (
            "store a plan for Ada",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Plans.SaveAsync(
                        a.By,
                        a.Shop.Student.Id,
                        a.Shop.Project.Id,
                        a.Shop.Plan
                    )
                )
        ),
        (
            "choose a remake",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Remakes.SaveAsync(
                        a.By,
                        Guid.NewGuid(),
                        a.Shop.PlanId,
                        a.Shop.Spoiled,
                        a.Shop.Remade
                    )
                )
        ),
        (
            "see the remakes",
            ["owner", "self"],
            async a => (await a.Store.Remakes.OfPlanAsync(a.By, a.Shop.PlanId)).Count > 0
        ),
        (
            "keep a board being logged",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Entries.KeepAsync(
                        a.By,
                        a.Shop.Student.Id,
                        a.Shop.Project.Id,
                        "half a board"
                    )
                )
        ),
        (
            "keep a photo of a board being logged",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Entries.KeepPhotoAsync(
                        a.By,
                        a.Shop.Student.Id,
                        a.Shop.Project.Id,
                        [1, 2, 3]
                    )
                )
        ),
        (
            "have boards wait for a yes",
            ["owner"],
            async a => Done(await a.Store.Yes.WantAsync(a.By, a.Shop.Course.Id, true))
        ),
        (
            "know whether boards wait for a yes",
            ["owner", "self", "classmate"],
            async a => await a.Store.Yes.IsWantedAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "say yes to the board",
            ["owner"],
            async a =>
                Done(await a.Store.Yes.SayAsync(a.By, a.Shop.Board.Id, a.Shop.Board.Version, ""))
        ),
        (
            "see how the board stands",
            ["owner", "self"],
            async a =>
                (await a.Store.Yes.OfAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)).Count > 0
        ),
        (
            "see where Ada stands",
            ["owner", "self"],
            async a =>
                (await a.Store.Plans.StatesAsync(a.By, a.Shop.Course.Id)).Any(s =>
                    s.StudentId == a.Shop.Student.Id
                )
        ),
        (
            "export the course",
            ["owner"],
            async a => await a.Store.Files.ExportCourseAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "export the project",
            ["owner"],
            async a => await a.Store.Files.ExportProjectAsync(a.By, a.Shop.Project.Id) is not null
        ),
        (
            "import a project",
            ["owner"],
            async a =>
                (
                    await a.Store.Files.ImportAsync(a.By, a.ProjectFile(), a.Shop.Course.Id)
                ).IsImported
        ),
        (
            "make a course of their own",
            ["owner", "other instructor"],
            async a => Done(await a.Store.Courses.CreateAsync(a.By, "Mine", UnitSystem.Inch))
        ),
        (
            "see the door",
            ["owner"],
            async a => await a.Store.Doors.FindAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "open the door",
            ["owner"],
            async a => Done(await a.Store.Doors.OpenAsync(a.By, a.Shop.Course.Id, 7, true))
        ),
        (
            "shut the door",
            ["owner"],
            async a => Done(await a.Store.Doors.CloseAsync(a.By, a.Shop.Course.Id))
        ),
        (
            "list devices",
            ["owner"],
            async a => (await a.Store.Doors.DevicesAsync(a.By, a.Shop.Course.Id)).Count > 0
        ),
        (
            "let a device in",
            ["owner"],
            async a => Done(await a.Store.Doors.AdmitAsync(a.By, a.Shop.WaitingDevice, null))
        ),
        (
            "end a device",
            ["owner"],
            async a => Done(await a.Store.Doors.EndAsync(a.By, a.Shop.OwnDevice))
        ),
        (
            "make a code for one student",
            ["owner"],
            async a => Done(await a.Store.Doors.NewStudentCodeAsync(a.By, a.Shop.Student.Id, true))
        ),
        (
            "see the lessons",
            ["owner", "self", "classmate"],
            async a => await a.Store.Lessons.FindAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "add a lesson",
            ["owner"],
            async a => Done(await a.Store.Lessons.AddAsync(a.By, a.Shop.Course.Id, Shop.AnEvening))
        ),
        (
            "change a lesson",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Lessons.SaveAsync(
                        a.By,
                        a.Shop.Course.Id,
                        a.Shop.Lesson.Id,
                        Shop.AnEvening,
                        a.Shop.Lesson.Version
                    )
                )
        ),
        (
            "remove a lesson",
            ["owner"],
            async a =>
                Done(await a.Store.Lessons.RemoveAsync(a.By, a.Shop.Course.Id, a.Shop.Lesson.Id))
        ),
        (
            "count the stations",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Lessons.SaveShopAsync(
                        a.By,
                        a.Shop.Course.Id,
                        new(1, 1, 1, 1),
                        [],
                        null
                    )
                )
        ),
        (
            "ask what lessons would be planned for",
            ["owner"],
            async a =>
                await a.Store.LessonPlans.BasisAsync(a.By, a.Shop.Course.Id, a.Shop.Project.Id)
                    is not null
        ),
        (
            "see the course's pace",
            ["owner"],
            async a => await a.Store.Paces.FindAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "see the plan of lessons",
            ["owner", "self", "classmate"],
            async a => await a.Store.LessonPlans.FindAsync(a.By, a.Shop.LessonPlan.Id) is not null
        ),
        (
            "see the newest plan of lessons",
            ["owner", "self", "classmate"],
            async a =>
                await a.Store.LessonPlans.NewestAsync(a.By, a.Shop.Course.Id, a.Shop.Project.Id)
                    is not null
        ),
        (
            "store a plan of lessons",
            ["owner"],
            async a =>
                Done(
                    await a.Store.LessonPlans.SaveAsync(
                        a.By,
                        a.Shop.Course.Id,
                        a.Shop.Project.Id,
                        a.Shop.LessonPlan.Request,
                        a.Shop.LessonPlan.Plan
                    )
                )
        ),
        (
            "see how far the work is",
            ["owner", "self"],
            async a => await a.Store.Progress.FindAsync(a.By, a.Shop.PlanId) is not null
        ),
        (
            "see the plan in hand",
            ["owner", "self"],
            async a => await a.Store.Progress.CurrentAsync(a.By, a.Shop.Student.Id) is not null
        ),
        ("tick a step", ["owner", "self"], async a => Done(await a.SayAsync(StepActionKind.Tick))),
        (
            "look into the room",
            ["owner"],
            async a => (await a.Store.Progress.RoomAsync(a.By, a.Shop.Course.Id)).Count > 0
        ),
    ];
}

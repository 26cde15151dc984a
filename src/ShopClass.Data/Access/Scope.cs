using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;

namespace ShopClass.Data.Access;

/// <summary>
/// What a viewer may reach. Every query begins with one of these, so that what is not the viewer's is not found,
/// whatever id was asked for. <c>SeenBy</c> is for reading (and for a student's own boards and plans), <c>RunBy</c> for
/// what only the course's instructor may do.
/// </summary>
internal static class Scope
{
    public static IQueryable<CourseRow> SeenBy(this IQueryable<CourseRow> courses, Viewer viewer) =>
        viewer switch
        {
            InstructorViewer i => courses.Where(c => c.OwnerId == i.UserId),
            StudentViewer s => courses.Where(c =>
                c.Id == s.CourseId && c.Students.Any(x => x.Id == s.StudentId)
            ),
            _ => courses.Where(c => false),
        };

    public static IQueryable<CourseRow> RunBy(this IQueryable<CourseRow> courses, Viewer viewer) =>
        viewer is InstructorViewer ? courses.SeenBy(viewer) : courses.Where(c => false);

    public static IQueryable<ProjectRow> SeenBy(
        this IQueryable<ProjectRow> projects,
        Viewer viewer
    ) =>
        viewer switch
        {
            InstructorViewer i => projects.Where(p => p.Course!.OwnerId == i.UserId),
            StudentViewer s => projects.Where(p =>
                p.CourseId == s.CourseId && p.Course!.Students.Any(x => x.Id == s.StudentId)
            ),
            _ => projects.Where(p => false),
        };

    public static IQueryable<ProjectRow> RunBy(
        this IQueryable<ProjectRow> projects,
        Viewer viewer
    ) => viewer is InstructorViewer ? projects.SeenBy(viewer) : projects.Where(p => false);

    public static IQueryable<StudentRow> SeenBy(
        this IQueryable<StudentRow> students,
        Viewer viewer
    ) =>
        viewer switch
        {
            InstructorViewer i => students.Where(x => x.Course!.OwnerId == i.UserId),
            StudentViewer s => students.Where(x => x.Id == s.StudentId && x.CourseId == s.CourseId),
            _ => students.Where(x => false),
        };

    public static IQueryable<StudentRow> RunBy(
        this IQueryable<StudentRow> students,
        Viewer viewer
    ) => viewer is InstructorViewer ? students.SeenBy(viewer) : students.Where(x => false);

    public static IQueryable<BoardRow> SeenBy(this IQueryable<BoardRow> boards, Viewer viewer) =>
        viewer switch
        {
            InstructorViewer i => boards.Where(b => b.Student!.Course!.OwnerId == i.UserId),
            StudentViewer s => boards.Where(b =>
                b.StudentId == s.StudentId && b.Student!.CourseId == s.CourseId
            ),
            _ => boards.Where(b => false),
        };

    public static IQueryable<PlanRow> SeenBy(this IQueryable<PlanRow> plans, Viewer viewer) =>
        viewer switch
        {
            InstructorViewer i => plans.Where(p => p.Student!.Course!.OwnerId == i.UserId),
            StudentViewer s => plans.Where(p =>
                p.StudentId == s.StudentId && p.Student!.CourseId == s.CourseId
            ),
            _ => plans.Where(p => false),
        };

    public static IQueryable<LessonPlanRow> SeenBy(
        this IQueryable<LessonPlanRow> plans,
        Viewer viewer
    ) =>
        viewer switch
        {
            InstructorViewer i => plans.Where(p => p.Course!.OwnerId == i.UserId),
            StudentViewer s => plans.Where(p =>
                p.CourseId == s.CourseId && p.Course!.Students.Any(x => x.Id == s.StudentId)
            ),
            _ => plans.Where(p => false),
        };
}

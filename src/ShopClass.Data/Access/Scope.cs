using System.Linq.Expressions;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;

namespace ShopClass.Data.Access;

/// <summary>
/// What a viewer may reach. Every query begins with one of these, so that what is not the viewer's is not found,
/// whatever id was asked for. <c>SeenBy</c> is for reading (and for a student's own boards and plans), <c>RunBy</c> for
/// what only instructors may do. Without a deed it is the owner's alone; with one, also of those
/// <see cref="RolePolicy"/> lets do it.
/// </summary>
internal static class Scope
{
    public static IQueryable<CourseRow> SeenBy(
        this IQueryable<CourseRow> courses,
        Viewer viewer,
        Deed? deed = null
    ) =>
        viewer switch
        {
            InstructorViewer i => courses.Where(IsOf(i, deed)),
            StudentViewer s => courses.Where(c =>
                c.Id == s.CourseId && c.Students.Any(x => x.Id == s.StudentId)
            ),
            _ => courses.Where(c => false),
        };

    public static IQueryable<CourseRow> RunBy(
        this IQueryable<CourseRow> courses,
        Viewer viewer,
        Deed? deed = null
    ) => viewer is InstructorViewer ? courses.SeenBy(viewer, deed) : courses.Where(c => false);

    public static IQueryable<ProjectRow> SeenBy(
        this IQueryable<ProjectRow> projects,
        Viewer viewer,
        Deed? deed = null
    ) =>
        viewer switch
        {
            InstructorViewer i => projects.In(p => p.Course!, i, deed),
            StudentViewer s => projects.Where(p =>
                p.CourseId == s.CourseId && p.Course!.Students.Any(x => x.Id == s.StudentId)
            ),
            _ => projects.Where(p => false),
        };

    public static IQueryable<ProjectRow> RunBy(
        this IQueryable<ProjectRow> projects,
        Viewer viewer,
        Deed? deed = null
    ) => viewer is InstructorViewer ? projects.SeenBy(viewer, deed) : projects.Where(p => false);

    public static IQueryable<StudentRow> SeenBy(
        this IQueryable<StudentRow> students,
        Viewer viewer,
        Deed? deed = null
    ) =>
        viewer switch
        {
            InstructorViewer i => students.In(x => x.Course!, i, deed),
            StudentViewer s => students.Where(x => x.Id == s.StudentId && x.CourseId == s.CourseId),
            _ => students.Where(x => false),
        };

    public static IQueryable<StudentRow> RunBy(
        this IQueryable<StudentRow> students,
        Viewer viewer,
        Deed? deed = null
    ) => viewer is InstructorViewer ? students.SeenBy(viewer, deed) : students.Where(x => false);

    public static IQueryable<BoardRow> SeenBy(
        this IQueryable<BoardRow> boards,
        Viewer viewer,
        Deed? deed = null
    ) =>
        viewer switch
        {
            InstructorViewer i => boards.In(b => b.Student!.Course!, i, deed),
            StudentViewer s => boards.Where(b =>
                b.StudentId == s.StudentId && b.Student!.CourseId == s.CourseId
            ),
            _ => boards.Where(b => false),
        };

    public static IQueryable<PlanRow> SeenBy(
        this IQueryable<PlanRow> plans,
        Viewer viewer,
        Deed? deed = null
    ) =>
        viewer switch
        {
            InstructorViewer i => plans.In(p => p.Student!.Course!, i, deed),
            StudentViewer s => plans.Where(p =>
                p.StudentId == s.StudentId && p.Student!.CourseId == s.CourseId
            ),
            _ => plans.Where(p => false),
        };

    public static IQueryable<LessonPlanRow> SeenBy(
        this IQueryable<LessonPlanRow> plans,
        Viewer viewer,
        Deed? deed = null
    ) =>
        viewer switch
        {
            InstructorViewer i => plans.In(p => p.Course!, i, deed),
            StudentViewer s => plans.Where(p =>
                p.CourseId == s.CourseId && p.Course!.Students.Any(x => x.Id == s.StudentId)
            ),
            _ => plans.Where(p => false),
        };

    /// <summary>Those whose course this instructor may do it in.</summary>
    public static IQueryable<T> In<T>(
        this IQueryable<T> rows,
        Expression<Func<T, CourseRow>> course,
        InstructorViewer instructor,
        Deed? deed = null
    )
    {
        var isOf = IsOf(instructor, deed);
        var inPlace = new InPlaceOf(isOf.Parameters[0], course.Body).Visit(isOf.Body);
        return rows.Where(Expression.Lambda<Func<T, bool>>(inPlace, course.Parameters));
    }

    // A stand-in's row is there on the day of the lesson only: the context leaves it out on any other.
    private static Expression<Func<CourseRow, bool>> IsOf(InstructorViewer viewer, Deed? deed)
    {
        var id = viewer.UserId;
        var roles = deed is { } asked ? RolePolicy.OthersThat(asked) : [];
        return roles.Length == 0
            ? c => c.OwnerId == id
            : c =>
                c.OwnerId == id || c.People.Any(p => p.AccountId == id && roles.Contains(p.Role));
    }

    private sealed class InPlaceOf(ParameterExpression parameter, Expression put)
        : ExpressionVisitor
    {
        protected override Expression VisitParameter(ParameterExpression node) =>
            node == parameter ? put : base.VisitParameter(node);
    }
}

using System.Collections;
using System.Reflection;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.CourseFiles;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>
/// Every store call that takes a viewer, found by reflection, asked about Ada's course by every role, in it and elsewhere.
/// Each cell is expected; a new call without an expectation fails.
/// </summary>
public sealed partial class RoleMatrixTests(Staff staff) : IClassFixture<Staff>
{
    private static readonly (string Who, CourseRole? Role)[] Instructors =
    [
        ("owner", CourseRole.Owner),
        ("helper", CourseRole.Helper),
        ("stand-in", CourseRole.StandIn),
        ("stand-in of another day", null),
        ("helper elsewhere", null),
        ("other instructor", null),
    ];

    private static readonly (string Who, Students Of)[] OfStudents =
    [
        ("self", Students.Self),
        ("classmate", Students.Class),
        ("outsider", Students.None),
        ("impostor", Students.None),
    ];

    private enum Students
    {
        /// <summary>No student.</summary>
        None,

        /// <summary>Ada alone.</summary>
        Self,

        /// <summary>Any student of the course, for what they may see of it.</summary>
        Class,
    }

    public static TheoryData<string> Calls =>
        [.. Methods.Select(NameOf).Where(n => !NotOfACourse.Contains(n))];

    private static IEnumerable<MethodInfo> Methods =>
        from type in typeof(CourseStore).Assembly.GetExportedTypes()
        where type.IsClass && !type.IsAssignableTo(typeof(Viewer))
        from method in type.GetMethods(
            BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly
        )
        where method.GetParameters() is [{ } first, ..] && first.ParameterType == typeof(Viewer)
        orderby NameOf(method)
        select method;

    [Fact]
    public void Every_call_has_an_expectation_and_no_expectation_is_left_over()
    {
        Assert.Equal(
            [.. Expected.Keys.Concat(NotOfACourse).Order(StringComparer.Ordinal)],
            Methods.Select(NameOf).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Calls))]
    public async Task Each_role_gets_what_the_table_says(string call)
    {
        var (deed, students) = Expected[call];
        var method = Methods.Single(m => NameOf(m) == call);
        var writes = method.ReturnType.ToString().Contains("Outcome", StringComparison.Ordinal);
        var store = staff.Copy();
        foreach (
            var (who, may) in Instructors
                .Select(i => (i.Who, May: i.Role is { } role && RolePolicy.May(role, deed)))
                .Concat(OfStudents.Select(s => (s.Who, May: Allows(students, s.Of))))
        )
        {
            var got = await AskAsync(store, method, staff.As(who));
            Assert.True(got == may, $"{call} asked by {who}: {(got ? "answered" : "not there")}");
            if (got && writes)
            {
                await store.DisposeAsync();
                store = staff.Copy();
            }
        }

        await store.DisposeAsync();
    }

    private static bool Allows(Students expected, Students asker) =>
        asker is not Students.None
        && (expected is Students.Class || (expected is Students.Self && asker is Students.Self));

    private static string NameOf(MethodInfo method) =>
        $"{method.DeclaringType!.Name}.{method.Name}";

    private async Task<bool> AskAsync(ThrowAwayStore store, MethodInfo method, Viewer viewer)
    {
        var on = store.Services.GetRequiredService(method.DeclaringType!);
        var task = (Task)
            method.Invoke(on, [.. method.GetParameters().Select(p => Argument(p, viewer))])!;
        await task;
        var answer = task.GetType().GetProperty("Result")!.GetValue(task);
        return answer switch
        {
            null or false => false,
            ImportOutcome import => import.IsImported,
            IReadOnlyList<CourseSummary> courses => courses.Any(c =>
                c.Id == staff.Keys["courseId"]
            ),
            IEnumerable many and not string => many.GetEnumerator().MoveNext(),
            // Refused or changed meanwhile tells that it is there: only "not found" keeps that to itself.
            _ => answer.GetType().GetProperty("Kind")?.GetValue(answer) is not OutcomeKind.NotFound,
        };
    }

    private object? Argument(ParameterInfo parameter, Viewer viewer)
    {
        var type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        if (parameter.ParameterType == typeof(Viewer))
            return viewer;
        if (type == typeof(CancellationToken))
            return TestContext.Current.CancellationToken;
        if (type == typeof(Guid))
            return staff.Keys.TryGetValue(parameter.Name!, out var key) ? key : Guid.NewGuid();
        if (Samples(parameter).TryGetValue(type, out var sample))
            return sample();
        return type.IsValueType
            ? Activator.CreateInstance(type)
            : throw new InvalidOperationException(
                $"No sample of {type.Name} for {parameter.Member.Name}. Add one."
            );
    }
}

using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>Two instructors with a course each, students in both, and what belongs to one of them.</summary>
public sealed class Shop : IAsyncLifetime
{
    private ThrowAwayStore? _store;

    public string BackupPath => _store!.FilePath + ".backup";

    public InstructorViewer Owner { get; private set; } = default!;

    public InstructorViewer OtherInstructor { get; private set; } = default!;

    public StudentViewer Self { get; private set; } = default!;

    public StudentViewer Classmate { get; private set; } = default!;

    public StudentViewer Outsider { get; private set; } = default!;

    public CourseView Course { get; private set; } = default!;

    public CourseView OtherCourse { get; private set; } = default!;

    public ProjectView Project { get; private set; } = default!;

    public StudentView Student { get; private set; } = default!;

    public BoardView Board { get; private set; } = default!;

    public CheckedPlan Plan { get; private set; } = default!;

    public Guid PlanId { get; private set; }

    /// <summary>Ada's first side is spoiled when all is sawn.</summary>
    public Mishap Spoiled =>
        new()
        {
            Plan = Plan,
            CutsMade = Plan.Sequence.Cuts.Count,
            Spoiled = new("A", 1),
        };

    /// <summary>The way she chose.</summary>
    public RemakeOption Remade => Remaker.Options(Spoiled, new()).Options[0];

    public string ProjectFile { get; private set; } = "";

    public static Lesson AnEvening { get; } =
        new()
        {
            Title = "Evening",
            Date = new(2027, 1, 12),
            Minutes = 120,
        };

    public LessonView Lesson { get; private set; } = default!;

    public StoredLessonPlan LessonPlan { get; private set; } = default!;

    /// <summary>A phone that waits to be let into Ada's course.</summary>
    public Guid WaitingDevice { get; private set; }

    /// <summary>Ada's phone.</summary>
    public Guid OwnDevice { get; private set; }

    public async ValueTask InitializeAsync()
    {
        _store = await ThrowAwayStore.MakeAsync();
        Owner = await _store.AddInstructorAsync("owner");
        OtherInstructor = await _store.AddInstructorAsync("other");
        Course = Value(await _store.Courses.CreateAsync(Owner, "Evenings", UnitSystem.Inch));
        OtherCourse = Value(
            await _store.Courses.CreateAsync(OtherInstructor, "Mornings", UnitSystem.Metric)
        );
        var project = Value(await _store.Projects.CreateAsync(Owner, Course.Id, "Shelf"));
        Value(
            await _store.Projects.AddPartsAsync(Owner, project.Id, [Wood.Side(), Wood.Side("B")])
        );
        Value(await _store.Projects.PutJointAsync(Owner, project.Id, null, Wood.Nailed()));
        Value(await _store.Projects.PutSizeCheckAsync(Owner, project.Id, null, Wood.EqualWidths()));
        Project = (await _store.Projects.FindAsync(Owner, project.Id))!;
        Student = await AddStudentAsync(Owner, Course.Id, "Ada");
        var mate = await AddStudentAsync(Owner, Course.Id, "Bo");
        var outsider = await AddStudentAsync(OtherInstructor, OtherCourse.Id, "Cleo");
        Self = new(Student.Id, Course.Id);
        Classmate = new(mate.Id, Course.Id);
        Outsider = new(outsider.Id, OtherCourse.Id);
        Board = Value(await _store.Boards.AddAsync(Owner, Student.Id, project.Id, Wood.Pine()));
        Plan = CheckedPlans.For((await _store.Plans.RequestAsync(Owner, Student.Id, project.Id))!);
        PlanId = Value(await _store.Plans.SaveAsync(Owner, Student.Id, project.Id, Plan)).Id;
        Value(await _store.Remakes.SaveAsync(Owner, Guid.NewGuid(), PlanId, Spoiled, Remade));
        ProjectFile = (await _store.Files.ExportProjectAsync(Owner, project.Id))!;
        var door = Value(await _store.Doors.OpenAsync(Owner, Course.Id, 7, listedComeIn: true));
        Value(await _store.JoinDesk.AskAsync(door.Code, "Ada", "Some device"));
        Value(await _store.JoinDesk.AskAsync(door.Code, "Zoe", "Some device"));
        var devices = await _store.Doors.DevicesAsync(Owner, Course.Id);
        (WaitingDevice, OwnDevice) = (devices[0].Id, devices[1].Id);
        Lesson = Value(await _store.Lessons.AddAsync(Owner, Course.Id, AnEvening));
        var basis = (await _store.LessonPlans.BasisAsync(Owner, Course.Id, project.Id))!;
        LessonPlan = Value(
            await _store.LessonPlans.SaveAsync(
                Owner,
                Course.Id,
                project.Id,
                basis.Request,
                LessonPlanner.Plan(basis.Request)
            )
        );
        await _store.Services.GetRequiredService<StoreBackup>().WriteAsync(BackupPath);
    }

    public Viewer As(string who) =>
        who switch
        {
            "owner" => Owner,
            "other instructor" => OtherInstructor,
            "self" => Self,
            "classmate" => Classmate,
            "outsider" => Outsider,
            "impostor" => new StudentViewer(Outsider.StudentId, Course.Id),
            _ => throw new ArgumentOutOfRangeException(nameof(who), who, "Nobody of that name."),
        };

    /// <summary>A copy of the whole shop, to do with as one likes.</summary>
    public ThrowAwayStore Copy() => ThrowAwayStore.Copy(BackupPath);

    public static T Value<T>(Outcome<T> outcome) =>
        outcome.IsSaved
            ? outcome.Value!
            : throw new InvalidOperationException(
                $"{outcome.Kind}: {string.Join(" ", outcome.Problems)}"
            );

    public async ValueTask DisposeAsync() => await _store!.DisposeAsync();

    private async Task<StudentView> AddStudentAsync(Viewer viewer, Guid course, string name) =>
        Value(await _store!.Students.AddAsync(viewer, course, new(name, "", false)));
}

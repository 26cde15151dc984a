using ShopClass.Core.Lessons;
using ShopClass.Core.Lumber;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Paces;

/// <summary>The pace a student's steps are forecast with.</summary>
/// <param name="Course">The course's.</param>
/// <param name="Student">The student's, against the course's.</param>
public sealed record StepPace(CoursePace Course, PaceFactor Student)
{
    /// <summary>The table's.</summary>
    public static StepPace Usual { get; } = new(CoursePace.Usual, PaceFactor.Usual);

    /// <summary>What its forecasts rest on, in a sentence.</summary>
    public string Basis => PaceWords.Basis(Course);

    /// <summary>A student's, of a class.</summary>
    public static StepPace Of(ClassPace pace, string studentId) =>
        new(pace.Course, pace.Students.GetValueOrDefault(studentId, PaceFactor.Usual));

    /// <summary>A step with its time by this pace.</summary>
    /// <param name="step">The step, by the table.</param>
    /// <param name="boards">The boards of its plan, which tell the species.</param>
    public Step At(Step step, IReadOnlyList<Board> boards) =>
        Course.Kinds.Count == 0
            ? step
            : PacedWork.At(step, Course, Student, TimedSteps.SpeciesOf(step, boards));

    /// <summary>All steps of a plan with their times by this pace.</summary>
    public WorkSequence Of(WorkSequence work, IReadOnlyList<Board> boards) =>
        Course.Kinds.Count == 0
            ? work
            : PacedWork.Of(work, Course, Student, s => TimedSteps.SpeciesOf(s, boards));
}

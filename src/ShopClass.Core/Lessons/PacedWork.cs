using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Where a course's own pace comes into a plan of lessons: the times of everybody's steps.</summary>
public static class PacedWork
{
    /// <summary>
    /// The steps with their times by the course's pace for their kind and species, times the student's. Seconds go up to
    /// the next ten; turns go up to whole minutes. Where the pace is as usual, the steps are untouched.
    /// </summary>
    /// <param name="work">The steps, by the table.</param>
    /// <param name="course">The course's pace.</param>
    /// <param name="student">The student's, against the course's.</param>
    /// <param name="speciesOf">The species a step works in; empty where not known.</param>
    public static WorkSequence Of(
        WorkSequence work,
        CoursePace course,
        PaceFactor student,
        Func<Step, string> speciesOf
    ) => work with { Steps = [.. work.Steps.Select(s => At(s, course, student, speciesOf(s)))] };

    /// <summary>One step with its time by the course's pace for its kind and species, times the student's.</summary>
    public static Step At(Step step, CoursePace course, PaceFactor student, string speciesId) =>
        At(step, PaceEstimate.For(course.Of(step.Kind, speciesId), student));

    private static Step At(Step step, int hundredths) =>
        hundredths == 100 || step.Time.Busy == 0
            ? step
            : step with
            {
                Time = step.Time with
                {
                    SetUp = Scaled(step.Time.SetUp, hundredths),
                    Work = Scaled(step.Time.Work, hundredths),
                    Basis = step.Time.Basis + "; then by this course's own pace",
                },
            };

    private static int Scaled(int seconds, int hundredths) =>
        (int)Math.Min((((long)seconds * hundredths + 999) / 1000) * 10, 1_000_000);
}

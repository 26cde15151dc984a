using System.Text.Json;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Projects;

// Joints and sizes that must agree: each is saved on its own, and known by what it was.
public sealed partial class ProjectStore
{
    /// <summary>
    /// Saves a joint: in the place of <paramref name="was"/>, or at the end where that is null. Problems carry field names
    /// of <see cref="JointChecks"/>.
    /// </summary>
    public Task<Outcome<Joint>> PutJointAsync(
        Viewer viewer,
        Guid projectId,
        Joint? was,
        Joint joint,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<Joint>(
            viewer,
            projectId,
            (_, project) =>
            {
                var at = PlaceOf(project.Joints, was);
                if (was is not null && at < 0)
                    return Outcome<Joint>.ChangedMeanwhile(stored: null);
                var tidy = Tidy(joint);
                var problems = JointChecks.ProblemsIn(
                    tidy,
                    Without(project.Joints, at),
                    PartsOf(project),
                    UnitOf(project)
                );
                if (problems.Count > 0)
                    return Outcome<Joint>.Refused(Wording.Problems(problems));
                project.Joints = With(project.Joints, at, tidy);
                return Outcome<Joint>.Saved(tidy);
            },
            cancel
        );

    public Task<Outcome<bool>> RemoveJointAsync(
        Viewer viewer,
        Guid projectId,
        Joint joint,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<bool>(
            viewer,
            projectId,
            (_, project) =>
            {
                var at = PlaceOf(project.Joints, joint);
                if (at < 0)
                    return Outcome<bool>.NotFound();
                project.Joints = Without(project.Joints, at);
                return Outcome<bool>.Saved(true);
            },
            cancel
        );

    /// <summary>
    /// Saves a sum of sizes, in the place of <paramref name="was"/> or at the end; one that does not come out is saved too,
    /// since that is what it is there to show. Problems carry field names of <see cref="SizeSum"/>.
    /// </summary>
    public Task<Outcome<SizeCheck>> PutSizeCheckAsync(
        Viewer viewer,
        Guid projectId,
        SizeCheck? was,
        SizeCheck check,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<SizeCheck>(
            viewer,
            projectId,
            (_, project) =>
            {
                var at = PlaceOf(project.SizeChecks, was);
                if (was is not null && at < 0)
                    return Outcome<SizeCheck>.ChangedMeanwhile(stored: null);
                if (at < 0 && project.SizeChecks.Count >= SizeSum.MostChecks)
                    return Outcome<SizeCheck>.Refused(TooManySizeChecks);
                var tidy = Tidy(check);
                var problems = SizeSum.ProblemsIn(tidy, PartsOf(project), UnitOf(project));
                if (problems.Count > 0)
                    return Outcome<SizeCheck>.Refused(Wording.Problems(problems));
                project.SizeChecks = With(project.SizeChecks, at, tidy);
                return Outcome<SizeCheck>.Saved(tidy);
            },
            cancel
        );

    public Task<Outcome<bool>> RemoveSizeCheckAsync(
        Viewer viewer,
        Guid projectId,
        SizeCheck check,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<bool>(
            viewer,
            projectId,
            (_, project) =>
            {
                var at = PlaceOf(project.SizeChecks, check);
                if (at < 0)
                    return Outcome<bool>.NotFound();
                project.SizeChecks = Without(project.SizeChecks, at);
                return Outcome<bool>.Saved(true);
            },
            cancel
        );

    internal static FieldProblem TooManySizeChecks { get; } =
        new("", $"A project can have {SizeSum.MostChecks} sums of sizes, and this one has them.");

    /// <summary>As it is kept: places in order, an empty letter left out.</summary>
    internal static Joint Tidy(Joint joint) =>
        joint with
        {
            Part = Wording.Tidy(joint.Part),
            Mate = Letter(joint.Mate),
            Note = Wording.Tidy(joint.Note),
            Positions = [.. joint.Positions.Order()],
        };

    internal static SizeCheck Tidy(SizeCheck check) =>
        check with
        {
            Part = Wording.Tidy(check.Part),
            Terms =
            [
                .. check.Terms.Select(t =>
                    t with
                    {
                        Part = Letter(t.Part),
                        Meaning = Wording.Tidy(t.Meaning),
                    }
                ),
            ],
        };

    /// <summary>Joints, sums and open dimensions follow a part that gets another letter.</summary>
    private static void Rename(ProjectRow project, string from, string to)
    {
        if (from == to)
            return;
        project.Joints =
        [
            .. project.Joints.Select(j => j with { Part = New(j.Part), Mate = NewOrNone(j.Mate) }),
        ];
        project.SizeChecks =
        [
            .. project.SizeChecks.Select(c =>
                c with
                {
                    Part = New(c.Part),
                    Terms = [.. c.Terms.Select(t => t with { Part = NewOrNone(t.Part) })],
                }
            ),
        ];
        foreach (var row in project.Parts.Where(p => p.Open.Any(o => o.Follow(from, to) != o)))
            row.Open = [.. row.Open.Select(o => o.Follow(from, to))];

        string New(string letter) => letter == from ? to : letter;
        string? NewOrNone(string? letter) => letter is null ? null : New(letter);
    }

    private static string? Letter(string? typed) =>
        Wording.Tidy(typed) is { Length: > 0 } l ? l : null;

    private static Part[] PartsOf(ProjectRow project) =>
        [.. project.PartsInOrder.Select(p => p.ToPart())];

    private static UnitSystem UnitOf(ProjectRow project) => project.Course!.Rules.Unit;

    private static int PlaceOf<T>(IReadOnlyList<T> list, T? item)
        where T : class
    {
        if (item is null)
            return -1;
        var written = Written(item);
        return list.Select(Written).ToList().IndexOf(written);
    }

    private static string Written<T>(T item) => JsonSerializer.Serialize(item, ShopJson.Options);

    private static T[] With<T>(IReadOnlyList<T> list, int at, T item) =>
        at < 0 ? [.. list, item] : [.. list.Take(at), item, .. list.Skip(at + 1)];

    private static T[] Without<T>(IReadOnlyList<T> list, int at) =>
        at < 0 ? [.. list] : [.. list.Take(at), .. list.Skip(at + 1)];
}

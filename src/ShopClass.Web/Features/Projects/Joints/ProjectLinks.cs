using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;

namespace ShopClass.Web.Features.Projects.Joints;

/// <summary>What ties a project's parts together, while it is edited beside the parts list.</summary>
public sealed class ProjectLinks
{
    private readonly Func<IReadOnlyList<Part>> parts;

    public ProjectLinks(
        ProjectStore store,
        Viewer viewer,
        Guid projectId,
        UnitSystem unit,
        Func<IReadOnlyList<Part>> parts
    )
    {
        this.parts = parts;
        Unit = unit;
        Joints = new(
            new(
                (was, joint) => store.PutJointAsync(viewer, projectId, was, joint),
                joint => store.RemoveJointAsync(viewer, projectId, joint),
                (joint, others) => JointChecks.ProblemsIn(joint, others, parts(), unit),
                JointChecks.MostJoints
            )
        );
        Sums = new(
            new(
                (was, sum) => store.PutSizeCheckAsync(viewer, projectId, was, sum),
                sum => store.RemoveSizeCheckAsync(viewer, projectId, sum),
                (sum, _) => SizeSum.ProblemsIn(sum, parts(), unit),
                SizeSum.MostChecks
            )
        );
    }

    public UnitSystem Unit { get; }

    public IReadOnlyList<Part> Parts => parts();

    public KeptList<Joint, JointDraft> Joints { get; }

    public KeptList<SizeCheck, SumDraft> Sums { get; }

    /// <summary>The joints as they are stored.</summary>
    public IReadOnlyList<Joint> StoredJoints =>
        [.. Joints.Rows.Select(r => r.Stored).OfType<Joint>()];

    /// <summary>How many stored sums do not come out.</summary>
    public int SumsOff =>
        Sums.Rows.Count(r => r.Stored is { } sum && !SizeSum.Of(sum, Parts, Unit).Agrees);

    public void Take(ProjectView project)
    {
        Joints.Take(project.Joints);
        Sums.Take(project.SizeChecks);
    }

    /// <summary>The parts list has changed: everything that names a part is judged again.</summary>
    public void Recheck()
    {
        Joints.Recheck();
        Sums.Recheck();
    }
}

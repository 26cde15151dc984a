using ShopClass.Core.Courses;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;

namespace ShopClass.Data.Projects;

// The rows of the parts list.
public sealed partial class ProjectStore
{
    /// <summary>Adds rows at the end, all or none (a pasted list). Problems name the row: "2.Width".</summary>
    public Task<Outcome<IReadOnlyList<PartView>>> AddPartsAsync(
        Viewer viewer,
        Guid projectId,
        IReadOnlyList<Part> parts,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<IReadOnlyList<PartView>>(
            viewer,
            projectId,
            (shop, project) =>
            {
                Part[] tidy = [.. parts.Take(PartChecks.MostParts + 1).Select(Tidy)];
                Part[] there = [.. project.PartsInOrder.Select(p => p.ToPart())];
                if (TooMany(there.Length, parts.Count) is { } full)
                    return Outcome<IReadOnlyList<PartView>>.Refused(full);
                if (ProblemsIn(tidy, there, project.Course!.Rules) is { Count: > 0 } problems)
                    return Outcome<IReadOnlyList<PartView>>.Refused(problems);
                var next = project.Parts.Select(p => p.Position).DefaultIfEmpty(0).Max() + 1;
                PartRow[] rows = [.. tidy.Select((p, i) => PartRow.From(p, project.Id, next + i))];
                shop.Parts.AddRange(rows);
                return Outcome<IReadOnlyList<PartView>>.Saved([.. rows.Select(r => r.ToView())]);
            },
            cancel
        );

    /// <summary>Saves one row. Problems carry field names of <see cref="PartChecks"/>.</summary>
    public Task<Outcome<PartView>> SavePartAsync(
        Viewer viewer,
        Guid projectId,
        Guid partId,
        Part part,
        Guid version,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<PartView>(
            viewer,
            projectId,
            (_, project) =>
            {
                var row = project.Parts.SingleOrDefault(p => p.Id == partId);
                if (row is null)
                    return Outcome<PartView>.NotFound();
                if (row.Version != version)
                    return Outcome<PartView>.ChangedMeanwhile(row.ToView());
                var tidy = Tidy(part);
                Part[] others =
                [
                    .. project.PartsInOrder.Where(p => p.Id != partId).Select(p => p.ToPart()),
                ];
                if (Problems(tidy, others, project.Course!.Rules) is { Length: > 0 } p)
                    return Outcome<PartView>.Refused(Wording.Problems(p, prefix: ""));
                Rename(project, row.Letter, tidy.Letter);
                row.Take(tidy);
                return Outcome<PartView>.Saved(row.ToView());
            },
            cancel
        );

    public Task<Outcome<bool>> RemovePartAsync(
        Viewer viewer,
        Guid projectId,
        Guid partId,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<bool>(
            viewer,
            projectId,
            (shop, project) =>
            {
                var row = project.Parts.SingleOrDefault(p => p.Id == partId);
                if (row is null)
                    return Outcome<bool>.NotFound();
                shop.Parts.Remove(row);
                return Outcome<bool>.Saved(true);
            },
            cancel
        );

    /// <summary>Moves a row up (-1) or down (+1); at the end of the list it stays where it is.</summary>
    public Task<Outcome<bool>> MovePartAsync(
        Viewer viewer,
        Guid projectId,
        Guid partId,
        int by,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<bool>(
            viewer,
            projectId,
            (_, project) =>
            {
                List<PartRow> rows = [.. project.PartsInOrder];
                var at = rows.FindIndex(p => p.Id == partId);
                if (at < 0)
                    return Outcome<bool>.NotFound();
                var to = Math.Clamp(at + Math.Sign(by), 0, rows.Count - 1);
                (rows[at].Position, rows[to].Position) = (rows[to].Position, rows[at].Position);
                return Outcome<bool>.Saved(true);
            },
            cancel
        );

    internal static Part Tidy(Part part) =>
        part with
        {
            Letter = Wording.Tidy(part.Letter),
            Name = Wording.Tidy(part.Name),
            JointNotes = Wording.Tidy(part.JointNotes),
            Open =
            [
                .. part.Open.Select(o =>
                    o with
                    {
                        Until = Wording.Tidy(o.Until),
                        TakenFrom = Letter(o.TakenFrom),
                    }
                ),
            ],
        };

    internal static FieldProblem? TooMany(int there, int added) =>
        there + added <= PartChecks.MostParts
            ? null
            : new(
                "",
                $"A parts list can have {PartChecks.MostParts} rows; with these it would have {there + added}."
            );

    /// <summary>Each row is judged beside those before it, so that a letter used twice is named once, at the second.</summary>
    private static List<FieldProblem> ProblemsIn(
        IReadOnlyList<Part> added,
        IReadOnlyList<Part> there,
        CourseRules rules
    ) =>
        [
            .. added.SelectMany(
                (part, i) =>
                    Wording.Problems(
                        [
                            .. PartChecks.ProblemsIn(part, [.. there, .. added.Take(i)], rules),
                            .. OpenCircles.ProblemsIn(
                                part,
                                [.. there, .. added.Take(i), .. added.Skip(i + 1)]
                            ),
                        ],
                        $"{i + 1}."
                    )
            ),
        ];

    private static (string Field, string Sentence)[] Problems(
        Part part,
        IReadOnlyList<Part> others,
        CourseRules rules
    ) => [.. PartChecks.ProblemsIn(part, others, rules), .. OpenCircles.ProblemsIn(part, others)];
}

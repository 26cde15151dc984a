using System.Globalization;
using ShopClass.Data.Students;
using ShopClass.Print.Labels;
using ShopClass.Print.Pages;

namespace ShopClass.Web.Features.Printing;

/// <summary>Labels for the kits of a print set.</summary>
internal sealed class LabelRun(PrintSource source, PrintChoice choice)
{
    /// <summary>The sheet of labels, or none, and what is to be said about it.</summary>
    public (List<Manuscript> Sheets, List<string> Notes) Make()
    {
        var notes = new List<string>();
        var grid = LabelSheet.Find(source.Desk.Labels.SheetId) ?? LabelSheet.All[0];
        if (grid.Problem(source.Desk.Labels.Right, source.Desk.Labels.Down) is { } problem)
        {
            notes.Add($"Kit labels: {problem}");
            return ([], notes);
        }

        if (source.Desk.Address.Length == 0)
            notes.Add(
                "Kit labels: they carry no code, because the address of this app in the shop is not set. Set it under “Labels and codes” below."
            );
        var labels = source
            .Students.Index()
            .Where(s => choice.Students.Contains(s.Item.Id))
            .Select(s => LabelOf(s.Item, s.Index + 1))
            .ToList();
        if (labels.Count == 0)
            return ([], notes);
        var made = KitLabels.Of(
            labels,
            grid,
            source.Desk.Labels.Right,
            source.Desk.Labels.Down,
            Math.Clamp(choice.Skip, 0, grid.Count - 1)
        );
        // A label has no room for the note other sheets carry.
        if (made.LettersMissing is { } note)
            notes.Add($"Kit labels: {note}");
        return ([made], notes);
    }

    private KitLabel LabelOf(StudentView student, int number) =>
        new(
            student.Shown,
            source.Course.Name,
            source.Project.Name,
            number,
            string.Join(
                ", ",
                source
                    .Project.Parts.Select(p => p.Part)
                    .Select(p => p.Quantity == 1 ? p.Letter : $"{p.Letter} × {p.Quantity}")
            ),
            VersionOf(student),
            source.Desk.Address.Length == 0
                ? null
                : source.Desk.Address + KitDoor.AddressOf(student.Id, source.Project.Id)
        );

    // Whose board is planned has a kit by that plan; else by the order.
    private string VersionOf(StudentView student)
    {
        static string Of(DateTime made) =>
            made.ToLocalTime().ToString("d MMM yyyy", CultureInfo.InvariantCulture);
        var plan = source.States.FirstOrDefault(p =>
            p.StudentId == student.Id && p.ProjectId == source.Project.Id
        );
        if (plan is { PlanNumber: { } number, PlanMadeUtc: { } made })
            return $"Plan {number} of {Of(made)}{(plan.IsOutOfDate ? ", out of date" : "")}";
        return
            source.Order is { } order
            && order.Order.Ask.People.Any(p => p.StudentId == student.Id.ToString("N"))
            ? $"Order {order.Number} of {Of(order.MadeUtc)}"
            : "No plan yet";
    }
}

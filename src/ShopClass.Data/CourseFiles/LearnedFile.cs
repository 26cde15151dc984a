using Newtonsoft.Json.Linq;
using ShopClass.Core.Lumber;
using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;

namespace ShopClass.Data.CourseFiles;

/// <summary>The section “learned”: what the course has learned for the next one to start from. Numbers, and no names of people.</summary>
internal static class LearnedFile
{
    public const int MostRates = 500;
    public const int MostTimes = 1_000_000;

    // A rate lies between the table's and what was timed, and one step counts as four times its plan at most.
    private const int LeastPercent = 100 / PaceEstimate.Farthest;
    private const int MostPercent = 100 * PaceEstimate.Farthest;

    public static void Write(JObject course, Learned learned)
    {
        if (learned.IsNothing)
            return;
        var all = new JObject();
        CourseFileWriter.Add(
            all,
            "pace",
            learned
                .Pace.Kinds.Select(k => Rate(k.Kind, "", k.Factor))
                .Concat(learned.Pace.Species.Select(s => Rate(s.Kind, s.SpeciesId, s.Factor)))
        );
        CourseFileWriter.Add(all, "projects", learned.Projects.Select(Project));
        course["learned"] = all;
    }

    public static Learned Read(FileNode course, FileFindings findings)
    {
        if (
            !course.Has("learned")
            || course.Child("learned", "what was learned", FileFields.Learned) is not { } node
        )
            return Learned.Nothing;
        var rates = node.Items("pace", MostRates, "rates")
            .Select(item => ReadRate(item, findings))
            .OfType<SpeciesPace>()
            .DistinctBy(r => (r.Kind, r.SpeciesId))
            .OrderBy(r => r.Kind)
            .ThenBy(r => r.SpeciesId, StringComparer.Ordinal)
            .ToList();
        return new(
            new(
                [
                    .. rates
                        .Where(r => r.SpeciesId.Length == 0)
                        .Select(r => new KindPace(r.Kind, r.Factor)),
                ],
                [.. rates.Where(r => r.SpeciesId.Length > 0)]
            ),
            [
                .. node.Items("projects", StoreLimits.ProjectsInACourse, "projects")
                    .Select(item => ReadProject(item, findings))
                    .OfType<LearnedProject>(),
            ]
        );
    }

    private static JObject Rate(StepKind kind, string species, PaceFactor factor)
    {
        var all = new JObject { ["step"] = FileWords.Steps.For(kind) };
        CourseFileWriter.Add(all, "species", species);
        (all["percent"], all["steps"]) = (factor.Hundredths, factor.Steps);
        return all;
    }

    private static JObject Project(LearnedProject project)
    {
        var all = new JObject { ["project"] = project.Name };
        if (project.Waste is { } waste)
            (all["waste"], all["plans"]) = (waste.Percent, waste.Plans);
        CourseFileWriter.Add(
            all,
            "parts",
            project.Spoiled.Select(s => new JObject
            {
                ["part"] = s.Part,
                ["spoiled"] = s.Spoiled,
                ["made"] = s.Made,
            })
        );
        return all;
    }

    private static SpeciesPace? ReadRate(JToken token, FileFindings findings)
    {
        if (FileNode.Open(token, "a rate", findings, FileFields.Rate) is not { } node)
            return null;
        var kind = node.Choice("step", FileWords.Steps);
        var species = node.Text("species", "");
        if (species.Length > 0 && SpeciesTable.Find(species) is null)
            node.Problem("species", $"“{species}” is no species of the table.");
        var percent = Whole(node, "percent", LeastPercent, MostPercent);
        var steps = Whole(node, "steps", 1, MostTimes);
        return kind is { } known ? new(known, species, new(percent, steps)) : null;
    }

    private static LearnedProject? ReadProject(JToken token, FileFindings findings)
    {
        if (
            FileNode.Open(token, "a project's figures", findings, FileFields.LearnedProject)
            is not { } node
        )
            return null;
        var name = Wording.Tidy(node.Text("project"));
        if (Wording.ProblemWithName(name) is { } problem)
            node.Problem("project", problem);
        var waste =
            node.Has("waste") || node.Has("plans")
                ? new WasteShare(Whole(node, "waste", 0, 95), Whole(node, "plans", 1, MostTimes))
                : null;
        return new(
            name,
            waste,
            [
                .. node.Items("parts", Core.Projects.PartChecks.MostParts, "parts")
                    .Select(item => ReadSpoiled(item, findings))
                    .OfType<SpoiledShare>()
                    .DistinctBy(s => s.Part)
                    .OrderBy(s => s.Part, StringComparer.Ordinal),
            ]
        );
    }

    private static SpoiledShare? ReadSpoiled(JToken token, FileFindings findings)
    {
        if (
            FileNode.Open(token, "a part's figures", findings, FileFields.SpoiledPart)
            is not { } node
        )
            return null;
        var part = node.Text("part");
        if (
            part is not ({ Length: 1 or 2 } and [>= 'A' and <= 'Z', ..])
            || part[^1] is < 'A' or > 'Z'
        )
            node.Problem("part", "A part is named by one or two capital letters.");
        var made = Whole(node, "made", 1, MostTimes);
        return new(part, Whole(node, "spoiled", 0, made), made);
    }

    private static int Whole(FileNode node, string field, int least, int most)
    {
        var number = node.Whole(field, least);
        if (number >= least && number <= most)
            return number;
        node.Problem(field, $"“{field}” is a whole number from {least} to {most}.");
        return least;
    }
}

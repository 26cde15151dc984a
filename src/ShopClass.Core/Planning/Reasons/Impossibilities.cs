using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>
/// Proves, where there is a short proof, that boards cannot yield a project: by thickness, width, clear length or area.
/// Nothing here depends on a search, so what it says holds for every plan.
/// </summary>
public static class Impossibilities
{
    /// <summary>Every proof found, by its kind; empty where none of these proofs exists (which does not mean it fits).</summary>
    public static IReadOnlyList<Impossibility> Of(PlanningRequest request)
    {
        if (request.Boards.Count == 0)
            return [];
        PartOnBoards[] parts =
        [
            .. request
                .Project.Parts.Where(p => p.Quantity > 0)
                .Select(p => new PartOnBoards(request, p)),
        ];
        Impossibility[] single = [.. parts.Select(OfOne).OfType<Impossibility>()];
        var several = single.Any(s => s.Kind is ImpossibilityKind.Run or ImpossibilityKind.EndToEnd)
            ? null
            : EndToEnd.Of(request, parts);
        return
        [
            .. single
                .Append(several)
                .Concat(TooLittleArea.Of(request, parts))
                .OfType<Impossibility>()
                .OrderBy(i => i.Kind),
        ];
    }

    private static Impossibility? OfOne(PartOnBoards part)
    {
        if (part.Boards.Count == 0)
            return Thickness(part);
        if (part.MayBeGluedUp || part.MayTurn)
            return null;
        return Width(part) ?? Run(part) ?? EndToEnd.OfCopies(part);
    }

    private static Impossibility Thickness(PartOnBoards part)
    {
        var (request, letter) = (part.Request, part.Part.Letter);
        var problem = BlankNeeds.ThicknessProblem(part.Part, request.Rules, request.Boards[0])!;
        return new(
            ImpossibilityKind.Thickness,
            [letter],
            request.Boards.Count == 1
                ? problem
                : $"No board has the right thickness for {letter}: {string.Join(" ", request.Boards.Select(b => BlankNeeds.ThicknessProblem(part.Part, request.Rules, b)))}"
        );
    }

    private static Impossibility? Width(PartOnBoards part)
    {
        var needed = part.LeastWidthAnywhere;
        var widest = part.Boards.MaxBy(b => b.SmallestWidth)!;
        if (needed <= widest.SmallestWidth)
            return null;
        var (need, there) = Say.Apart(part.Request, needed, widest.SmallestWidth);
        var glue = part.Part.GlueUpAllowed
            ? "this course teaches no edge gluing"
            : $"{part.Part.Letter} may not be glued up";
        return new(
            ImpossibilityKind.Width,
            [part.Part.Letter],
            $"{part.Part.Letter} needs {need} of width; {Widest(part, widest)} {there} wide, and {glue}."
        )
        {
            Needed = needed,
            There = widest.SmallestWidth,
        };
    }

    private static string Widest(PartOnBoards part, Board widest) =>
        part.Boards.Count == 1
            ? $"{widest.Name} is"
            : $"the widest board of the right thickness, {widest.Name}, is";

    private static Impossibility? Run(PartOnBoards part)
    {
        var longest = part
            .Boards.SelectMany(part.Runs)
            .Select(r => r.Along)
            .Append(Length.Zero)
            .Max();
        if (part.Along <= longest)
            return null;
        var (need, there) = Say.Apart(part.Request, part.Along, longest);
        return new(
            ImpossibilityKind.Run,
            [part.Part.Letter],
            $"{part.Part.Letter} needs {need} of clear board, {Say.Length(part.Request, part.LeastWidthAnywhere)} wide; {part.LongestWords(longest, there)}."
        )
        {
            Needed = part.Along,
            There = longest,
        };
    }
}

namespace ShopClass.EndToEnd;

/// <summary>The addresses of the demo course's pages, found by walking its links as a person would.</summary>
public static class DemoPages
{
    public static async Task<IReadOnlyList<(string Name, string Path)>> All(
        Person instructor,
        string whose = "Maren Tveit"
    )
    {
        await instructor.Open("/courses");
        var course = await Link(instructor, "Eight Evenings with a Handsaw");
        await instructor.Open(course);
        var project = await Link(instructor, "Wall shelf", "/projects/");
        var student = await Link(instructor, whose);
        await instructor.Open(student);
        var newBoard = await Link(instructor, "Log another board");
        var place = newBoard[..newBoard.IndexOf("/boards/", StringComparison.Ordinal)];
        var board =
            await instructor
                .Page.Locator($"a[href^='{place}/boards/']:not([href$='/new'])")
                .First.GetAttributeAsync("href")
            ?? throw new InvalidOperationException("No link to a board.");
        return
        [
            ("courses", "/courses"),
            ("course", course),
            ("settings", course + "/settings"),
            ("techniques", course + "/techniques"),
            ("file", course + "/file"),
            ("lessons", course + "/lessons"),
            ("materials", course + "/materials"),
            ("tools", course + "/materials/tools"),
            ("print", course + "/print"),
            ("project", project),
            ("guide", project + "/guide"),
            ("student", student),
            ("new-board", newBoard),
            ("board", board),
            ("plan", place + "/plan"),
        ];
    }

    private static async Task<string> Link(Person person, string name, string? through = null) =>
        await person
            .Page.Locator(through is null ? "a" : $"a[href*='{through}']")
            .Filter(new() { HasText = name })
            .First.GetAttributeAsync("href")
        ?? throw new InvalidOperationException($"No link {name} on {person.Page.Url}.");
}

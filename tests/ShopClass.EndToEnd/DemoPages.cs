namespace ShopClass.EndToEnd;

/// <summary>The addresses of the demo course's pages, found by walking its links as a person would.</summary>
public static class DemoPages
{
    public static async Task<IReadOnlyList<(string Name, string Path)>> All(Person instructor)
    {
        await instructor.Open("/courses");
        var course = await FirstLink(instructor, "a[href*='/courses/']");
        await instructor.Open(course);
        var project = await FirstLink(instructor, "a[href*='/projects/']");
        return
        [
            ("courses", "/courses"),
            ("course", course),
            ("settings", course + "/settings"),
            ("file", course + "/file"),
            ("project", project),
        ];
    }

    private static async Task<string> FirstLink(Person person, string selector) =>
        await person.Page.Locator(selector).First.GetAttributeAsync("href")
        ?? throw new InvalidOperationException($"No link {selector} on {person.Page.Url}.");
}

using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;

namespace ShopClass.Data.CourseFiles;

/// <summary>Reads an instructor's own words for how the work is done.</summary>
internal static class TechniqueReader
{
    public static IReadOnlyList<TechniqueNote> Read(FileNode course)
    {
        IReadOnlyList<TechniqueNote> notes = [];
        foreach (
            var item in course.Items("techniques", TechniqueNotes.Keys.Count, "technique notes")
        )
        {
            if (
                FileNode.Open(item, "a technique note", course.Findings, FileFields.Technique)
                is not { } node
            )
                continue;
            var (about, words) = (node.Text("about"), Wording.Tidy(node.Text("words")));
            if (!Techniques.Usual.ContainsKey(about))
                node.Problem("about", Unknown(about));
            else if (TechniqueNotes.Problem(about, words) is { } problem)
                node.Problem("words", problem);
            else
                notes = CourseStore.With(notes, new(about, words));
        }

        return notes;
    }

    private static string Unknown(string about) =>
        NearestWord.To(about, TechniqueNotes.Keys) is { } near
            ? $"There is no technique note of that name. Is “{near}” meant?"
            : $"There is no technique note of that name. There are {string.Join(", ", TechniqueNotes.Keys)}.";
}

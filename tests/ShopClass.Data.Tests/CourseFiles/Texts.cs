using System.Text;
using ShopClass.Data.Access;
using ShopClass.Data.CourseFiles;
using ShopClass.Data.Store;

namespace ShopClass.Data.Tests.CourseFiles;

/// <summary>Course files to import.</summary>
internal static class Texts
{
    /// <summary>A small course, a line for each thing, so that tests can name lines.</summary>
    public const string Course = """
        {
          "shopclass": 1,
          "kind": "course",
          "course": {
            "name": "Evenings",
            "unit": "inch",
            "precision": "1/16 in", "boardsWaitForYes": true, "firstCutsUntimed": true,
            "rules": { "ripKerf": "5/64 in",
              "hardGoingAbove": 0.55 },
            "projects": [
              { "name": "Shelf", "notes": "",
                "parts": [
                  { "letter": "A", "name": "side", "quantity": 2, "thickness": "3/4 in",
                    "width": "6 in", "length": "14 in" },
                  { "letter": "B", "name": "rail", "quantity": 1, "thickness": "3/4 in",
                    "width": "2 1/2 in", "length": "20 in",
                    "open": [ { "dimension": "length", "extra": "1/4 in", "until": "seated" } ] }
                ] }
            ],
            "students": [
              { "name": "Ada", "alias": "", "leftHanded": true,
                "boards": [
                  { "project": "Shelf", "name": "Pine", "species": "eastern-white-pine",
                    "surfacing": "S4S", "thickness": "3/4 in", "length": "96 in",
                    "widthAtStart": "9 1/4 in", "widthAtMiddle": "235 mm", "widthAtEnd": "9.25",
                    "trimStart": "1 in", "trimEnd": "1 in",
                    "price": { "minorUnits": 2880, "currency": "USD" },
                    "defects": [
                      { "kind": "knot", "from": "20 in", "to": "22 in",
                        "near": "1 in", "far": "2 in", "shows": "back face" } ] } ] }
            ],
            "learned": {
              "pace": [
                { "step": "rough rip", "percent": 130, "steps": 40 },
                { "step": "rough rip", "species": "hard-maple", "percent": 150, "steps": 12 } ],
              "projects": [
                { "project": "Shelf", "waste": 34, "plans": 11,
                  "parts": [ { "part": "A", "spoiled": 3, "made": 24 } ] } ]
            }
          }
        }
        """;

    /// <summary>A small project with a joint and a sum, a line for each thing.</summary>
    public const string Joined = """
        {
          "shopclass": 1,
          "kind": "project",
          "unit": "inch",
          "project": { "name": "Shelf",
            "parts": [
              { "letter": "A", "name": "side", "quantity": 2, "thickness": "3/4",
                "width": "6", "length": "14", "referenceFace": "inside" },
              { "letter": "B", "name": "shelf", "quantity": 2, "thickness": "3/4",
                "width": "6", "length": "20 1/2",
                "open": [ { "dimension": "width", "extra": "1/32", "until": "flush", "takenFrom": "A" } ] }
            ],
            "joints": [
              { "kind": "dado", "part": "A", "mate": "B",
                "depth": "1/4 in", "width": "3/4 in",
                "at": ["2 in", "10 in"] }
            ],
            "sizesThatAgree": [
              { "part": "B", "dimension": "length", "equals": [
                { "size": "20 in", "meaning": "clear width" },
                { "times": 2, "size": "1/4 in", "meaning": "dado" },
                { "part": "A", "dimension": "width" } ] }
            ] }
        }
        """;

    public const string Project = """
        {
          "shopclass": 1,
          "kind": "project",
          "unit": "metric",
          "project": { "name": "Peg rail",
            "parts": [ { "letter": "A", "name": "rail", "quantity": 1, "thickness": "20",
              "width": "100 mm", "length": "50 cm", "grain": "any" } ] }
        }
        """;

    public static async Task<ImportOutcome> ImportAsync(
        this ThrowAwayStore store,
        Viewer viewer,
        string text,
        Guid? into = null
    )
    {
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return await store.Files.ImportAsync(viewer, file, into);
    }

    public static string Demo()
    {
        using var reader = new StreamReader(DemoCourse.Open());
        return reader.ReadToEnd();
    }
}

using System.Security.Cryptography;
using System.Text.Json;
using ShopClass.Core.Courses;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;
using ShopClass.Data.Store;

namespace ShopClass.Web.Features.Guide;

/// <summary>
/// Guides already worked out, by a fingerprint of the project and the course's settings, so that looking again, or printing
/// the note, is at once. The same question has the same guide, so none ever goes stale; the longest unused makes room.
/// </summary>
public sealed class GuideShelf
{
    private const int Room = 40;
    private readonly Lock _lock = new();
    private readonly LinkedList<(string Key, StockGuide Guide)> _guides = [];

    /// <summary>The guide, or null when it has not been worked out.</summary>
    public StockGuide? Find(Project project, CourseRules rules)
    {
        var key = Fingerprint(project, rules);
        lock (_lock)
        {
            for (var node = _guides.First; node is not null; node = node.Next)
            {
                if (node.Value.Key != key)
                    continue;
                _guides.Remove(node);
                _guides.AddFirst(node);
                return node.Value.Guide;
            }
        }

        return null;
    }

    /// <summary>Keeps a guide for the next who asks.</summary>
    public void Keep(StockGuide guide)
    {
        var key = Fingerprint(guide.Project, guide.Rules);
        lock (_lock)
        {
            if (_guides.Any(g => g.Key == key))
                return;
            _guides.AddFirst((key, guide));
            if (_guides.Count > Room)
                _guides.RemoveLast();
        }
    }

    private static string Fingerprint(Project project, CourseRules rules) =>
        Convert.ToHexString(
            SHA256.HashData(
                JsonSerializer.SerializeToUtf8Bytes(new Question(project, rules), ShopJson.Options)
            )
        );

    private sealed record Question(Project Project, CourseRules Rules);
}

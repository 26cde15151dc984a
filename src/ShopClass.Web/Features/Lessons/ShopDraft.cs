using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;

namespace ShopClass.Web.Features.Lessons;

/// <summary>The shop's stations and the minutes of demonstrations, as typed.</summary>
public sealed class ShopDraft
{
    private readonly SortedDictionary<Skill, string> _minutes = [];
    private readonly Dictionary<string, string> _problems = new(StringComparer.Ordinal);

    public ShopDraft(ShopView shop)
    {
        Stations = new(shop.Stations);
        Version = shop.Version;
        foreach (var entry in SkillBook.Entries)
        {
            var own = shop.Demonstrations.FirstOrDefault(d => d.Skill == entry.Skill)?.Minutes;
            _minutes[entry.Skill] = StationsDraft.Text(own ?? entry.Minutes);
        }
    }

    public StationsDraft Stations { get; }

    public Guid? Version { get; }

    public string Minutes(Skill skill) => _minutes[skill];

    public void SetMinutes(Skill skill, string? text)
    {
        _minutes[skill] = text ?? "";
        _problems.Remove(skill.ToString());
    }

    public string? ProblemWith(Skill skill) => _problems.GetValueOrDefault(skill.ToString());

    public bool HasDemonstrationProblems => _problems.Count > 0;

    public void Show(IReadOnlyList<FieldProblem> problems)
    {
        Stations.Show(problems.Select(p => (p.Field, p.Sentence)));
        foreach (var problem in problems.Where(p => Enum.TryParse<Skill>(p.Field, out _)))
            _problems[problem.Field] = problem.Sentence;
    }

    /// <summary>Minutes that differ from the usual ones, or null while one cannot be read.</summary>
    public IReadOnlyList<SkillMinutes>? ToDemonstrations()
    {
        _problems.Clear();
        var own = new List<SkillMinutes>();
        foreach (var (skill, text) in _minutes)
        {
            if (!StationsDraft.IsCount(text, out var minutes))
                _problems[skill.ToString()] =
                    $"“{text}” is no number of minutes. Type a whole number, such as 10.";
            else if (minutes != SkillBook.Of(skill).Minutes)
                own.Add(new(skill, minutes));
        }

        return _problems.Count > 0 ? null : own;
    }
}

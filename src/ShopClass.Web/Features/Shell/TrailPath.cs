namespace ShopClass.Web.Features.Shell;

/// <summary>Which course, project and student an address is about.</summary>
public sealed record TrailPath(Guid? Course, Guid? Project, Guid? Student)
{
    public static TrailPath Of(string path)
    {
        var steps = path.Split('?', '#')[0].Split('/', StringSplitOptions.RemoveEmptyEntries);
        return new(After("courses"), After("projects"), After("students"));

        Guid? After(string word)
        {
            var at = Array.IndexOf(steps, word) + 1;
            return at > 0 && at < steps.Length && Guid.TryParse(steps[at], out var id) ? id : null;
        }
    }
}

/// <summary>One step of the trail.</summary>
public sealed record TrailStep(string Name, string Address);

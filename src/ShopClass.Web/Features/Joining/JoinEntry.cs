namespace ShopClass.Web.Features.Joining;

/// <summary>What is typed at the door.</summary>
public sealed class JoinEntry
{
    public string? Code { get; set; }

    public string? Name { get; set; }

    /// <summary>Whether the code was read before and a name is being given.</summary>
    public bool WasRead { get; set; }
}

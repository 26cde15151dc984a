namespace ShopClass.Web.Features.Account;

/// <summary>What is typed by somebody who was invited.</summary>
public sealed class InvitedEntry
{
    public string? Code { get; set; }

    public string? Name { get; set; }

    public string? Password { get; set; }

    public string? Again { get; set; }
}

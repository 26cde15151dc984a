using Microsoft.AspNetCore.Identity;

namespace ShopClass.Data.Store;

/// <summary>An instructor's account.</summary>
public sealed class Account : IdentityUser
{
    /// <summary>The demo course's owner. It has no password, so nobody can sign in to it with one.</summary>
    public bool IsDemo { get; set; }
}

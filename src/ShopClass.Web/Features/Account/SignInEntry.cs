using System.ComponentModel.DataAnnotations;

namespace ShopClass.Web.Features.Account;

/// <summary>What is typed to sign in.</summary>
public sealed class SignInEntry
{
    [Required(ErrorMessage = "Type the name you sign in with.")]
    [StringLength(80, ErrorMessage = "A name has at most 80 characters.")]
    public string Name { get; set; } = "";

    [Required(ErrorMessage = "Type your password.")]
    [StringLength(200, ErrorMessage = "A password has at most 200 characters.")]
    public string Password { get; set; } = "";

    public bool Stay { get; set; }
}

/// <summary>What is typed to make the first account.</summary>
public sealed class FirstAccountEntry
{
    [Required(ErrorMessage = "Type the name you want to sign in with.")]
    [StringLength(80, ErrorMessage = "A name has at most 80 characters.")]
    public string Name { get; set; } = "";

    [Required(ErrorMessage = "Choose a password.")]
    [StringLength(
        200,
        MinimumLength = AccountSetup.ShortestPassword,
        ErrorMessage = "A password has {2} to {1} characters."
    )]
    public string Password { get; set; } = "";

    [Compare(nameof(Password), ErrorMessage = "The two passwords differ. Type the same one twice.")]
    public string Again { get; set; } = "";
}

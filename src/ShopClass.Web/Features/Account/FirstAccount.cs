using Microsoft.AspNetCore.Identity;
using ShopClass.Data.Store;

namespace ShopClass.Web.Features.Account;

/// <summary>The first start: one account may be made by whoever comes first, then the door is shut.</summary>
public sealed class FirstAccount(InstructorAccounts accounts) : IDisposable
{
    private readonly SemaphoreSlim oneAtATime = new(1);

    public async Task<bool> IsWantedAsync(CancellationToken cancel = default) =>
        !await accounts.AnyAsync(cancel);

    /// <summary>The new account, or the sentences why there is none.</summary>
    public async Task<(Instructor? Account, IReadOnlyList<string> Problems)> MakeAsync(
        UserManager<Instructor> users,
        string name,
        string password
    )
    {
        await oneAtATime.WaitAsync();
        try
        {
            if (!await IsWantedAsync())
                return (
                    null,
                    ["Somebody has just made the instructor's account. Sign in with it."]
                );
            var account = new Instructor { UserName = name };
            var made = await users.CreateAsync(account, password);
            return made.Succeeded ? (account, []) : (null, [.. made.Errors.Select(Sentence)]);
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    public void Dispose() => oneAtATime.Dispose();

    internal static string Sentence(IdentityError error) =>
        error.Code switch
        {
            nameof(IdentityErrorDescriber.DuplicateUserName) =>
                "That name is taken. Choose another.",
            nameof(IdentityErrorDescriber.InvalidUserName) =>
                "That name cannot be used. Choose another.",
            nameof(IdentityErrorDescriber.PasswordTooShort) =>
                $"The password needs at least {AccountSetup.ShortestPassword} characters.",
            nameof(IdentityErrorDescriber.PasswordRequiresUniqueChars) =>
                "The password repeats too few different characters. Four different ones are the least.",
            _ => error.Description,
        };
}

using System.Net;
using Microsoft.AspNetCore.Identity;
using ShopClass.Data.Access;
using ShopClass.Data.People;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Features.Account;

/// <summary>How an invitation went.</summary>
/// <param name="CourseId">The course somebody is in now; null when not.</param>
/// <param name="Account">The account that was made for them; null where they had one.</param>
/// <param name="Problems">Why not, by field.</param>
public sealed record InvitedOutcome(
    Guid? CourseId,
    Instructor? Account,
    IReadOnlyList<FieldProblem> Problems
)
{
    public string? At(string field) => Problems.FirstOrDefault(p => p.Field == field)?.Sentence;
}

/// <summary>Using an invitation, with or without an account, with wrong codes counted.</summary>
public sealed class InvitedSteps(Invitations invitations, CodeTries tries)
{
    private const string NoSuchCode =
        "That is not an open invitation. It has sixteen letters and figures; there is no O and no 0, no I and no 1 in it. It can be used once, within seven days.";

    private const string TooMany =
        "Too many wrong codes were tried. Wait ten minutes, then type yours once more.";

    /// <summary>Somebody who is signed in.</summary>
    public async Task<InvitedOutcome> UseAsync(
        InstructorViewer viewer,
        InvitedEntry entry,
        IPAddress? from,
        CancellationToken cancel
    )
    {
        var (code, problem) = await ReadAsync(entry.Code, from, cancel);
        if (code is null)
            return Not(problem!);
        var used = await invitations.UseAsync(viewer, code, cancel);
        return used.IsSaved ? new(used.Value, null, []) : new(null, null, used.Problems);
    }

    /// <summary>Somebody new: makes the account with the name and password typed, when the code is good.</summary>
    public async Task<InvitedOutcome> MakeAsync(
        UserManager<Instructor> users,
        InvitedEntry entry,
        IPAddress? from,
        CancellationToken cancel
    )
    {
        if (ProblemWith(entry) is { } missing)
            return Not(missing);
        var (code, problem) = await ReadAsync(entry.Code, from, cancel);
        if (code is null)
            return Not(problem!);
        var account = new Instructor { UserName = entry.Name!.Trim() };
        var made = await users.CreateAsync(account, entry.Password!);
        if (!made.Succeeded)
            return Not([
                .. made.Errors.Select(e => new FieldProblem(
                    e.Code.StartsWith("Password", StringComparison.Ordinal) ? "Password" : "Name",
                    FirstAccount.Sentence(e)
                )),
            ]);
        var used = await invitations.UseAsync(new InstructorViewer(account.Id), code, cancel);
        if (used.IsSaved)
            return new(used.Value, account, []);
        // Somebody else was quicker with the same code: no account stays behind for nothing.
        await users.DeleteAsync(account);
        return Not([.. used.Problems]);
    }

    private async Task<(string? Code, FieldProblem? Problem)> ReadAsync(
        string? typed,
        IPAddress? from,
        CancellationToken cancel
    )
    {
        if (!tries.MayTry(from))
            return (null, new("Code", TooMany));
        if (
            Invitations.Read(typed) is { } code
            && await invitations.LookUpAsync(code, cancel) is not null
        )
            return (code, null);
        tries.WasWrong(from);
        return (null, new("Code", NoSuchCode));
    }

    private static FieldProblem? ProblemWith(InvitedEntry entry)
    {
        if (string.IsNullOrWhiteSpace(entry.Name))
            return new("Name", "Type the name you want to sign in with.");
        if (entry.Name.Trim().Length > 80)
            return new("Name", "A name has at most 80 characters.");
        if (entry.Password is not { Length: >= AccountSetup.ShortestPassword and <= 200 })
            return new(
                "Password",
                $"A password has {AccountSetup.ShortestPassword} to 200 characters."
            );
        return entry.Password == entry.Again
            ? null
            : new("Again", "The two passwords differ. Type the same one twice.");
    }

    private static InvitedOutcome Not(params FieldProblem[] problems) => new(null, null, problems);
}

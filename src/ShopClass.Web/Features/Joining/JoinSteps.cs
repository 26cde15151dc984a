using System.Net;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;

namespace ShopClass.Web.Features.Joining;

/// <summary>Where somebody stands at the door.</summary>
/// <param name="Found">What the code opens; null while none was read.</param>
/// <param name="Code">The code that was read.</param>
/// <param name="Problem">Why it goes no further, as a sentence; null when it does.</param>
/// <param name="Arrival">Set once they are through, or wait.</param>
public sealed record AtTheDoor(
    CodeFound? Found,
    string Code,
    string? Problem = null,
    Arrival? Arrival = null
)
{
    public static AtTheDoor Begin { get; } = new(null, "");
}

/// <summary>Joining, one form after the other, with wrong codes counted.</summary>
public sealed class JoinSteps(JoinDesk desk, CodeTries tries)
{
    private const string NoSuchCode =
        "That is not a code of a class. A code has eight letters and figures, as on the board; there is no O and no 0, no I and no 1 in it.";

    /// <summary>Reads a code and says what it opens.</summary>
    public async Task<AtTheDoor> ReadAsync(string? typed, IPAddress? from, CancellationToken cancel)
    {
        if (!tries.MayTry(from))
            return new(null, "", CodeTries.Sentence);
        if (string.IsNullOrWhiteSpace(typed))
            return new(null, "", "Type the code from the board or the one you were given.");
        if (JoinCode.Read(typed) is not { } code)
        {
            tries.WasWrong(from);
            return new(null, "", NoSuchCode);
        }

        var found = await desk.LookUpAsync(code, cancel);
        if (found.Opens is CodeOpens.Class or CodeOpens.Student)
            return new(found, code);
        tries.WasWrong(from);
        return new(
            null,
            "",
            found.Opens is CodeOpens.NothingNow
                ? "That code has run out or was turned off. Ask your instructor for the new one."
                : NoSuchCode
        );
    }

    /// <summary>Comes in with a code that was read before; it is read again, since the form came back from outside.</summary>
    public async Task<AtTheDoor> ComeInAsync(
        JoinEntry entry,
        string kind,
        IPAddress? from,
        CancellationToken cancel
    )
    {
        var read = await ReadAsync(entry.Code, from, cancel);
        if (read.Found is not { } found)
            return read;
        var outcome =
            found.Opens is CodeOpens.Student
                ? await desk.UseStudentCodeAsync(read.Code, kind, cancel)
                : await desk.AskAsync(read.Code, entry.Name, kind, cancel);
        return outcome.IsSaved
            ? read with
            {
                Arrival = outcome.Value,
            }
            : read with
            {
                Problem = string.Join(" ", outcome.Problems.Select(p => p.Sentence)),
            };
    }
}

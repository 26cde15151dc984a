using ShopClass.Data.Access;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Students;

/// <summary>A student's card while it is being changed.</summary>
/// <param name="stored">The card as it is.</param>
/// <param name="today">The day proposed for a consent noted now.</param>
public sealed class StudentCardEdit(StudentView stored, DateOnly today)
{
    public string Name { get; set; } = stored.Card.Name;

    public string Alias { get; set; } = stored.Card.Alias;

    public bool IsLeftHanded { get; set; } = stored.Card.IsLeftHanded;

    /// <summary>"yes", "no", or empty while nobody has noted it.</summary>
    public string Consent { get; set; } =
        stored.Card.Consent is not { IsGiven: var isGiven } ? ""
        : isGiven ? "yes"
        : "no";

    /// <summary>The day it was said.</summary>
    public DateOnly ConsentOn { get; set; } = stored.Card.Consent?.On ?? today;

    public Guid Version { get; private set; } = stored.Version;

    public IReadOnlyList<FieldProblem> Problems { get; private set; } = [];

    public StudentCard Card =>
        new(Name.Trim(), Alias.Trim(), IsLeftHanded)
        {
            Consent = Consent.Length == 0 ? null : new(Consent == "yes", ConsentOn),
        };

    /// <summary>Takes in how the save ended; what was typed stays.</summary>
    public void Take(Outcome<StudentView> outcome)
    {
        Problems = outcome.Kind switch
        {
            OutcomeKind.Saved => [],
            OutcomeKind.ChangedMeanwhile when outcome.Value is { } theirs => [Overtaken(theirs)],
            OutcomeKind.Refused => outcome.Problems,
            _ => [new("", "This student is no longer here, so nothing was saved.")],
        };
        if (outcome is { Kind: OutcomeKind.ChangedMeanwhile, Value: { } now })
            Version = now.Version;
    }

    private static FieldProblem Overtaken(StudentView theirs) =>
        new(
            "",
            $"Somebody else changed this card meanwhile: name “{theirs.Card.Name}”, alias “{theirs.Card.Alias}”, "
                + $"{(theirs.Card.IsLeftHanded ? "left-handed" : "right-handed")}, consent: {ConsentWords.Of(theirs.Card.Consent)}. Save again to put yours in its place."
        );
}

using ShopClass.Data.Access;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Students;

/// <summary>A student's card while it is being changed.</summary>
public sealed class StudentCardEdit(StudentView stored)
{
    public string Name { get; set; } = stored.Card.Name;

    public string Alias { get; set; } = stored.Card.Alias;

    public bool IsLeftHanded { get; set; } = stored.Card.IsLeftHanded;

    public Guid Version { get; private set; } = stored.Version;

    public IReadOnlyList<FieldProblem> Problems { get; private set; } = [];

    public StudentCard Card => new(Name.Trim(), Alias.Trim(), IsLeftHanded);

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
                + $"{(theirs.Card.IsLeftHanded ? "left-handed" : "right-handed")}. Save again to put yours in its place."
        );
}

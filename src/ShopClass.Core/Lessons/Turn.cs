using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>
/// What a student does at one station without a change: a few steps on end, or a share of one long step. A turn is never
/// broken by the end of a lesson.
/// </summary>
/// <param name="StudentId">Whose turn.</param>
/// <param name="Steps">Numbers of the steps, rising.</param>
/// <param name="Skill">The skill all of them use.</param>
/// <param name="Station">Where all of them are done.</param>
/// <param name="Minutes">Whole minutes, from 1.</param>
/// <param name="Part">Which share of a long step this is, from 1.</param>
/// <param name="Parts">Into how many shares it was cut; 1 for whole steps.</param>
public sealed record Turn(
    string StudentId,
    IReadOnlyList<int> Steps,
    Skill Skill,
    Station Station,
    int Minutes,
    int Part = 1,
    int Parts = 1
);

/// <summary>A turn still to be given its place, and what it waits for.</summary>
/// <param name="Turn">The turn.</param>
/// <param name="After">Turns of the same student that come first, as places in the list of all turns; each is lower than its own.</param>
/// <param name="Waiting">Minutes its work must be left alone before what comes after.</param>
public sealed record TurnToPlace(Turn Turn, IReadOnlyList<int> After, int Waiting);

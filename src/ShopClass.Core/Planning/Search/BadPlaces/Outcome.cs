namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>What a section comes to at a place.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends at the soonest.</param>
/// <param name="Room">How much later it may end for no more than the longer rips.</param>
/// <param name="Cost">The least it can cost there, one crosscut at its end included.</param>
/// <param name="Rips">Rips it takes, each as long as it is.</param>
internal readonly record struct Outcome(long From, long To, long Room, Cost Cost, int Rips);

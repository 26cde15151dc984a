namespace ShopClass.Web.Features.Joining;

/// <summary>On what terms a door is opened.</summary>
/// <param name="Days">How long the class code holds.</param>
/// <param name="ListedComeIn">Whether listed names come straight in.</param>
public sealed record DoorTerms(int Days, bool ListedComeIn);

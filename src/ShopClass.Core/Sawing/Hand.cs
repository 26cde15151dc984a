namespace ShopClass.Core.Sawing;

/// <summary>The hand that holds the saw.</summary>
public enum Hand
{
    /// <summary>Right-handed.</summary>
    Right,

    /// <summary>Left-handed: everything is mirrored.</summary>
    Left,
}

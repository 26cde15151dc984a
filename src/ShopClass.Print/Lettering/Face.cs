namespace ShopClass.Print.Lettering;

/// <summary>The faces sheets are set in.</summary>
public enum Face
{
    /// <summary>Source Sans 3 Regular.</summary>
    Text,

    /// <summary>Source Sans 3 SemiBold.</summary>
    Strong,

    /// <summary>Source Sans 3 Italic.</summary>
    Italic,

    /// <summary>Zilla Slab SemiBold; it has no fractions.</summary>
    Heading,
}

using System.Runtime.CompilerServices;

namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Tells sections apart by which they are, not by what they hold: there is one of each.</summary>
internal sealed class ByReference<T> : IEqualityComparer<(SectionOption Section, T With)>
    where T : IEquatable<T>
{
    public bool Equals((SectionOption Section, T With) x, (SectionOption Section, T With) y) =>
        ReferenceEquals(x.Section, y.Section) && x.With.Equals(y.With);

    public int GetHashCode((SectionOption Section, T With) key) =>
        HashCode.Combine(RuntimeHelpers.GetHashCode(key.Section), key.With);
}

using System.Runtime.CompilerServices;

namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Tells sections or strips apart by which they are, not by what they hold: there is one of each.</summary>
internal sealed class ByReference<TOption, TWith> : IEqualityComparer<(TOption Option, TWith With)>
    where TOption : class
    where TWith : IEquatable<TWith>
{
    public bool Equals((TOption Option, TWith With) x, (TOption Option, TWith With) y) =>
        ReferenceEquals(x.Option, y.Option) && x.With.Equals(y.With);

    public int GetHashCode((TOption Option, TWith With) key) =>
        HashCode.Combine(RuntimeHelpers.GetHashCode(key.Option), key.With);
}

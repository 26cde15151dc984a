namespace ShopClass.Core.Tests.Drawings;

/// <summary>Numbers that are the same to within a tolerance.</summary>
internal sealed class Near(double tolerance) : IEqualityComparer<double>
{
    public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

    public int GetHashCode(double number) => 0;
}

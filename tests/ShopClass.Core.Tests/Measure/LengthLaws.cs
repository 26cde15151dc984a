using CsCheck;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Measure;

public class LengthLaws
{
    private static readonly Gen<Length> Any = Gen.Long[-48_768_000, 48_768_000]
        .Select(Length.FromTicks);
    private static readonly Gen<Length> NotNegative = Gen.Long[0, 48_768_000]
        .Select(Length.FromTicks);
    private static readonly Gen<Length> Step = Gen.Long[1, 1_000_000].Select(Length.FromTicks);
    private static readonly Gen<Precision> AnyPrecision = Gen.OneOf(Enum.GetValues<Precision>());
    private static readonly Gen<UnitSystem> Unit = Gen.OneOf(Enum.GetValues<UnitSystem>());

    [Fact]
    public void Shares_add_up_to_the_whole_and_differ_by_a_tick_at_most() =>
        Gen.Select(NotNegative, Gen.Int[1, 50])
            .Sample(
                (whole, parts) =>
                {
                    var shares = whole.Split(parts);
                    return shares.Count == parts
                        && shares.Aggregate(Length.Zero, (sum, share) => sum + share) == whole
                        && (shares[0] - shares[^1]).Ticks is 0 or 1
                        && shares.Zip(shares.Skip(1)).All(pair => pair.First >= pair.Second);
                }
            );

    [Fact]
    public void Rounding_down_stays_on_the_step_and_within_one_step_below() =>
        Gen.Select(Any, Step)
            .Sample(
                (length, step) =>
                {
                    var down = length.RoundDownTo(step);
                    return down.Ticks % step.Ticks == 0 && down <= length && length < down + step;
                }
            );

    [Fact]
    public void Rounding_up_is_rounding_down_seen_from_the_other_side() =>
        Gen.Select(Any, Step)
            .Sample((length, step) => length.RoundUpTo(step) == -(-length).RoundDownTo(step));

    [Fact]
    public void Rounding_goes_to_the_nearest_and_halfway_up() =>
        Gen.Select(Any, Step)
            .Sample(
                (length, step) =>
                {
                    var (below, above) = (length.RoundDownTo(step), length.RoundUpTo(step));
                    return length.RoundTo(step)
                        == (length - below < above - length ? below : above);
                }
            );

    [Fact]
    public void Order_is_that_of_the_ticks() =>
        Gen.Select(Any, Any)
            .Sample(
                (a, b) =>
                    (a < b) == (a.Ticks < b.Ticks)
                    && (a <= b) == !(b < a)
                    && Math.Sign(a.CompareTo(b)) == -Math.Sign(b.CompareTo(a))
                    && Length.Min(a, b) + Length.Max(a, b) == a + b
                    && (a - b) + b == a
            );

    [Fact]
    public void What_is_written_is_read_back_as_the_rounded_length() =>
        Gen.Select(NotNegative, AnyPrecision)
            .Sample(
                (length, precision) =>
                {
                    var rounded = length.RoundTo(precision.Step());
                    if (rounded > LengthReader.Longest)
                        return true;
                    return Reads(LengthWriter.Write(length, precision), precision.Unit(), rounded)
                        && Reads(
                            LengthWriter.WriteWithUnit(length, precision),
                            Other(precision.Unit()),
                            rounded
                        );
                }
            );

    [Fact]
    public void Opening_and_saving_a_field_never_changes_it() =>
        Gen.Select(NotNegative, Unit)
            .Sample((length, unit) => Reads(LengthWriter.WriteExact(length, unit), unit, length));

    [Fact]
    public void Less_than_zero_is_written_as_a_minus_and_the_length_without_it() =>
        Gen.Select(NotNegative, Unit)
            .Where((length, _) => length > Length.Zero)
            .Sample(
                (length, unit) =>
                    LengthWriter.WriteExact(-length, unit)
                    == "-" + LengthWriter.WriteExact(length, unit)
            );

    [Fact]
    public void Any_text_is_read_or_refused_with_a_sentence_and_nothing_is_thrown() =>
        Gen.Select(Gen.OneOf(Gen.String, LikeALength), Unit)
            .Sample(
                (text, unit) =>
                    LengthReader.Read(text, unit) is var read
                    && (read.IsRead ? read.Value >= Length.Zero : read.Problem!.EndsWith('.')),
                iter: 20_000
            );

    private static Gen<string> LikeALength { get; } =
        Gen.Char["0123456789 ./,-'\"½⅓⁄−\u00A0\u0000infetmc"]
            .Array[0, 45]
            .Select(characters => new string(characters));

    private static bool Reads(string text, UnitSystem unit, Length expected) =>
        LengthReader.Read(text, unit) is { IsRead: true } read && read.Value == expected;

    private static UnitSystem Other(UnitSystem unit) =>
        unit is UnitSystem.Inch ? UnitSystem.Metric : UnitSystem.Inch;
}

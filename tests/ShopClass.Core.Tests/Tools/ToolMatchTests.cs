using CsCheck;
using ShopClass.Core.Tools;
using Xunit;

namespace ShopClass.Core.Tests.Tools;

public class ToolMatchTests
{
    private static readonly string[] Kinds = ["a", "b", "c"];

    // Hall's theorem, deficiency form (P. Hall, On Representatives of Subsets, 1935; from memory): what goes without is the
    // largest, over all sets of needs, of what they want less what all their kinds together hold.
    [Fact]
    public void As_few_go_without_as_Halls_theorem_allows() =>
        Gen.Select(Gen.Select(Gen.Int[1, 7], Gen.Int[0, 4]).Array[1, 4], Gen.Int[0, 5].Array[3])
            .Sample(
                (wanted, counts) =>
                {
                    ToolNeed[] needs =
                    [
                        .. wanted.Select(w => new ToolNeed(
                            [.. Kinds.Where((_, i) => (w.Item1 >> i & 1) == 1)],
                            w.Item2
                        )),
                    ];
                    var have = Kinds.Zip(counts).ToDictionary(k => k.First, k => k.Second);

                    var worst = Enumerable
                        .Range(0, 1 << needs.Length)
                        .Max(set =>
                        {
                            var some = needs.Where((_, i) => (set >> i & 1) == 1).ToList();
                            return some.Sum(n => n.Count)
                                - some.SelectMany(n => n.AnyOf).Distinct().Sum(k => have[k]);
                        });

                    Assert.Equal(worst, ToolMatch.Short(needs, have).Sum());
                }
            );
}

using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>
/// Laws of the cheapest way, which hold for what is proven: a bound of the easier question is never above a cost of the
/// harder one.
/// </summary>
public class ClassLawTests
{
    [Fact]
    public void A_cheaper_price_never_makes_the_class_dearer() =>
        Holds(request =>
            request with
            {
                Stock =
                [
                    .. request.Stock.Select((s, i) => i == 0 ? s with { Price = s.Price / 2 } : s),
                ],
            }
        );

    [Fact]
    public void More_wood_on_the_rack_never_makes_the_class_dearer() =>
        Holds(request =>
            request with
            {
                Rack =
                [
                    .. request.Rack,
                    new(request.Stock[0].ToBoard("more", "One more", request.Rules)),
                ],
            }
        );

    [Fact]
    public void A_kit_less_never_makes_the_class_dearer() =>
        Holds(request => request with { Kits = Math.Max(0, request.Kits - 1) });

    [Fact]
    public void A_thinner_kerf_never_makes_the_class_dearer() =>
        Holds(request =>
            request with
            {
                Rules = request.Rules with { CrosscutKerf = Wood.Mm(1), RipKerf = Wood.Mm(1) },
            }
        );

    private static void Holds(Func<ClassRequest, ClassRequest> easier) =>
        RandomClasses
            .Any.Where(r => r.Stock.Count > 0)
            .Sample(
                request =>
                {
                    request = request with { Way = KitWay.Pooled };
                    var plan = ClassPlannerTests.Plan(request);
                    if (!plan.IsComplete)
                        return;
                    var easy = ClassPlannerTests.Plan(easier(request));
                    Assert.True(easy.IsComplete);
                    Assert.True(easy.Bound <= plan.Cost);
                },
                iter: 8,
                threads: 1
            );
}

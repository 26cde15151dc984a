using CsCheck;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Search;

namespace ShopClass.Core.Tests.Planning;

/// <summary>What the rule of thumb takes as known already, against filling anew.</summary>
public class SectionFillerTests
{
    private static Core.Planning.Search.Bench Lay(PlanningRequest request) =>
        Core.Planning.Search.Bench.Lay(request, GlueUpChoices.For(request)[0]);

    private static string Said(DraftSection? section) =>
        section is null
            ? "none"
            : $"{section.From}-{section.To}: "
                + string.Join(
                    "; ",
                    section.Strips.Select(s => $"{s.Near}-{s.Far} {string.Join(' ', s.Blanks)}")
                );

    [Fact]
    public void A_section_is_filled_the_same_wherever_its_end_lies_beyond_what_decided_it()
    {
        var shorter = 0;
        BadPlaceCases.OnOneBoard.Sample(
            request =>
            {
                var bench = Lay(request);
                var stock = bench.Stocks[0];
                var filler = new SectionFiller(bench, stock);
                DraftSection? Fill(long from, long to, int must) =>
                    filler.Fill(from, to, [.. bench.Demand], must);
                for (var must = -1; must < bench.Kinds.Count; must++)
                {
                    for (var from = stock.Start; from < stock.End; from += BadPlaceCases.Unit.Ticks)
                    {
                        var whole = Said(Fill(from, stock.End, must));
                        var reach = filler.Reach;
                        shorter += reach < stock.End ? 1 : 0;
                        for (var to = reach; to < stock.End; to += BadPlaceCases.Unit.Ticks / 2)
                            Assert.Equal(whole, Said(Fill(from, to, must)));
                    }
                }
            },
            iter: 300,
            threads: 1
        );
        Assert.True(shorter > 300);
    }

    [Fact]
    public void What_was_laid_out_before_changes_nothing()
    {
        BadPlaceCases.OnTwoBoards.Sample(
            request =>
            {
                var bench = Lay(request);
                var greedy = new Greedy(bench);
                foreach (var stocks in BoardChoices.Orders(bench.Stocks))
                {
                    foreach (var lead in Greedy.Leads)
                    {
                        var again = greedy.LayOut(stocks, lead);
                        var anew = new Greedy(bench).LayOut(stocks, lead);
                        Assert.Equal(anew.Left, again.Left);
                        Assert.Equal(
                            anew.Boards.SelectMany(b => b.Sections).Select(Said),
                            again.Boards.SelectMany(b => b.Sections).Select(Said)
                        );
                    }
                }
            },
            iter: 200,
            threads: 1
        );
    }
}

using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Shares the surplus width of one section evenly between its strips.</summary>
internal static class EvenShares
{
    public static IEnumerable<LaidOut> Of(LaidOut laid)
    {
        for (var b = 0; b < laid.Boards.Count; b++)
        {
            var board = laid.Boards[b];
            for (var s = 0; s < board.Layout.Sections.Count; s++)
            {
                var section = board.Layout.Sections[s];
                if (
                    section.Strips.Count < 2
                    || Shares.Of([.. section.Strips.Select(LaidOut.Needed)], board) is not { } lines
                )
                    continue;
                Strip[] strips =
                [
                    .. section.Strips.Select(
                        (t, i) => t with { Near = lines[i].Near, Far = lines[i].Far }
                    ),
                ];
                yield return laid.With(
                    (
                        b,
                        board.Layout with
                        {
                            Sections = Relaid.Replaced(
                                board.Layout.Sections,
                                s,
                                section with
                                {
                                    Strips = strips,
                                }
                            ),
                        }
                    )
                );
            }
        }
    }
}

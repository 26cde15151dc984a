using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Core.Tests.Planning.Patterns;

/// <summary>Fewest boards by trying every way, for a handful of pieces.</summary>
internal static class EveryWay
{
    public static int Fewest(LengthsRequest request)
    {
        long[] pieces =
        [
            .. request
                .Wanted.SelectMany(w => Enumerable.Repeat(w.Length, w.Count))
                .OrderDescending(),
        ];
        for (var boards = 0; ; boards++)
        {
            if (
                Fits(
                    request,
                    pieces,
                    0,
                    [.. Enumerable.Repeat(request.Board + request.Kerf, boards)]
                )
            )
                return boards;
        }
    }

    private static bool Fits(LengthsRequest request, long[] pieces, int at, long[] room)
    {
        if (at == pieces.Length)
            return true;
        var tried = new HashSet<long>();
        for (var b = 0; b < room.Length; b++)
        {
            if (room[b] < pieces[at] + request.Kerf || !tried.Add(room[b]))
                continue;
            room[b] -= pieces[at] + request.Kerf;
            if (Fits(request, pieces, at + 1, room))
                return true;
            room[b] += pieces[at] + request.Kerf;
        }

        return false;
    }
}

using System.Globalization;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Guide;

/// <summary>Clear planed boards as they stand in the rack, to try a project on.</summary>
internal static class TrialBoards
{
    // The wood makes no difference to where parts go; this one brings no caution of its own.
    private const string AnySpecies = "eastern-white-pine";

    /// <summary>One board without trims.</summary>
    public static Board Of(Length thickness, Length width, Length length) =>
        new()
        {
            Id = "1",
            Name = "Board 1",
            SpeciesId = AnySpecies,
            Surfacing = Surfacing.S4S,
            Thickness = thickness,
            WidthAtStart = width,
            WidthAtMiddle = width,
            WidthAtEnd = width,
            Length = length,
        };

    /// <summary>So many equal boards with this trim at both ends.</summary>
    public static IReadOnlyList<Board> Equal(int count, Board board, Length trim) =>
        [
            .. Enumerable
                .Range(1, count)
                .Select(i =>
                    board with
                    {
                        Id = i.ToString(CultureInfo.InvariantCulture),
                        Name = string.Create(CultureInfo.InvariantCulture, $"Board {i}"),
                        TrimStart = trim,
                        TrimEnd = trim,
                    }
                ),
        ];
}

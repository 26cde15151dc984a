using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;

namespace ShopClass.Web.Features.Orders;

/// <summary>A piece for the rack as it is being entered: one width, the usual trim at both ends.</summary>
public sealed class RackDraft
{
    public string Name { get; set; } = "";

    public string? SpeciesId { get; set; }

    public Surfacing Surfacing { get; set; } = Surfacing.S4S;

    public Length? Thickness { get; set; }

    public Length? Width { get; set; }

    public Length? Length { get; set; }

    public string Place { get; set; } = "";

    public int Count { get; set; } = 1;

    public RackPiece ToPiece(CourseRules rules) =>
        new()
        {
            Id = "",
            Place = Place,
            Count = Count,
            Board = new()
            {
                Id = "",
                Name = Name,
                SpeciesId = SpeciesId ?? "",
                Surfacing = Surfacing,
                Thickness = Thickness ?? default,
                WidthAtStart = Width ?? default,
                WidthAtMiddle = Width ?? default,
                WidthAtEnd = Width ?? default,
                Length = Length ?? default,
                TrimStart = rules.UsualEndTrim,
                TrimEnd = rules.UsualEndTrim,
            },
        };
}

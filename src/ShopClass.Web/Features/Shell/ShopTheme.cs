using MudBlazor;

namespace ShopClass.Web.Features.Shell;

/// <summary>
/// Lettering and shape for the component library. Its colours come from styles/mud.css, which points them at the
/// paper's own names, so that light and dark are one switch and are right before any script runs.
/// </summary>
public static class ShopTheme
{
    public const string Paper = "#f3eee2";
    public const string Slate = "#22282b";

    private static readonly string[] Lettering =
    [
        "Source Sans 3",
        "Segoe UI",
        "Helvetica Neue",
        "Arial",
        "sans-serif",
    ];

    private static readonly string[] Heading = ["Zilla Slab", "Rockwell", "Georgia", "serif"];

    public static MudTheme Theme { get; } =
        new()
        {
            LayoutProperties = new() { DefaultBorderRadius = "2px" },
            Typography = new()
            {
                Default = new DefaultTypography()
                {
                    FontFamily = Lettering,
                    FontSize = "1rem",
                    LineHeight = "1.45",
                    LetterSpacing = "normal",
                },
                H1 = InHeading(new H1Typography(), "2rem"),
                H2 = InHeading(new H2Typography(), "1.3rem"),
                H3 = InHeading(new H3Typography(), "1.08rem"),
                H4 = InHeading(new H4Typography(), "1.08rem"),
                H5 = InHeading(new H5Typography(), "1.08rem"),
                H6 = InHeading(new H6Typography(), "1.15rem"),
                Body1 = InText(new Body1Typography(), "1rem"),
                Body2 = InText(new Body2Typography(), "1rem"),
                Caption = InText(new CaptionTypography(), "0.9rem"),
                Subtitle1 = InText(new Subtitle1Typography(), "1rem"),
                Subtitle2 = InText(new Subtitle2Typography(), "1rem"),
                Button = InButton(),
            },
        };

    private static T InHeading<T>(T type, string size)
        where T : BaseTypography
    {
        type.FontFamily = Heading;
        type.FontSize = size;
        type.FontWeight = "600";
        type.LineHeight = "1.2";
        type.LetterSpacing = "normal";
        return type;
    }

    private static T InText<T>(T type, string size)
        where T : BaseTypography
    {
        type.FontFamily = Lettering;
        type.FontSize = size;
        type.LineHeight = "1.45";
        type.LetterSpacing = "normal";
        return type;
    }

    private static ButtonTypography InButton()
    {
        var type = InText(new ButtonTypography(), "1rem");
        type.FontWeight = "600";
        type.TextTransform = "none";
        return type;
    }
}

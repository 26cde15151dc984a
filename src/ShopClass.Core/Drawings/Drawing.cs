namespace ShopClass.Core.Drawings;

/// <summary>
/// A picture as plain shapes. The page writes it as SVG, the printer as PDF: one description, two pens. Coordinates are
/// in drawing points (1/72 in on paper at scale 1), x to the right and y down. Drawing is the one place where lengths
/// become floating point: nothing is ever read back from it.
/// </summary>
/// <param name="Width">Width in points.</param>
/// <param name="Height">Height in points.</param>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="TextTwin">The same in words, for whoever cannot see it.</param>
/// <param name="Shapes">What is drawn, back to front.</param>
public sealed record Drawing(
    double Width,
    double Height,
    string Title,
    string TextTwin,
    IReadOnlyList<Shape> Shapes
);

/// <summary>Something drawn.</summary>
/// <param name="Ink">What it stands for; the pen decides how that looks.</param>
public abstract record Shape(Ink Ink);

/// <summary>A rectangle.</summary>
/// <param name="X">Left.</param>
/// <param name="Y">Top.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Ink">What it stands for.</param>
/// <param name="Tag">What it belongs to ("A2", "defect 1"), so that a page can find and select it.</param>
public sealed record Box(
    double X,
    double Y,
    double Width,
    double Height,
    Ink Ink,
    string? Tag = null
) : Shape(Ink);

/// <summary>A straight line.</summary>
/// <param name="X1">Start.</param>
/// <param name="Y1">Start.</param>
/// <param name="X2">End.</param>
/// <param name="Y2">End.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record Line(double X1, double Y1, double X2, double Y2, Ink Ink) : Shape(Ink);

/// <summary>A smooth curve through points (grain, a knot's ring): each three points after the first are a cubic Bézier.</summary>
/// <param name="Points">Start point, then triples of two control points and an end point.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record Curve(IReadOnlyList<Point> Points, Ink Ink) : Shape(Ink);

/// <summary>A closed shape.</summary>
/// <param name="Points">Its corners.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record Polygon(IReadOnlyList<Point> Points, Ink Ink) : Shape(Ink);

/// <summary>An ellipse.</summary>
/// <param name="CentreX">Centre.</param>
/// <param name="CentreY">Centre.</param>
/// <param name="RadiusX">Half width.</param>
/// <param name="RadiusY">Half height.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record Oval(double CentreX, double CentreY, double RadiusX, double RadiusY, Ink Ink)
    : Shape(Ink);

/// <summary>Words on a drawing.</summary>
/// <param name="X">Anchor.</param>
/// <param name="Y">Middle of the line of text.</param>
/// <param name="Text">What it says.</param>
/// <param name="Size">Height of the letters, points.</param>
/// <param name="Anchor">How the text lies about its anchor.</param>
/// <param name="Ink">What it stands for.</param>
/// <param name="Turn">Degrees clockwise about the anchor.</param>
public sealed record Label(
    double X,
    double Y,
    string Text,
    double Size,
    Anchor Anchor,
    Ink Ink,
    double Turn = 0
) : Shape(Ink);

/// <summary>A point on a drawing.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
public readonly record struct Point(double X, double Y);

/// <summary>How text lies about its anchor.</summary>
public enum Anchor
{
    /// <summary>Begins there.</summary>
    Start,

    /// <summary>Is centred there.</summary>
    Middle,

    /// <summary>Ends there.</summary>
    End,
}

/// <summary>What a shape stands for. Each must be told apart without colour.</summary>
public enum Ink
{
    /// <summary>A board's wood.</summary>
    Wood,

    /// <summary>Grain on wood.</summary>
    Grain,

    /// <summary>A blank's outline and tint.</summary>
    Blank,

    /// <summary>A finished part within its blank (dashed).</summary>
    Finished,

    /// <summary>Sawdust: the kerf.</summary>
    Kerf,

    /// <summary>Waste, hatched.</summary>
    Waste,

    /// <summary>An offcut worth keeping.</summary>
    Offcut,

    /// <summary>A knot, split or other bad place.</summary>
    Defect,

    /// <summary>A pencil line.</summary>
    PencilLine,

    /// <summary>A knife line: thin and sharp.</summary>
    KnifeLine,

    /// <summary>A gauge line.</summary>
    GaugeLine,

    /// <summary>A dimension line and its figures.</summary>
    Dimension,

    /// <summary>Words on wood.</summary>
    Lettering,

    /// <summary>What matters now: the cut being made, the thing selected.</summary>
    Accent,

    /// <summary>Quiet words beside the drawing.</summary>
    Quiet,
}

namespace ShopClass.Core.Sawing.Steps;

/// <summary>
/// How each kind of work is done: how to start, go on and end, in our own words (common practice). An instructor may put
/// other words in their place for a course.
/// </summary>
public static class Techniques
{
    /// <summary>The notes by key, in the order of the work. Keys are stable; a course keeps its own notes under them.</summary>
    public static IReadOnlyDictionary<string, string> Usual { get; } =
        new OrderedDictionary<string, string>(StringComparer.Ordinal)
        {
            ["CheckBoard"] =
                "Sight along the edges for wind and crook, lay a rule across the face for cup, and feel for nails and grit. Ring every bad place with a pencil on both faces.",
            ["MarkOut"] =
                "Hook the tape once and mark every length without moving it, so that errors do not add up. Shade the waste side of each line.",
            ["Crosscut"] =
                "Guide the teeth with the thumb high on the blade and start with a short stroke towards you at the far corner. Long, light strokes with the forearm in line with the saw; catch the offcut for the last three strokes.",
            ["WideCrosscut"] =
                "Start at the far corner and bring the kerf back along the line with the saw held low, until it lies right across; then raise the saw to the usual slope. Hold the offcut up for the last strokes so that it does not tear away.",
            ["Rip"] =
                "Start with a few short pulls, then long strokes with the saw steeper than for a crosscut. If the kerf closes, put a thin wedge in behind the saw; if it wanders, twist it gently back over several strokes.",
            ["RipInVise"] =
                "Stand in line with the cut and saw down only as far as is comfortable, raising the piece as you go. Turn it end for end and saw to meet; the two kerfs may differ by a hair, which the plane takes off.",
            ["FlattenFace"] =
                "Lay the hollow side down so that the piece does not rock. Plane across the high places first, then from corner to corner, then along the grain; test with two straight sticks and a straightedge.",
            ["StraightenEdge"] =
                "Plane the middle a little hollow, then take full shavings until the plane cuts from end to end. Test with a straightedge, and with the square from the true face.",
            ["PlaneToThickness"] =
                "Gauge all round from the true face and plane down to the line, across the grain while there is much to take and along it at the end. Stop when the gauge line splits.",
            ["JointEdges"] =
                "Fold the two pieces face to face in the vise and plane both edges at once, so that any tilt cancels out. Stand one on the other against the light: no gap, or a hair in the middle.",
            ["GlueUp"] =
                "Try it dry with all clamps first. Spread glue thinly on one edge, rub the joint, and tighten the clamps in turn, above and below, until a thin line of glue stands out; check that it lies flat.",
            ["MarkReference"] =
                "Choose the better face and the truer edge. Mark the face with a loop that runs off to the edge, and the edge with a small v that meets it; from now on the square and the gauge sit on these two only.",
            ["SetGauge"] =
                "Set the pin from a rule, strike a short line on waste, measure it and tap the stem until it is right. Leave it set until every line it has to strike is struck.",
            ["BringToWidth"] =
                "Gauge from the reference edge on both faces. Plane down to the line with the piece upright in the vise, and look at both faces before the last shavings.",
            ["RipAndPlaneToWidth"] =
                "Gauge from the reference edge on both faces and saw a shaving's width clear of the line, looking at both sides of the piece. Then plane down to the line, and look at both faces before the last shavings.",
            ["RipToWidth"] =
                "Gauge from the reference edge on both faces and saw just clear of the line, looking at both sides of the piece. Leave the line standing.",
            ["SquareEnd"] =
                "Knife across the face with the square on the reference edge, then the edges with the square on the face; the lines must meet at the last corner. Chisel a small step on the waste side for the saw to run in.",
            ["GangMark"] =
                "Stand the pieces side by side with their squared ends flush and clamp them. Measure once and knife across all their edges together, then part them and carry each line round.",
            ["CutToLength"] =
                "Set the saw in the chiselled step and start with the lightest stroke, tilting down to the full width little by little. Saw with the waste hanging free and support it at the end; clean the end up to the knife line.",
            ["PlaneEnd"] =
                "There is too little to saw: plane the end grain to the knife line from both edges towards the middle, so that the far corner does not break out.",
            ["Practise"] =
                "Do it once on a piece of your own waste, all the way, and look at the result with the instructor before you touch the part.",
            ["MarkJoint"] =
                "Mark parts that share a joint together, so that they agree even where a measure is off. Take widths from the mating piece itself with the knife, depths with the gauge, and shade the waste.",
            ["Dado"] =
                "Chisel a step along both knife lines, saw down both walls on the waste side to the gauge lines, and pare the waste from both edges towards the middle. Level the bottom last.",
            ["StoppedDado"] =
                "Chop a pocket as deep as the dado and about an inch long at the stop, so that the saw has somewhere to run. Then saw both walls into the pocket with short strokes, pare the waste from the open edge, and level the bottom last. Stopped at both ends, it is chopped all the way.",
            ["Shoulder"] =
                "Stand the piece in its dado and knife where the trench ends; square the line round. Saw the corner off on the waste side like a small tenon's shoulder, and pare to the lines.",
            ["Rabbet"] =
                "Saw the shoulder to the gauge line, then split or saw away the waste in thin pieces and pare to both lines with the shoulder as a guide.",
            ["Notch"] =
                "Saw the short sides on the waste side of the knife lines down to the gauge line, saw or chop the rest out, and pare to the line from both faces.",
            ["HalfLap"] =
                "Saw the shoulders at the bench hook to the gauge lines, then the cheeks in the vise from both corners, and pare to half the thickness with the mating piece beside you.",
            ["Mortise"] =
                "Start in the middle and chop towards the ends, half from each face, keeping the last shaving for the knife lines. Check with the square that the walls stand upright.",
            ["Tenon"] =
                "Saw the cheeks upright in the vise on the waste side, first from one corner, then from the other, then straight down. Saw the shoulders last, at the bench hook, in a chiselled step.",
            ["Tails"] =
                "Saw down the slopes on the waste side to the gauge line with the piece upright in the vise, chop half way from each face, and look at it from the end: straight walls.",
            ["Sockets"] =
                "Lay the tails on the end and take their shape with the knife; saw on the waste side of those lines and chop half way from each face.",
            ["Hole"] =
                "Bore or chop from the marked face until the point just shows, then finish from the other side so that nothing splits off.",
            ["Peg"] =
                "Take the edges off the end that enters and pare along the grain, turning the peg as you go, until it starts by hand; leave the rest until the fit.",
            ["JointAsNoted"] =
                "Knife lines for what is sawn, gauge lines for how deep; saw on the waste side, pare to the lines, and try the mating piece early.",
            ["Fit"] =
                "Push by hand, never hammer. Where it binds there is a shiny place: pare that, a shaving at a time, and try again.",
            ["TakeLength"] =
                "Hold the piece in its own place with its squared end home, and knife its length from the parts it must meet. No rule is needed.",
            ["DryFit"] =
                "Put every joint home by hand, clamp lightly and look: shoulders closed, corners square, both diagonals equal. Mark what meets what, and take it apart again.",
            ["Flush"] =
                "Plane from the outside in, a shaving at a time, and stop as soon as the plane touches the neighbour. End grain is planed from both corners towards the middle.",
            ["LevelPanel"] =
                "Scrape the dried glue off first. Plane at a slant across the joint with the iron set fine, and stop when the step is gone; there is little thickness to spare.",
            ["Assemble"] =
                "Put it together dry once more and lay out everything you need. Work from the inside out, test the corners with the square or by measuring both diagonals, and wipe glue off at once.",
            ["Finish"] =
                "Take off pencil and gauge lines with a fine plane or a scraper, break the sharp edges with a stroke or two, and put the finish on thinly, along the grain, as its label says.",
        };
}

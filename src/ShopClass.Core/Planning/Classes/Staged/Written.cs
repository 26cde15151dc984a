namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Gives the pieces of a cut-up board their places.</summary>
internal static class Written
{
    public static StagedBoard Board(Cutting cutting, CutBoard board)
    {
        var sections = new List<StagedSection>();
        var from = 0;
        foreach (var section in board.Sections)
        {
            var near = 0;
            var to = from;
            var strips = new List<StagedStrip>();
            foreach (var strip in section.Strips)
            {
                var at = from;
                var far = near;
                var places = new List<StagedPlace>();
                foreach (var (piece, way) in strip.Pieces)
                {
                    places.Add(new(piece, at, near));
                    at += way.Along;
                    far = Math.Max(far, near + way.AcrossOn(cutting.Planks[board.Plank]));
                }

                strips.Add(new(near, far, places));
                near = far;
                to = Math.Max(to, at);
            }

            sections.Add(new(from, to, strips));
            from = to;
        }

        return new(board.Plank, sections);
    }
}

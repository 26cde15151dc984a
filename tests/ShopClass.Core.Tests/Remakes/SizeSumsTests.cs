using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Remakes;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Remakes;

public class SizeSumsTests
{
    // A mortise from 5 in to 5 1/2 in across a part 6 in wide: half an inch is left beside it.
    private static readonly Project Tote = new()
    {
        Name = "Tote",
        Parts =
        [
            Wood.Part("A", 2, Wood.In(0, 3, 4), Wood.In(6), Wood.In(9)),
            Wood.Part("D", 1, Wood.In(0, 3, 4), Wood.In(1, 1, 4), Wood.In(18)),
        ],
        Joints =
        [
            new()
            {
                Kind = JointKind.MortiseAndTenon,
                Part = "A",
                Mate = "D",
                Depth = Wood.In(0, 3, 4),
                Width = Wood.In(1, 1, 4),
                Across = Wood.In(0, 1, 2),
                FromEdge = Wood.In(5),
                Positions = [Wood.In(7)],
            },
        ],
    };

    [Fact]
    public void A_part_is_made_no_narrower_than_its_joint_reaches()
    {
        var width = new SizeName("A", PartDimension.Width);

        Assert.Null(SizeSums.Shrink(Tote, width, Wood.In(0, 1, 2)));
        Assert.NotNull(SizeSums.Shrink(Tote, width, Wood.In(0, 1, 2) - Length.FromTicks(1)));
    }
}

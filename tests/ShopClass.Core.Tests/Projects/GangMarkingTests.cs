using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;
using static ShopClass.Core.Tests.Projects.JointChecksTests;

namespace ShopClass.Core.Tests.Projects;

// Likes are made equal before they are made exact: common practice.
public class GangMarkingTests
{
    [Fact]
    public void Pieces_of_one_length_and_thickness_are_marked_together()
    {
        var groups = GangMarking.GroupsIn([
            Made("A", "3/4", "6", "14", 2),
            Made("B", "3/4", "6", "20", 1),
            Made("C", "3/4", "2", "14", 1),
            Made("D", "1/2", "6", "14", 1),
        ]);

        var group = Assert.Single(groups);
        Assert.Equal(In("14"), group.Length);
        Assert.Equal(["A1", "A2", "C1"], group.Names);
    }

    [Fact]
    public void A_length_that_stays_open_is_not_marked_with_the_others()
    {
        var open = Made("B", "3/4", "2", "14", 2) with
        {
            Open = [new(PartDimension.Length, In("1/4"), "seated")],
        };

        Assert.Empty(GangMarking.GroupsIn([Made("A", "3/4", "6", "14", 1), open]));
    }
}

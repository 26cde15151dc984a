using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;
using static ShopClass.Core.Tests.Projects.JointChecksTests;

namespace ShopClass.Core.Tests.Projects;

public class OpenCirclesTests
{
    [Fact]
    public void A_circle_of_open_dimensions_is_told_in_full_and_a_chain_is_none()
    {
        Part[] circle = [Waiting("A", "B"), Waiting("B", "C"), Waiting("C", "A")];
        Part[] chain = [circle[0], circle[1], Waiting("C", null)];

        Assert.Equal(
            [
                (
                    "Open.Length",
                    "A waits for B, B for C, C for A: none of them would ever be cut. Take one of them from something else."
                ),
            ],
            Problems(circle)
        );
        Assert.Empty(Problems(chain));
    }

    [Fact]
    public void A_part_outside_a_circle_that_waits_for_one_in_it_is_not_the_one_to_blame() =>
        Assert.Empty(Problems(Waiting("A", "B"), Waiting("B", "C"), Waiting("C", "B")));

    [Fact]
    public void A_part_cannot_be_taken_from_itself() =>
        Assert.Equal(
            [("Open.Length", "A cannot be taken from itself. Choose another part, or none.")],
            Problems(Waiting("A", "A"), Waiting("B", null))
        );

    [Fact]
    public void A_part_cannot_be_taken_from_one_that_is_not_there() =>
        Assert.Equal(
            [("Open.Length", "No part is marked Q. Choose one of B.")],
            Problems(Waiting("A", "Q"), Waiting("B", null))
        );

    private static IReadOnlyList<(string Field, string Sentence)> Problems(params Part[] parts) =>
        OpenCircles.ProblemsIn(parts[0], parts[1..]);

    private static Part Waiting(string letter, string? from) =>
        Made(letter, "3/4", "6", "14", 1) with
        {
            Open =
            [
                new(PartDimension.Length, Length.FromInches(0, 1, 4), "it fits")
                {
                    TakenFrom = from,
                },
            ],
        };
}

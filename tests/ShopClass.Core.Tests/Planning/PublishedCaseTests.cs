using System.Text.Json;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Published cutting instances; the file names their source.</summary>
public class PublishedCaseTests
{
    private static readonly JsonElement[] Instances =
    [
        .. JsonDocument
            .Parse(
                File.ReadAllText(
                    Path.Combine(AppContext.BaseDirectory, "cases", "or-library-small.json")
                )
            )
            .RootElement.GetProperty("instances")
            .EnumerateArray(),
    ];

    public static TheoryData<string> Names =>
        [.. Instances.Select(i => i.GetProperty("id").GetString()!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void As_many_boards_as_published_are_enough_and_the_bound_is_no_higher(string name)
    {
        var instance = Instances.Single(i => i.GetProperty("id").GetString() == name);
        var fewest = instance.GetProperty("fewestBoards").GetInt32();
        var board = instance.GetProperty("board");
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(0)),
            [
                .. Enumerable
                    .Range(1, fewest)
                    .Select(i =>
                        Wood.Board(
                            $"{i}",
                            Wood.Mm(20),
                            Wood.Mm(board[0].GetInt32()),
                            Wood.Mm(board[1].GetInt32())
                        )
                    ),
            ],
            [
                .. instance
                    .GetProperty("parts")
                    .EnumerateArray()
                    .Select(
                        (p, i) =>
                            Wood.Part(
                                $"{(char)('A' + i)}",
                                p[2].GetInt32(),
                                Wood.Mm(20),
                                Wood.Mm(p[0].GetInt32()),
                                Wood.Mm(p[1].GetInt32())
                            )
                    ),
            ]
        ) with
        {
            Goals = [PlanGoal.Boards],
        };
        var plan = Wood.Plan(request);
        Assert.Empty(LayoutProblems.In(request, plan));
        Assert.Empty(plan.Missing);
        Assert.Equal(fewest, plan.Boards.Count);
        Assert.True(plan.Goals[0].Bound <= plan.Goals[0].Value);
    }
}

using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

public class RoundTripTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_demo_course_comes_out_as_it_went_in()
    {
        await using var store = shop.Copy();

        Assert.Equal(Texts.Demo(), await ThroughTheStoreAsync(store, Texts.Demo()));
    }

    [Fact]
    public async Task What_is_exported_can_be_imported_and_is_exported_the_same()
    {
        await using var store = shop.Copy();
        await store.Students.AddAsync(shop.Owner, shop.Course.Id, new("Ada", "", true), Cancel);
        await store.Students.AddAsync(
            shop.Owner,
            shop.Course.Id,
            new("Zora", "ada", false),
            Cancel
        );
        var twin = Shop.Value(
            await store.Projects.CreateAsync(shop.Owner, shop.Course.Id, shop.Project.Name, Cancel)
        );
        await store.Boards.AddAsync(shop.Owner, shop.Student.Id, twin.Id, Oddments.Board, Cancel);
        await store.Projects.AddPartsAsync(
            shop.Owner,
            twin.Id,
            [Oddments.Part, Wood.Side("B")],
            Cancel
        );
        foreach (var joint in Oddments.Joints)
            Shop.Value(
                await store.Projects.PutJointAsync(shop.Owner, twin.Id, null, joint, Cancel)
            );
        Shop.Value(
            await store.Projects.PutSizeCheckAsync(
                shop.Owner,
                twin.Id,
                null,
                Oddments.SizeCheck,
                Cancel
            )
        );
        Shop.Value(
            await store.Courses.SaveTechniqueAsync(
                shop.Owner,
                shop.Course.Id,
                "Rip",
                was: "",
                "Two lines:\nlong strokes.",
                Cancel
            )
        );
        Shop.Value(await store.Yes.WantAsync(shop.Owner, shop.Course.Id, true, Cancel));
        Shop.Value(await store.Paces.TimeFirstCutsAsync(shop.Owner, shop.Course.Id, false, Cancel));
        var first = await store.Files.ExportCourseAsync(shop.Owner, shop.Course.Id, Cancel);

        var second = await ThroughTheStoreAsync(store, first!);

        Assert.Equal(first, second);
        Assert.Contains("1/32 in", first);
        Assert.Contains("long strokes.", first);
        Assert.Contains("\"boardsWaitForYes\": true", first);
        Assert.Contains("\"firstCutsUntimed\": true", first);
        // Two projects of one name: the boards tell them apart by number.
        Assert.Contains("\"project\": 2", first);
    }

    [Fact]
    public async Task Every_setting_and_figure_of_a_file_arrives()
    {
        await using var store = shop.Copy();
        var outcome = await store.ImportAsync(shop.Owner, Texts.Course);
        Assert.Empty(outcome.Problems);
        Assert.Equal(
            "Imported the course “Evenings” with 1 project, 1 student and 1 board.",
            outcome.Summary
        );
        var course = await store.Courses.FindAsync(shop.Owner, outcome.CourseId!.Value, Cancel);
        var student = Assert.Single(await store.Students.ListAsync(shop.Owner, course!.Id, Cancel));
        var project = Assert.Single(await store.Projects.ListAsync(shop.Owner, course.Id, Cancel));
        var board = Assert
            .Single(await store.Boards.ListAsync(shop.Owner, student.Id, project.Id, Cancel))
            .Board;

        Assert.Equal(CourseRules.DefaultsFor(UnitSystem.Inch), course.Rules);
        Assert.True(await store.Yes.IsWantedAsync(shop.Owner, course.Id, Cancel));
        Assert.False(await store.Paces.AreFirstCutsTimedAsync(shop.Owner, course.Id, Cancel));
        Assert.Equal(new("Ada", "", true), student.Card);
        Assert.Equal(Length.FromMillimetres(235), board.WidthAtMiddle);
        Assert.Equal(Length.FromInches(9, 1, 4), board.WidthAtEnd);
        Assert.Equal(new Money(2880, "USD"), board.Price);
        Assert.Equal(
            new Defect(
                DefectKind.Knot,
                new(
                    Length.FromInches(20),
                    Length.FromInches(22),
                    Length.FromInches(1),
                    Length.FromInches(2)
                ),
                DefectReach.BackFace
            ),
            Assert.Single(board.Defects)
        );
    }

    [Fact]
    public async Task A_project_file_adds_a_project_to_the_course_it_is_imported_into()
    {
        await using var store = shop.Copy();

        var outcome = await store.ImportAsync(shop.Owner, Texts.Project, shop.Course.Id);

        Assert.Empty(outcome.Problems);
        Assert.Equal(shop.Course.Id, outcome.CourseId);
        var project = await store.Projects.FindAsync(shop.Owner, outcome.ProjectId!.Value, Cancel);
        var part = Assert.Single(project!.Parts).Part;
        Assert.Equal(Length.FromMillimetres(20), part.Finished.Thickness);
        Assert.Equal(Length.FromMillimetres(500), part.Finished.Length);
        Assert.Equal(GrainDirection.Any, part.Grain);
        var list = await store.Projects.ListAsync(shop.Owner, shop.Course.Id, Cancel);
        Assert.Equal(["Shelf", "Peg rail"], list.Select(p => p.Name));
    }

    [Fact]
    public async Task A_project_is_exported_and_imported_the_same()
    {
        await using var store = shop.Copy();
        var first = await store.Files.ExportProjectAsync(shop.Owner, shop.Project.Id, Cancel);
        var outcome = await store.ImportAsync(shop.Owner, first!, shop.Course.Id);

        Assert.Equal(
            first,
            await store.Files.ExportProjectAsync(shop.Owner, outcome.ProjectId!.Value, Cancel)
        );
    }

    [Fact]
    public async Task A_course_file_makes_a_new_course_even_beside_one_of_that_name()
    {
        await using var store = shop.Copy();
        await store.ImportAsync(shop.Owner, Texts.Course);

        var courses = await store.Courses.ListAsync(shop.Owner, Cancel);

        Assert.Equal(["Evenings", "Evenings"], courses.Select(c => c.Name));
    }

    [Fact]
    public async Task A_byte_order_mark_at_the_beginning_is_no_matter()
    {
        await using var store = shop.Copy();

        Assert.Empty((await store.ImportAsync(shop.Owner, "\uFEFF" + Texts.Course)).Problems);
    }

    private async Task<string?> ThroughTheStoreAsync(ThrowAwayStore store, string text)
    {
        var outcome = await store.ImportAsync(shop.Owner, text);
        Assert.Empty(outcome.Problems);
        return await store.Files.ExportCourseAsync(shop.Owner, outcome.CourseId!.Value, Cancel);
    }

    /// <summary>A board and a part with something unusual in every field.</summary>
    private static class Oddments
    {
        public static Board Board { get; } =
            Wood.Pine() with
            {
                Name = "“Zoë's” \\ board",
                Surfacing = Surfacing.Rough,
                Thickness = Length.FromTicks(40_641),
                WidthAtMiddle = Length.FromMillimetres(237),
                WidthAtEnd = Length.FromInches(9, 17, 64),
                Cup = Length.FromTicks(5_081),
                Twist = Length.FromInches(0, 3, 64),
                TrimStart = Length.Zero,
                Price = new Money(long.MaxValue, "JPY"),
                Defects =
                [
                    .. Enum.GetValues<DefectKind>()
                        .Select(
                            (kind, i) =>
                                new Defect(
                                    kind,
                                    new(
                                        Length.Zero,
                                        Length.FromTicks(i + 1),
                                        Length.Zero,
                                        Length.FromInches(1)
                                    ),
                                    (DefectReach)(i % 3)
                                )
                        ),
                ],
            };

        public static Part Part { get; } =
            Wood.Side("ZZ") with
            {
                Grain = GrainDirection.Any,
                GlueUpAllowed = true,
                AcceptsHiddenDefect = true,
                ShowFace = false,
                ReferenceFace = ReferenceFace.Inside,
                JointNotes = "Two lines:\nthe second, with a tab\tin it.",
                Open =
                [
                    new(PartDimension.Length, Length.FromTicks(1), "the ends dry-fit")
                    {
                        TakenFrom = "B",
                    },
                    new(PartDimension.Thickness, Length.FromMillimetres(1), "planed"),
                    new(PartDimension.Width, Length.FromMillimetres(2), "B is in")
                    {
                        Event = new(OpenEventKind.JointFitted, "ZZ", "B"),
                    },
                ],
            };

        /// <summary>One of each kind; the first with something unusual in every field.</summary>
        public static IReadOnlyList<Joint> Joints { get; } =
        [
            new()
            {
                Kind = JointKind.Notch,
                Part = "ZZ",
                Mate = "B",
                Depth = Length.FromTicks(12_345),
                Width = Length.FromMillimetres(7),
                Across = Length.FromInches(1),
                Side = JointSide.Both,
                Positions = [Length.Zero, Length.FromTicks(99_999)],
                Note = "Two lines:\nthe second.",
            },
            .. Enum.GetValues<JointKind>()
                .Where(kind => kind is not JointKind.Notch)
                .Select(
                    (kind, i) =>
                        new Joint
                        {
                            Kind = kind,
                            Part = "ZZ",
                            Mate = "B",
                            Depth = kind switch
                            {
                                JointKind.Nailed => Length.Zero,
                                JointKind.ThroughPeg => Length.FromInches(0, 3, 4),
                                _ => Length.FromInches(0, 1, 4),
                            },
                            Width = Length.FromInches(0, 1, 2),
                            Across = Length.FromInches(0, 1, 2),
                            FromEdge = kind is JointKind.Nailed or JointKind.Dovetail
                                ? null
                                : Length.FromTicks(12_345),
                            Positions = kind is JointKind.Nailed or JointKind.Dovetail
                                ? []
                                : [Length.FromInches(i + 1)],
                        }
                ),
        ];

        public static SizeCheck SizeCheck { get; } =
            new(
                "ZZ",
                PartDimension.Width,
                [
                    new(-3, "B", PartDimension.Thickness, Length.Zero, "wall"),
                    new(1, null, default, Length.FromTicks(1_234_567), "“clear”"),
                ]
            );
    }
}

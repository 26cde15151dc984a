using System.Text.Json;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Projects;

public class JointStoreTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_joint_is_kept_changed_in_its_place_and_removed()
    {
        await using var store = shop.Copy();
        var first = await PutAsync(store, null, Wood.Dado());

        var deeper = await PutAsync(
            store,
            first,
            first with
            {
                Depth = Length.FromInches(0, 3, 8),
                Note = " deeper \r\n",
            }
        );

        var project = await FindAsync(store);
        Assert.Equal([Length.Zero, deeper.Depth], project.Joints.Select(j => j.Depth));
        Assert.Equal(Wood.Dado().Positions, project.Joints[1].Positions);
        Assert.Equal("deeper", project.Joints[1].Note);

        Shop.Value(
            await store.Projects.RemoveJointAsync(shop.Owner, shop.Project.Id, deeper, Cancel)
        );
        Assert.Equal(
            [JointKind.Nailed],
            (await FindAsync(store)).ToProject().Joints.Select(j => j.Kind)
        );
    }

    [Fact]
    public async Task A_place_across_is_kept_and_makes_plans_out_of_date_only_where_there_is_one()
    {
        await using var store = shop.Copy();
        var stopped = Wood.Dado() with { Across = Length.FromInches(2), FromEdge = Length.Zero };

        await PutAsync(store, null, stopped);

        Assert.Equal(Length.Zero, (await FindAsync(store)).Joints[1].FromEdge);
        // Joints stored before there were places across are read as they were, and keep their plans' fingerprints.
        Assert.DoesNotContain(
            "FromEdge",
            JsonSerializer.Serialize(Wood.Dado(), ShopJson.Options),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "\"FromEdge\":0",
            JsonSerializer.Serialize(stopped, ShopJson.Options),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_joint_changed_or_removed_elsewhere_is_not_written_over()
    {
        await using var store = shop.Copy();
        var stored = await PutAsync(store, null, Wood.Dado());
        await PutAsync(store, stored, stored with { Note = "theirs" });

        var outcome = await store.Projects.PutJointAsync(
            shop.Owner,
            shop.Project.Id,
            stored,
            stored with
            {
                Note = "mine",
            },
            Cancel
        );

        Assert.Equal(OutcomeKind.ChangedMeanwhile, outcome.Kind);
        Assert.Equal(["", "theirs"], (await FindAsync(store)).Joints.Select(j => j.Note));
    }

    [Fact]
    public async Task A_wrong_joint_is_refused_at_its_field_and_changes_nothing()
    {
        await using var store = shop.Copy();

        var outcome = await store.Projects.PutJointAsync(
            shop.Owner,
            shop.Project.Id,
            was: null,
            Wood.Dado() with
            {
                Mate = "Q",
            },
            Cancel
        );

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Equal("Mate", Assert.Single(outcome.Problems).Field);
        Assert.Single((await FindAsync(store)).Joints);
    }

    [Fact]
    public async Task A_sum_that_does_not_come_out_is_kept_and_a_wrong_one_is_refused()
    {
        await using var store = shop.Copy();
        var off = Wood.EqualWidths() with { Dimension = PartDimension.Length };

        var kept = await store.Projects.PutSizeCheckAsync(
            shop.Owner,
            shop.Project.Id,
            was: null,
            off,
            Cancel
        );
        var refused = await store.Projects.PutSizeCheckAsync(
            shop.Owner,
            shop.Project.Id,
            was: null,
            off with
            {
                Terms = [],
            },
            Cancel
        );

        Assert.True(kept.IsSaved);
        Assert.Equal("Terms", Assert.Single(refused.Problems).Field);
        var stored = (await FindAsync(store)).SizeChecks[^1];
        Assert.Equal(2, (await FindAsync(store)).SizeChecks.Count);
        Assert.Equal(off.Terms, stored.Terms);
        Assert.False(
            SizeSum.Of(stored, (await FindAsync(store)).ToProject().Parts, UnitSystem.Inch).Agrees
        );
    }

    [Fact]
    public async Task Joints_sums_and_open_dimensions_follow_a_part_to_its_new_letter()
    {
        await using var store = shop.Copy();
        await PutAsync(store, null, Wood.Dado());
        await SaveAsync(store, "B", p => p with { Open = [p.Open[0] with { TakenFrom = "A" }] });

        await SaveAsync(store, "A", p => p with { Letter = "E" });

        var project = await FindAsync(store);
        Assert.Equal(["E", "E"], project.Joints.Select(j => j.Part));
        Assert.Equal("E", project.SizeChecks[0].Terms[0].Part);
        Assert.Equal("E", project.Parts[1].Part.Open[0].TakenFrom);
    }

    [Fact]
    public async Task A_part_that_waits_in_a_circle_is_refused()
    {
        await using var store = shop.Copy();
        await SaveAsync(store, "B", p => p with { Open = [p.Open[0] with { TakenFrom = "A" }] });
        var a = (await FindAsync(store)).Parts[0];

        var outcome = await store.Projects.SavePartAsync(
            shop.Owner,
            shop.Project.Id,
            a.Id,
            a.Part with
            {
                Open = [a.Part.Open[0] with { TakenFrom = "B" }],
            },
            a.Version,
            Cancel
        );

        Assert.Contains("A waits for B, B for A", Assert.Single(outcome.Problems).Sentence);
    }

    private async Task<Joint> PutAsync(ThrowAwayStore store, Joint? was, Joint joint) =>
        Shop.Value(
            await store.Projects.PutJointAsync(shop.Owner, shop.Project.Id, was, joint, Cancel)
        );

    private async Task SaveAsync(ThrowAwayStore store, string letter, Func<Part, Part> change)
    {
        var row = (await FindAsync(store)).Parts.Single(p => p.Part.Letter == letter);
        Shop.Value(
            await store.Projects.SavePartAsync(
                shop.Owner,
                shop.Project.Id,
                row.Id,
                change(row.Part),
                row.Version,
                Cancel
            )
        );
    }

    private async Task<ProjectView> FindAsync(ThrowAwayStore store) =>
        (await store.Projects.FindAsync(shop.Owner, shop.Project.Id, Cancel))!;
}

using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Sawing;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Plans;

public class PlanStoreTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void A_plan_comes_out_of_its_snapshot_as_it_went_in()
    {
        var unpacked = PlanSnapshot.Unpack(PlanSnapshot.Pack(shop.Plan));

        Assert.Equivalent(shop.Plan, unpacked, strict: true);
        Assert.Equal(PlanSnapshot.Fingerprint(shop.Plan), PlanSnapshot.Fingerprint(unpacked));
        Assert.Equal(shop.Plan.Plan.Goals, unpacked.Plan.Goals);
    }

    [Fact]
    public void A_snapshot_from_before_verdicts_had_proofs_is_still_read()
    {
        var json = JsonNode.Parse(JsonSerializer.Serialize(shop.Plan, ShopJson.Options))!;
        Assert.True(json["Verdict"]!.AsObject().Remove("Proofs"));

        var plan = json.Deserialize<CheckedPlan>(ShopJson.Options)!;

        Assert.Empty(plan.Verdict.Proofs);
        Assert.Equal(PlanSnapshot.Fingerprint(shop.Plan), PlanSnapshot.Fingerprint(plan));
    }

    [Fact]
    public void Proofs_come_out_of_a_snapshot_as_they_went_in()
    {
        var proved = shop.Plan with
        {
            Verdict = shop.Plan.Verdict with { Proofs = ["A needs 20 in."] },
        };

        Assert.Equal(
            ["A needs 20 in."],
            PlanSnapshot.Unpack(PlanSnapshot.Pack(proved)).Verdict.Proofs
        );
    }

    [Fact]
    public async Task The_same_plan_again_is_the_version_that_is_there()
    {
        await using var store = shop.Copy();

        var again = await SaveAsync(store, shop.Plan);

        Assert.Equal((shop.PlanId, 1), (again.Value!.Id, again.Value.Number));
        await using var context = store.Open();
        Assert.Equal(1, await context.Plans.CountAsync(Cancel));
    }

    [Fact]
    public async Task A_changed_board_makes_the_plan_out_of_date_and_changes_nothing_in_it()
    {
        await using var store = shop.Copy();
        Shop.Value(
            await store.Boards.SaveAsync(
                shop.Self,
                shop.Board.Id,
                Wood.Pine(length: 90),
                shop.Board.Version,
                Cancel
            )
        );

        var plan = await store.Plans.FindAsync(shop.Self, shop.PlanId, Cancel);

        Assert.True(plan!.IsOutOfDate);
        Assert.Equal(PlanSnapshot.Fingerprint(shop.Plan), PlanSnapshot.Fingerprint(plan.Checked));
        Assert.True((await StateAsync(store)).IsOutOfDate);
    }

    [Fact]
    public async Task Names_notes_and_sums_of_sizes_leave_a_plan_as_it_is_and_a_joint_does_not()
    {
        await using var store = shop.Copy();
        var part = shop.Project.Parts[0];
        Shop.Value(
            await store.Projects.SaveAsync(
                shop.Owner,
                shop.Project.Id,
                "Another name",
                "Notes for the class.",
                shop.Project.Version,
                Cancel
            )
        );
        Shop.Value(
            await store.Projects.SavePartAsync(
                shop.Owner,
                shop.Project.Id,
                part.Id,
                part.Part with
                {
                    Name = "cheek",
                },
                part.Version,
                Cancel
            )
        );
        Shop.Value(
            await store.Projects.PutSizeCheckAsync(
                shop.Owner,
                shop.Project.Id,
                was: null,
                Wood.EqualWidths(),
                Cancel
            )
        );
        Assert.False((await StateAsync(store)).IsOutOfDate);

        Shop.Value(
            await store.Projects.PutJointAsync(
                shop.Owner,
                shop.Project.Id,
                was: null,
                Wood.Dado(),
                Cancel
            )
        );

        Assert.True((await StateAsync(store)).IsOutOfDate);
    }

    [Fact]
    public async Task Notes_on_joints_are_read_in_the_steps_and_make_it_out_of_date()
    {
        await using var store = shop.Copy();
        var part = shop.Project.Parts[0];
        Shop.Value(
            await store.Projects.SavePartAsync(
                shop.Owner,
                shop.Project.Id,
                part.Id,
                part.Part with
                {
                    JointNotes = "Other words.",
                },
                part.Version,
                Cancel
            )
        );

        Assert.True((await StateAsync(store)).IsOutOfDate);
    }

    [Fact]
    public void What_came_later_is_left_out_of_the_fingerprint_where_it_is_as_usual()
    {
        var flat = System.Text.Json.JsonSerializer.Serialize(shop.Plan.Request, ShopJson.Options);
        Assert.DoesNotContain("Cup", flat, StringComparison.Ordinal);
        Assert.DoesNotContain("Humidity", flat, StringComparison.Ordinal);
        var request = shop.Plan.Request with
        {
            Boards =
            [
                .. shop.Plan.Request.Boards.Select(b =>
                    b with
                    {
                        Cup = Core.Measure.Length.FromTicks(1),
                    }
                ),
            ],
        };
        Assert.NotEqual(
            PlanSnapshot.Fingerprint(shop.Plan.Request),
            PlanSnapshot.Fingerprint(request)
        );
    }

    [Fact]
    public async Task A_changed_project_and_changed_settings_make_it_out_of_date_too()
    {
        await using var store = shop.Copy();
        var before = await store.Plans.NewestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );
        Shop.Value(
            await store.Projects.MovePartAsync(
                shop.Owner,
                shop.Project.Id,
                shop.Project.Parts[0].Id,
                1,
                Cancel
            )
        );
        var moved = await store.Plans.NewestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );
        Shop.Value(
            await store.Projects.MovePartAsync(
                shop.Owner,
                shop.Project.Id,
                shop.Project.Parts[0].Id,
                -1,
                Cancel
            )
        );
        var back = await store.Plans.NewestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );
        var rules = shop.Course.Rules with { PlaningTaught = false };
        Shop.Value(
            await store.Courses.SaveRulesAsync(
                shop.Owner,
                shop.Course.Id,
                rules,
                shop.Course.Version,
                Cancel
            )
        );
        var other = await store.Plans.NewestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );

        Assert.Equal(
            [false, true, false, true],
            new[] { before, moved, back, other }.Select(p => p!.IsOutOfDate)
        );
    }

    [Fact]
    public async Task A_plan_for_what_is_stored_no_longer_is_refused()
    {
        await using var store = shop.Copy();
        Shop.Value(
            await store.Boards.AddAsync(
                shop.Self,
                shop.Student.Id,
                shop.Project.Id,
                Wood.Pine("More"),
                Cancel
            )
        );

        var outcome = await SaveAsync(store, shop.Plan);

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Equal("Request", Assert.Single(outcome.Problems).Field);
    }

    [Fact]
    public async Task A_plan_for_another_order_of_goals_is_the_next_version_and_keeps_its_order()
    {
        await using var store = shop.Copy();
        PlanGoal[] goals = [.. PlanGoals.Usual.Reverse()];
        var other = CheckedPlans.For(shop.Plan.Request with { Goals = goals });

        var saved = Shop.Value(await SaveAsync(store, other));
        var newest = await store.Plans.NewestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );

        Assert.Equal((2, false), (saved.Number, saved.IsOutOfDate));
        Assert.Equal((saved.Id, false), (newest!.Id, newest.IsOutOfDate));
        Assert.Equal(goals, newest.Checked.Request.Goals);
        Assert.False((await StateAsync(store)).IsOutOfDate);
        var first = await store.Plans.FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.False(first!.IsOutOfDate);
    }

    [Fact]
    public async Task A_plan_for_another_order_of_goals_goes_out_of_date_with_its_board_and_is_refused_then()
    {
        await using var store = shop.Copy();
        PlanGoal[] goals = [.. PlanGoals.Usual.Reverse()];
        var other = CheckedPlans.For(shop.Plan.Request with { Goals = goals });
        Shop.Value(await SaveAsync(store, other));
        Shop.Value(
            await store.Boards.SaveAsync(
                shop.Self,
                shop.Board.Id,
                Wood.Pine(length: 90),
                shop.Board.Version,
                Cancel
            )
        );

        Assert.True((await StateAsync(store)).IsOutOfDate);
        var again = await SaveAsync(store, other);
        Assert.Equal("Request", Assert.Single(again.Problems).Field);
    }

    [Fact]
    public async Task A_plan_whose_rehearsal_broke_a_must_is_refused_with_what_was_broken()
    {
        await using var store = shop.Copy();
        var must = new Finding(
            FindingKind.Must,
            "PartsMustLeaveAKerfBetweenThem",
            null,
            "A1",
            null,
            "A1 touches A2."
        );
        var broken = shop.Plan with { Rehearsal = shop.Plan.Rehearsal with { Findings = [must] } };

        var outcome = await SaveAsync(store, broken);

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Contains("A1 touches A2.", Assert.Single(outcome.Problems).Sentence);
    }

    [Fact]
    public async Task A_true_board_sawn_straight_to_size_is_kept_and_is_not_out_of_date()
    {
        await using var store = shop.Copy();
        var straight = CheckedPlans.For(shop.Plan.Request.StraightToSize());

        var saved = Shop.Value(await SaveAsync(store, straight));

        Assert.Equal((2, false), (saved.Number, saved.IsOutOfDate));
        Assert.False((await StateAsync(store)).IsOutOfDate);
        Assert.False((await store.Plans.FindAsync(shop.Self, saved.Id, Cancel))!.IsOutOfDate);
    }

    [Fact]
    public async Task A_board_that_is_not_true_is_not_sawn_straight_to_size()
    {
        await using var store = shop.Copy();
        Shop.Value(
            await store.Boards.SaveAsync(
                shop.Self,
                shop.Board.Id,
                Wood.Pine() with
                {
                    Surfacing = Core.Lumber.Surfacing.S2S,
                },
                shop.Board.Version,
                Cancel
            )
        );
        var asked = await store.Plans.RequestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );

        var outcome = await SaveAsync(store, CheckedPlans.For(asked!.StraightToSize()));

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Equal("Request", Assert.Single(outcome.Problems).Field);
    }

    [Fact]
    public async Task The_next_plan_gets_the_next_number_and_the_clock_of_the_shop()
    {
        var clock = new FakeTimeProvider(new(2026, 3, 5, 18, 30, 0, TimeSpan.Zero));
        await using var store = ThrowAwayStore.Copy(shop.BackupPath, clock);
        Shop.Value(
            await store.Boards.AddAsync(
                shop.Self,
                shop.Student.Id,
                shop.Project.Id,
                Wood.Pine("More"),
                Cancel
            )
        );
        var request = await store.Plans.RequestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );

        var saved = Shop.Value(await SaveAsync(store, CheckedPlans.For(request!)));
        var newest = await store.Plans.NewestAsync(
            shop.Owner,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );
        var first = await store.Plans.FindAsync(shop.Owner, shop.PlanId, Cancel);

        Assert.Equal((2, false), (saved.Number, saved.IsOutOfDate));
        Assert.Equal(
            (saved.Id, new DateTime(2026, 3, 5, 18, 30, 0, DateTimeKind.Utc)),
            (newest!.Id, newest.MadeUtc)
        );
        Assert.Equal((1, true), (first!.Number, first.IsOutOfDate));
    }

    [Fact]
    public async Task The_request_is_what_is_stored_now_with_the_boards_in_the_order_they_were_logged()
    {
        await using var store = shop.Copy();
        Shop.Value(
            await store.Boards.AddAsync(
                shop.Self,
                shop.Student.Id,
                shop.Project.Id,
                Wood.Pine("Another"),
                Cancel
            )
        );

        var request = await store.Plans.RequestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );

        Assert.Equal(["Pine", "Another"], request!.Boards.Select(b => b.Name));
        Assert.Equal(shop.Board.Id.ToString("N"), request.Boards[0].Id);
        Assert.Equal(shop.Course.Rules, request.Rules);
        Assert.Equal(["A", "B"], request.Project.Parts.Select(p => p.Letter));
        Assert.Equal(PlanGoals.Usual, request.Goals);
    }

    [Fact]
    public async Task The_overview_has_a_line_for_every_student_and_project()
    {
        await using var store = shop.Copy();
        Shop.Value(await store.Projects.CreateAsync(shop.Owner, shop.Course.Id, "Box", Cancel));

        var states = await store.Plans.StatesAsync(shop.Owner, shop.Course.Id, Cancel);
        var plan = await store.Plans.FindAsync(shop.Owner, shop.PlanId, Cancel);

        Assert.Equal(4, states.Count);
        Assert.Equal(
            new PlanState(
                shop.Student.Id,
                shop.Project.Id,
                1,
                1,
                false,
                true,
                shop.Plan.Verdict.Sentence
            )
            {
                PlanId = shop.PlanId,
                PlanMadeUtc = plan!.MadeUtc,
            },
            states[0]
        );
        Assert.All(
            states.Skip(1),
            s =>
                Assert.Equal(
                    (0, null, false, ""),
                    (s.Boards, s.PlanNumber, s.IsComplete, s.Sentence)
                )
        );
    }

    private async Task<PlanState> StateAsync(ThrowAwayStore store) =>
        (await store.Plans.StatesAsync(shop.Self, shop.Course.Id, Cancel)).Single(s =>
            s.ProjectId == shop.Project.Id
        );

    private Task<Outcome<StoredPlan>> SaveAsync(ThrowAwayStore store, CheckedPlan plan) =>
        store.Plans.SaveAsync(shop.Self, shop.Student.Id, shop.Project.Id, plan, Cancel);
}

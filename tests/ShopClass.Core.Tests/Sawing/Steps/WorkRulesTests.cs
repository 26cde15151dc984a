using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>Each rule of the writer as a pair: just does, just does not. All are common practice.</summary>
public class WorkRulesTests
{
    private static readonly CourseRules Rules = CourseRules.DefaultsFor(UnitSystem.Inch);
    private static readonly Length Tick = Length.FromTicks(1);

    [Fact]
    public void A_piece_too_short_for_the_bench_hook_goes_to_the_vise()
    {
        Assert.Equal(
            Support.BenchHook,
            WorkRules.WhatHoldsForAnEndCut(Rules, Rules.BenchHookLimit)
        );
        Assert.Equal(
            Support.Vise,
            WorkRules.WhatHoldsForAnEndCut(Rules, Rules.BenchHookLimit - Tick)
        );
    }

    [Fact]
    public void Less_than_a_kerf_is_planed_and_not_sawn()
    {
        Assert.True(WorkRules.IsEnoughToSaw(Rules.BackSawKerf, Rules.BackSawKerf));
        Assert.False(WorkRules.IsEnoughToSaw(Rules.BackSawKerf - Tick, Rules.BackSawKerf));
    }

    [Fact]
    public void The_first_end_leaves_most_of_the_surplus_to_the_end_that_decides_the_length()
    {
        Assert.Equal(
            Length.FromInches(0, 1, 4),
            WorkRules.TakenByTheFirstEnd(Length.FromInches(1), Rules)
        );
        Assert.Equal(Rules.BackSawKerf, WorkRules.TakenByTheFirstEnd(Rules.BackSawKerf, Rules));
        Assert.Equal(Length.Zero, WorkRules.TakenByTheFirstEnd(Rules.BackSawKerf - Tick, Rules));
    }

    [Fact]
    public void Much_surplus_width_is_ripped_before_it_is_planed()
    {
        var much = Rules.RipKerf + Length.FromInches(0, 1, 8);
        Assert.True(WorkRules.IsMuchToPlane(much, Rules));
        Assert.False(WorkRules.IsMuchToPlane(much - Tick, Rules));
    }

    [Fact]
    public void A_wide_crosscut_is_walked_back_along_the_line()
    {
        Assert.True(WorkRules.IsWideCrosscut(Length.FromMillimetres(150)));
        Assert.False(WorkRules.IsWideCrosscut(Length.FromMillimetres(150) - Tick));
    }

    [Fact]
    public void Planed_stock_within_the_leeway_is_used_as_it_comes()
    {
        var wanted = Length.FromInches(0, 3, 4);
        var most = wanted + Rules.ThicknessLeeway;
        Assert.False(WorkRules.HasToBePlanedThinner(most, wanted, planedFaces: true, Rules));
        Assert.True(WorkRules.HasToBePlanedThinner(most + Tick, wanted, planedFaces: true, Rules));
    }

    [Fact]
    public void Rough_stock_is_planed_to_the_line_however_little_there_is()
    {
        var wanted = Length.FromInches(0, 3, 4);
        Assert.True(
            WorkRules.HasToBePlanedThinner(wanted + Tick, wanted, planedFaces: false, Rules)
        );
        Assert.False(WorkRules.HasToBePlanedThinner(wanted, wanted, planedFaces: false, Rules));
    }

    [Fact]
    public void An_open_dimension_keeps_its_extra_until_its_event()
    {
        var rail = WorkCases.Shelf.Parts[2];
        Assert.Equal(WorkCases.In(20.25), WorkRules.BeforeItsEvent(rail, PartDimension.Length));
        Assert.Equal(WorkCases.In(2.5), WorkRules.BeforeItsEvent(rail, PartDimension.Width));
    }

    [Fact]
    public void Parts_too_short_to_hold_stay_joined_until_their_strip_is_at_width()
    {
        var rail = WorkCases.Shelf.Parts[2] with { Open = [] };
        var enough = Sized(rail, Rules.BenchHookLimit);
        var short_ = Sized(rail, Rules.BenchHookLimit - Tick);
        Assert.True(WorkRules.StayJoinedUntilTheirStripIsAtWidth([enough, short_], Rules));
        Assert.False(WorkRules.StayJoinedUntilTheirStripIsAtWidth([enough, enough], Rules));
        Assert.False(WorkRules.StayJoinedUntilTheirStripIsAtWidth([short_], Rules));
    }

    private static Part Sized(Part part, Length length) =>
        part with
        {
            Finished = part.Finished with { Length = length },
        };
}

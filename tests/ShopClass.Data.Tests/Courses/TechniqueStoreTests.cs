using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Courses;

public class TechniqueStoreTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Own_words_are_in_the_steps_of_a_plan_at_once_and_do_not_make_it_out_of_date()
    {
        await using var store = shop.Copy();

        Shop.Value(await SaveAsync(store, "CheckBoard", "", "Look at it twice."));

        var plan = await store.Plans.FindAsync(shop.Owner, shop.PlanId, Cancel);
        Assert.False(plan!.IsOutOfDate);
        Assert.Equal("Look at it twice.", plan.Work.Steps[0].Technique);
    }

    [Fact]
    public async Task Empty_words_put_the_usual_ones_back()
    {
        await using var store = shop.Copy();
        Shop.Value(await SaveAsync(store, "CheckBoard", "", "Look at it twice."));

        Shop.Value(await SaveAsync(store, "CheckBoard", "Look at it twice.", " "));

        Assert.Empty(await store.Courses.TechniqueNotesAsync(shop.Owner, shop.Course.Id, Cancel));
        var plan = await store.Plans.FindAsync(shop.Owner, shop.PlanId, Cancel);
        Assert.Equal(Techniques.Usual["CheckBoard"], plan!.Work.Steps[0].Technique);
    }

    [Fact]
    public async Task Words_somebody_else_has_changed_are_not_written_over()
    {
        await using var store = shop.Copy();
        Shop.Value(await SaveAsync(store, "Rip", "", "Theirs."));

        var outcome = await SaveAsync(store, "Rip", "", "Mine.");

        Assert.Equal(OutcomeKind.ChangedMeanwhile, outcome.Kind);
        Assert.Equal("Theirs.", Assert.Single(outcome.Value!).Text);
    }

    [Theory]
    [InlineData("Whistle", "Softly.", "There is no technique note of that name.")]
    [InlineData("Rip", "long", "Use at most 600.")]
    public async Task A_note_nobody_knows_and_one_too_long_are_refused(
        string key,
        string text,
        string says
    )
    {
        await using var store = shop.Copy();
        var words = text == "long" ? new string('x', TechniqueNotes.LongestNote + 1) : text;

        var problem = Assert.Single((await SaveAsync(store, key, "", words)).Problems);

        Assert.Equal(key, problem.Field);
        Assert.Contains(says, problem.Sentence);
    }

    private Task<Outcome<IReadOnlyList<TechniqueNote>>> SaveAsync(
        ThrowAwayStore store,
        string key,
        string was,
        string text
    ) => store.Courses.SaveTechniqueAsync(shop.Owner, shop.Course.Id, key, was, text, Cancel);
}

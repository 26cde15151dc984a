using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Lessons;

public class LessonStoreTests(Shop shop) : IClassFixture<Shop>
{
    private static readonly StationCounts Small = new(1, 2, 3, 1);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Lesson Evening =>
        new()
        {
            Title = " First evening ",
            Date = new(2027, 1, 12),
            Start = new(18, 30),
            Minutes = 120,
            Stations = Small,
            Shows = [Skill.Crosscutting, Skill.MarkingOut],
            Absent = [shop.Classmate.StudentId.ToString(), "nobody"],
        };

    [Fact]
    public async Task A_lesson_comes_back_as_it_was_saved_without_strangers()
    {
        await using var store = shop.Copy();

        Shop.Value(await store.Lessons.AddAsync(shop.Owner, shop.Course.Id, Evening, Cancel));

        var lesson = (await store.Lessons.FindAsync(shop.Owner, shop.Course.Id, Cancel))!
            .Lessons.Single(l => l.Lesson.Title == "First evening")
            .Lesson;
        Assert.Equivalent(
            Evening with
            {
                Title = "First evening",
                Absent = [shop.Classmate.StudentId.ToString()],
            },
            lesson,
            strict: true
        );
    }

    [Fact]
    public async Task A_student_sees_lessons_and_nobodys_absence_but_their_own()
    {
        await using var store = shop.Copy();
        Shop.Value(await store.Lessons.AddAsync(shop.Owner, shop.Course.Id, Evening, Cancel));

        Assert.Empty(
            (await store.Lessons.FindAsync(shop.Self, shop.Course.Id, Cancel))!
                .Lessons.Single(l => l.Lesson.Title == "First evening")
                .Lesson.Absent
        );
        Assert.Single(
            (await store.Lessons.FindAsync(shop.Classmate, shop.Course.Id, Cancel))!
                .Lessons.Single(l => l.Lesson.Title == "First evening")
                .Lesson.Absent
        );
    }

    [Fact]
    public async Task Lessons_are_listed_by_date()
    {
        await using var store = shop.Copy();
        foreach (var day in (int[])[20, 6, 13])
            Shop.Value(
                await store.Lessons.AddAsync(
                    shop.Owner,
                    shop.Course.Id,
                    Evening with
                    {
                        Date = new(2027, 1, day),
                    },
                    Cancel
                )
            );

        var lessons = (await store.Lessons.FindAsync(shop.Owner, shop.Course.Id, Cancel))!.Lessons;
        Assert.Equal([6, 12, 13, 20], lessons.Select(l => l.Lesson.Date.Day));
    }

    [Fact]
    public async Task A_lesson_of_no_minutes_without_a_title_and_with_too_many_saw_benches_is_refused_at_each_field()
    {
        await using var store = shop.Copy();

        var outcome = await store.Lessons.AddAsync(
            shop.Owner,
            shop.Course.Id,
            Evening with
            {
                Title = "",
                Minutes = 0,
                Stations = Small with { SawBenches = 61 },
            },
            Cancel
        );

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Equal(["Title", "Minutes", "SawBenches"], outcome.Problems.Select(p => p.Field));
    }

    [Fact]
    public async Task What_somebody_else_saved_meanwhile_is_shown_and_not_lost()
    {
        await using var store = shop.Copy();
        var first = Shop.Value(
            await store.Lessons.AddAsync(shop.Owner, shop.Course.Id, Evening, Cancel)
        );
        Shop.Value(await SaveAsync(store, first, Evening with { Minutes = 90 }));

        var second = await SaveAsync(store, first, Evening with { Minutes = 60 });

        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal(90, second.Value!.Lesson.Minutes);
    }

    [Fact]
    public async Task A_shop_is_the_usual_one_until_it_is_saved()
    {
        await using var store = shop.Copy();
        Assert.Equal(
            ShopView.Usual,
            (await store.Lessons.FindAsync(shop.Owner, shop.Course.Id, Cancel))!.Shop
        );

        Shop.Value(
            await store.Lessons.SaveShopAsync(
                shop.Owner,
                shop.Course.Id,
                Small,
                [new(Skill.Ripping, 20)],
                null,
                Cancel
            )
        );

        var saved = (await store.Lessons.FindAsync(shop.Owner, shop.Course.Id, Cancel))!.Shop;
        Assert.Equal((Small, 20), (saved.Stations, saved.Demonstrations[0].Minutes));
        var again = await store.Lessons.SaveShopAsync(
            shop.Owner,
            shop.Course.Id,
            Small,
            [],
            null,
            Cancel
        );
        Assert.Equal(OutcomeKind.ChangedMeanwhile, again.Kind);
    }

    private Task<Outcome<LessonView>> SaveAsync(
        ThrowAwayStore store,
        LessonView was,
        Lesson lesson
    ) => store.Lessons.SaveAsync(shop.Owner, shop.Course.Id, was.Id, lesson, was.Version, Cancel);
}

using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.Keeping;
using ShopClass.Data.Store;
using ShopClass.Data.Students.Logging;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Students;

/// <summary>Boards being logged, their photos, and the instructor's yes.</summary>
public sealed class BoardEntryTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private static readonly byte[] Photo = [1, 2, 3];

    private readonly StoppedClock clock = new();
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Guid Ada => shop.Student.Id;

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task What_was_entered_is_there_after_a_restart_and_for_nobody_else()
    {
        await store.Entries.KeepAsync(shop.Self, Ada, shop.Project.Id, "half", Cancel);
        var kept = Shop.Value(
            await store.Entries.KeepPhotoAsync(shop.Self, Ada, shop.Project.Id, Photo, Cancel)
        );

        await using var restarted = store.Restarted();
        var entries = restarted.GetRequiredService<BoardEntryStore>();
        Assert.Equal(kept, await entries.FindAsync(shop.Self, Ada, shop.Project.Id, Cancel));
        Assert.Equal(Photo, await entries.PhotoAsync(shop.Self, kept.Id, Cancel));
        foreach (var who in (string[])["other instructor", "classmate", "outsider", "impostor"])
        {
            Assert.Null(await entries.FindAsync(shop.As(who), Ada, shop.Project.Id, Cancel));
            Assert.Null(await entries.PhotoAsync(shop.As(who), kept.Id, Cancel));
            Assert.False(
                (await entries.DropAsync(shop.As(who), Ada, shop.Project.Id, Cancel)).IsSaved
            );
            Assert.Equal(
                OutcomeKind.NotFound,
                (
                    await entries.LogAsync(
                        shop.As(who),
                        Ada,
                        shop.Project.Id,
                        kept.Id,
                        Wood.Pine(),
                        Cancel
                    )
                ).Kind
            );
        }
    }

    [Fact]
    public async Task Logged_twice_a_board_is_there_once_with_its_photo()
    {
        var before = (await store.Boards.ListAsync(shop.Self, Ada, shop.Project.Id, Cancel)).Count;
        var entry = Shop.Value(
            await store.Entries.KeepPhotoAsync(shop.Self, Ada, shop.Project.Id, Photo, Cancel)
        );

        var first = await LogAsync(entry.Id);
        var second = await LogAsync(entry.Id);

        Assert.Equal(entry.Id, first);
        Assert.Equal(first, second);
        var boards = await store.Boards.ListAsync(shop.Self, Ada, shop.Project.Id, Cancel);
        Assert.Equal(before + 1, boards.Count);
        Assert.Equal(Photo, await store.Yes.PhotoAsync(shop.Owner, first, Cancel));
        Assert.Null(await store.Yes.PhotoAsync(shop.Classmate, first, Cancel));
        Assert.Null(await store.Entries.FindAsync(shop.Self, Ada, shop.Project.Id, Cancel));
    }

    [Fact]
    public async Task A_refused_board_keeps_its_entry()
    {
        var entry = Shop.Value(
            await store.Entries.KeepAsync(shop.Self, Ada, shop.Project.Id, "half", Cancel)
        );

        var refused = await store.Entries.LogAsync(
            shop.Self,
            Ada,
            shop.Project.Id,
            entry.Id,
            Wood.Pine(new string('n', 300)),
            Cancel
        );

        Assert.Equal("Name", Assert.Single(refused.Problems).Field);
        Assert.Equal(entry, await store.Entries.FindAsync(shop.Self, Ada, shop.Project.Id, Cancel));
    }

    [Fact]
    public async Task A_board_waits_again_once_it_is_measured_anew()
    {
        await store.Yes.WantAsync(shop.Owner, shop.Course.Id, true, Cancel);
        var board = await store.Boards.FindAsync(shop.Self, shop.Board.Id, Cancel);
        await store.Yes.SayAsync(shop.Owner, board!.Id, board.Version, "the width", Cancel);
        Assert.Equal(BoardStanding.SentBack, await StandsAsync());
        var changed = Shop.Value(
            await store.Boards.SaveAsync(
                shop.Self,
                board.Id,
                Wood.Pine("Anew"),
                board.Version,
                Cancel
            )
        );
        Assert.Equal(BoardStanding.Waiting, await StandsAsync());

        var stale = await store.Yes.SayAsync(shop.Owner, board.Id, board.Version, "", Cancel);
        Assert.Equal(OutcomeKind.ChangedMeanwhile, stale.Kind);
        await store.Yes.SayAsync(shop.Owner, board.Id, changed.Version, "", Cancel);
        Assert.Equal(BoardStanding.Yes, await StandsAsync());
        await store.Boards.SaveAsync(
            shop.Self,
            board.Id,
            Wood.Pine("Once more"),
            changed.Version,
            Cancel
        );
        Assert.Equal(BoardStanding.Waiting, await StandsAsync());
    }

    [Fact]
    public async Task Photos_go_with_the_names_and_what_was_never_logged_after_a_month()
    {
        var entry = Shop.Value(
            await store.Entries.KeepPhotoAsync(shop.Self, Ada, shop.Project.Id, Photo, Cancel)
        );
        await LogAsync(entry.Id);
        await store.Entries.KeepAsync(shop.Self, Ada, shop.Project.Id, "never logged", Cancel);
        var export = await store
            .Services.GetRequiredService<StudentExport>()
            .WriteAsync(shop.Self, Ada, Cancel);
        Assert.Contains("never logged", export!, StringComparison.Ordinal);
        Assert.Contains(Convert.ToBase64String(Photo), export!, StringComparison.Ordinal);
        var keeping = new KeepingStore(
            store.Services.GetRequiredService<IDbContextFactory<ShopContext>>(),
            clock,
            store.Services.GetRequiredService<ClassNews>()
        );
        var now = DateTime.UtcNow;
        clock.Advance(now - clock.GetUtcNow().UtcDateTime);
        await keeping.SaveAsync(shop.Owner, shop.Course.Id, DateOnly.FromDateTime(now), Cancel);

        clock.Advance(TimeSpan.FromDays(BoardEntryStore.DaysKept + 1));
        await keeping.ForgetDueAsync(Cancel);
        Assert.Null(await store.Entries.FindAsync(shop.Self, Ada, shop.Project.Id, Cancel));
        Assert.NotNull(await store.Yes.PhotoAsync(shop.Owner, entry.Id, Cancel));
        clock.Advance(TimeSpan.FromDays(KeepingStore.DaysAfterTheEnd));
        await keeping.ForgetDueAsync(Cancel);
        Assert.Null(await store.Yes.PhotoAsync(shop.Owner, entry.Id, Cancel));
    }

    private async Task<Guid> LogAsync(Guid entry) =>
        Shop.Value(
            await store.Entries.LogAsync(
                shop.Self,
                Ada,
                shop.Project.Id,
                entry,
                Wood.Pine("Logged"),
                Cancel
            )
        ).Id;

    private async Task<BoardStanding> StandsAsync() =>
        (await store.Yes.OfAsync(shop.Self, Ada, shop.Project.Id, Cancel))
            .Single(y => y.BoardId == shop.Board.Id)
            .Standing;
}

using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.Keeping;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Keeping;

/// <summary>Consent is a yes or a no and a day: noted, told to whom it is about, and gone with the names.</summary>
public sealed class ConsentTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task A_no_and_its_day_are_kept_told_in_the_export_and_gone_with_the_names()
    {
        Assert.Null(shop.Student.Card.Consent);
        var said = new Consent(false, Today.AddDays(-3));

        Shop.Value(await SaveAsync(shop.Owner, said));

        Assert.Equal(
            said,
            (await store.Students.FindAsync(shop.Self, shop.Student.Id, Cancel))!.Card.Consent
        );
        var export = store.Services.GetRequiredService<StudentExport>();
        var text = await export.WriteAsync(shop.Self, shop.Student.Id, Cancel);
        Assert.Contains("\"hasConsented\": false", text, StringComparison.Ordinal);
        Assert.Contains($"\"consentOn\": \"{said.On:yyyy-MM-dd}\"", text, StringComparison.Ordinal);

        var clock = new StoppedClock();
        var keeping = new KeepingStore(
            store.Services.GetRequiredService<IDbContextFactory<ShopContext>>(),
            clock,
            store.Services.GetRequiredService<ClassNews>()
        );
        var end = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        await keeping.SaveAsync(shop.Owner, shop.Course.Id, end, Cancel);
        clock.Advance(TimeSpan.FromDays(91));
        await keeping.ForgetDueAsync(Cancel);
        Assert.All(
            await store.Students.ListAsync(shop.Owner, shop.Course.Id, Cancel),
            s => Assert.Null(s.Card.Consent)
        );
    }

    [Fact]
    public async Task A_day_still_to_come_is_refused_at_its_field_and_nobody_else_notes_it()
    {
        var refused = await SaveAsync(shop.Owner, new(true, Today.AddDays(2)));
        Assert.Equal("Consent", Assert.Single(refused.Problems).Field);

        foreach (var who in (string[])["self", "classmate", "outsider", "other instructor"])
            Assert.Equal(
                OutcomeKind.NotFound,
                (await SaveAsync(shop.As(who), new(true, Today))).Kind
            );
        Assert.Null(
            (await store.Students.FindAsync(shop.Owner, shop.Student.Id, Cancel))!.Card.Consent
        );
    }

    private Task<Outcome<StudentView>> SaveAsync(Viewer by, Consent consent) =>
        store.Students.SaveAsync(
            by,
            shop.Student.Id,
            shop.Student.Card with
            {
                Consent = consent,
            },
            shop.Student.Version,
            Cancel
        );
}

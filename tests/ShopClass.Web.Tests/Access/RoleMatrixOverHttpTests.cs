using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.StaticAssets;
using Microsoft.Extensions.DependencyInjection;

namespace ShopClass.Web.Tests.Access;

/// <summary>
/// Every address, found in the app's own routing, asked by every role, of the course and of another one. A new address
/// without an expectation fails.
/// </summary>
public sealed class RoleMatrixOverHttpTests(StaffedShop shop) : IClassFixture<StaffedShop>
{
    private static readonly string[] Framework =
    [
        "/_blazor",
        "/_framework",
        "_framework",
        "{**path:file}",
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<string> Patterns => [.. Addresses.Answered.Keys];

    [Fact]
    public void Every_address_has_an_expectation_and_no_expectation_is_left_over()
    {
        var found = shop
            .Services.GetServices<EndpointDataSource>()
            .SelectMany(s => s.Endpoints)
            .OfType<RouteEndpoint>()
            .Where(e => e.Metadata.GetMetadata<StaticAssetDescriptor>() is null)
            .Select(e => e.RoutePattern.RawText!)
            .Where(p => !Framework.Any(f => p.StartsWith(f, StringComparison.Ordinal)))
            .Distinct()
            .Order(StringComparer.Ordinal);

        Assert.Equal(
            Addresses
                .Answered.Keys.Concat(Addresses.Open)
                .Concat(Addresses.SendOn)
                .Concat(Addresses.Posts)
                .Order(StringComparer.Ordinal),
            found
        );
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public async Task Each_visitor_is_answered_or_told_that_it_is_not_there(string pattern)
    {
        var address = shop.Fill(pattern);
        foreach (var visitor in StaffedShop.Visitors)
        {
            var response = await shop.Of(visitor)
                .GetAsync(new Uri(address, UriKind.Relative), Cancel);
            var may = Addresses.IsAnswered(pattern, visitor);

            Assert.True(
                (response.StatusCode == HttpStatusCode.OK) == may,
                $"{pattern} asked by {visitor}: {response.StatusCode} {response.Headers.Location}"
            );
            if (may)
                continue;
            Assert.Contains(
                response.StatusCode,
                (HttpStatusCode[])[HttpStatusCode.NotFound, HttpStatusCode.Redirect]
            );
            var text = await response.Content.ReadAsStringAsync(Cancel);
            Assert.Null(Addresses.Leak(text, visitor));
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public async Task Nothing_personal_is_kept_by_a_cache_on_the_way(string pattern)
    {
        var visitor = Addresses.Answered[pattern].Split(", ")[0];

        var response = await shop.Of(visitor)
            .GetAsync(new Uri(shop.Fill(pattern), UriKind.Relative), Cancel);

        Assert.True(response.Headers.CacheControl?.NoStore, pattern);
    }

    [Fact]
    public async Task A_stand_in_sees_the_room_and_no_student_s_card()
    {
        var standIn = shop.Of("stand-in");
        var course = await standIn.GetStringAsync(
            new Uri(shop.Fill("/courses/{CourseId:guid}"), UriKind.Relative),
            Cancel
        );
        var room = await standIn.GetStringAsync(
            new Uri(shop.Fill("/courses/{CourseId:guid}/room"), UriKind.Relative),
            Cancel
        );

        Assert.DoesNotContain("Ada", course, StringComparison.Ordinal);
        Assert.Contains("Ada", room, StringComparison.Ordinal);
    }
}

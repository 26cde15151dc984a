using System.Reflection;
using Bunit;
using Bunit.TestDoubles;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using ShopClass.Data.Access;

namespace ShopClass.Web.Tests.Access;

/// <summary>
/// Every live page, found by reflection, rendered for every role as a circuit does: with the viewer it was opened by, over
/// the real stores.
/// </summary>
public sealed class RoleMatrixOverCircuitTests(StaffedShop shop) : IClassFixture<StaffedShop>
{
    public static TheoryData<string> Pages => [.. Live.Select(l => l.Pattern)];

    private static IEnumerable<(string Pattern, Type Page)> Live =>
        from page in typeof(Program).Assembly.GetTypes()
        where page.IsAssignableTo(typeof(IComponent))
        where page.GetCustomAttribute<ExcludeFromInteractiveRoutingAttribute>() is null
        from route in page.GetCustomAttributes<RouteAttribute>()
        where Addresses.Answered.ContainsKey(route.Template)
        select (route.Template, page);

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Each_viewer_sees_the_page_or_that_it_is_not_there(string pattern)
    {
        var page = Live.Single(l => l.Pattern == pattern).Page;
        foreach (var visitor in StaffedShop.Visitors)
        {
            if (shop.ViewerOf(visitor) is not { } viewer)
                continue;
            var (isThere, text) = await OpenAsync(pattern, page, viewer);

            Assert.True(
                isThere == Addresses.IsAnswered(pattern, visitor),
                $"{pattern} opened by {visitor}: {(isThere ? "there" : "not there")}"
            );
            if (!isThere)
                Assert.Null(Addresses.Leak(text, visitor));
        }
    }

    private async Task<(bool IsThere, string Text)> OpenAsync(
        string pattern,
        Type page,
        Viewer viewer
    )
    {
        await using var screen = new BunitContext();
        screen.JSInterop.Mode = JSRuntimeMode.Loose;
        screen.Services.AddMudServices();
        screen.Services.AddFallbackServiceProvider(new OurServices(shop.Services));
        var navigation = screen.Services.GetRequiredService<NavigationManager>();
        var isThere = true;
        navigation.OnNotFound += (_, _) => isThere = false;
        navigation.LocationChanged += (_, _) => isThere = false;
        var ofLessons = pattern.Contains("/lessons/", StringComparison.Ordinal);
        var parameters = page.GetProperties()
            .Where(p => p.GetCustomAttribute<ParameterAttribute>() is not null)
            .Where(p => pattern.Contains($"{{{p.Name}:", StringComparison.OrdinalIgnoreCase))
            .ToDictionary(p => p.Name, p => shop.ValueOf(p.Name, pattern, ofLessons));
        var seen = screen.Render(builder =>
        {
            builder.OpenComponent<CascadingValue<Viewer>>(0);
            builder.AddAttribute(1, nameof(CascadingValue<>.Value), viewer);
            builder.AddAttribute(
                2,
                nameof(CascadingValue<>.ChildContent),
                (RenderFragment)(
                    inner =>
                    {
                        inner.OpenComponent(0, page);
                        inner.AddMultipleAttributes(1, parameters!);
                        inner.CloseComponent();
                    }
                )
            );
            builder.CloseComponent();
        });
        // Until it shows something or says that it is not there: nothing is waited for by the clock.
        await seen.WaitForStateAsync(
            () => !isThere || seen.Markup.Contains("title-block", StringComparison.Ordinal),
            TimeSpan.FromSeconds(20)
        );
        return (isThere, seen.Markup);
    }

    // The renderer brings its own services; of the app's it gets the stores and what stands beside the pages.
    private sealed class OurServices(IServiceProvider app) : IServiceProvider
    {
        public object? GetService(Type serviceType) =>
            serviceType == typeof(TimeProvider)
            || serviceType.Namespace?.StartsWith("ShopClass.", StringComparison.Ordinal) is true
                ? app.GetService(serviceType)
                : null;
    }
}

using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopClass.Web.Tests.Progress;

namespace ShopClass.Web.Tests.Privacy;

/// <summary>The app as it is put to work, with the demo class in it, and what it logs.</summary>
internal sealed class LoggedShop : Benches
{
    public WrittenLog Log { get; } = new();

    public string StoreAddress => $"Data Source={Path.Combine(Folder, "shopclass.db")}";

    protected override string EnvironmentName => "Production";

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        base.ConfigureWebHost(builder);
        builder.ConfigureServices(services => services.AddSingleton<ILoggerProvider>(Log));
    }
}

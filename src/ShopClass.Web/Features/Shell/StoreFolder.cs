namespace ShopClass.Web.Features.Shell;

/// <summary>Where the store, its keys and nothing else live: <c>Store:Folder</c>, by default App_Data beside the app.</summary>
public static class StoreFolder
{
    public static string Of(WebApplicationBuilder builder)
    {
        var asked = builder.Configuration["Store:Folder"];
        var folder = Path.GetFullPath(
            string.IsNullOrWhiteSpace(asked) ? "App_Data" : asked,
            builder.Environment.ContentRootPath
        );
        Directory.CreateDirectory(folder);
        return folder;
    }

    /// <summary>Prints the address to open once the server listens.</summary>
    public static void SayWhereToOpen(this WebApplication app, string folder, bool hasDemo) =>
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            foreach (var address in app.Urls)
                Console.WriteLine($"ShopClass is open at {address}");
            Console.WriteLine($"Its store is in {folder}");
            if (hasDemo)
                Console.WriteLine("The demo course is loaded; the front page opens it.");
        });
}

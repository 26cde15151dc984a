using ShopClass.Data.Store;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Features.CourseFiles;
using ShopClass.Web.Features.Joining;
using ShopClass.Web.Features.Keeping;
using ShopClass.Web.Features.Lessons;
using ShopClass.Web.Features.Logging;
using ShopClass.Web.Features.Orders;
using ShopClass.Web.Features.Printing;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Features.Sheets;
using ShopClass.Web.Features.Shell;

var builder = WebApplication.CreateBuilder(args);

// From Debug on it writes down what a live page sends: every word that is typed. Whatever else is looked into, not that.
builder.Logging.AddFilter("Microsoft.AspNetCore.SignalR", LogLevel.Warning);
var folder = StoreFolder.Of(builder);
builder.Services.AddShopStore($"Data Source={Path.Combine(folder, "shopclass.db")}");
builder.Services.AddShopAccounts(folder);
builder.Services.AddJoining();
builder.Services.AddBoardLogging();
builder.Services.AddLessonPages();
builder.Services.AddShopPages(builder.Environment);
builder.Services.AddPrinting();

var app = builder.Build();
await ShopStartup.PrepareAsync(app.Services, demo: !app.Environment.IsProduction());
app.UseShopPages();
app.MapSignOut();
app.MapProgress();
app.MapBoardLogging();
app.MapKeeping();
app.MapDemoDoor();
app.MapFileDownloads();
app.MapSheets();
app.MapOrders();
app.SayWhereToOpen(
    folder,
    hasDemo: !app.Environment.IsProduction()
        && await app.Services.GetRequiredService<InstructorAccounts>().DemoAsync() is not null
);
await app.RunAsync();

/// <summary>The app's entry; public so that tests can start it.</summary>
public partial class Program;

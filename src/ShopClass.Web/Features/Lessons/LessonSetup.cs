namespace ShopClass.Web.Features.Lessons;

/// <summary>What the lessons pages need among the app's services.</summary>
public static class LessonSetup
{
    public static IServiceCollection AddLessonPages(this IServiceCollection services) =>
        services.AddSingleton<LessonStores>().AddSingleton<Room.ClassDesk>();
}

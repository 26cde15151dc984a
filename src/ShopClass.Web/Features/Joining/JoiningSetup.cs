namespace ShopClass.Web.Features.Joining;

/// <summary>What joining needs of the app.</summary>
public static class JoiningSetup
{
    public static void AddJoining(this IServiceCollection services)
    {
        services.AddSingleton<CodeTries>();
        services.AddSingleton<JoinSteps>();
    }
}

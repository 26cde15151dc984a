using ShopClass.Web.Features.Keeping;
using ShopClass.Web.Features.Progress;

namespace ShopClass.Web.Features.Joining;

/// <summary>What joining, and what students do once they are in, need of the app.</summary>
public static class JoiningSetup
{
    public static void AddJoining(this IServiceCollection services)
    {
        services.AddSingleton<CodeTries>();
        services.AddSingleton<JoinSteps>();
        services.AddProgress();
        services.AddKeeping();
    }
}

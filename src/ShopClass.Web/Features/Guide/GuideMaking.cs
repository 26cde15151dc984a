using ShopClass.Core.Courses;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;
using ShopClass.Web.Features.Shared;

namespace ShopClass.Web.Features.Guide;

/// <summary>One stock guide being worked out.</summary>
public sealed class GuideMaking(Project project, CourseRules rules, Func<Task> onSlow)
    : SlowWork<int, StockGuide>(
        (teller, token) => StockGuide.Make(project, rules, teller, token),
        hundredths => hundredths,
        onSlow
    );

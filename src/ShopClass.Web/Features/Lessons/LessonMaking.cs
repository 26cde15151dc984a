using ShopClass.Core.Lessons;
using ShopClass.Scheduling;
using ShopClass.Web.Features.Shared;

namespace ShopClass.Web.Features.Lessons;

/// <summary>One plan of lessons being made.</summary>
public sealed class LessonMaking(LessonRequest request, Func<Task> onSlow)
    : SlowWork<int, LessonPlan>(
        (teller, token) => LessonImprover.Plan(request, teller, token),
        hundredths => hundredths,
        onSlow
    );

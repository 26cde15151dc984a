using ShopClass.Core.Planning;

namespace ShopClass.Web.Features.Plans;

public static class BoardNames
{
    public static string Of(PlanningRequest request, string boardId) =>
        request.Boards.FirstOrDefault(b => b.Id == boardId)?.Name ?? "The board";
}

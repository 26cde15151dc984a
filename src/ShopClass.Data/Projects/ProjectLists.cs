using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Projects;
using ShopClass.Data.Store;

namespace ShopClass.Data.Projects;

/// <summary>How a project's joints and sums of sizes are kept: short lists in one column each.</summary>
internal static class ProjectLists
{
    public static void Configure(ModelConfigurationBuilder columns)
    {
        columns
            .Properties<IReadOnlyList<Joint>>()
            .HaveConversion<ListColumn<Joint>, ListComparer<Joint>>();
        columns
            .Properties<IReadOnlyList<SizeCheck>>()
            .HaveConversion<ListColumn<SizeCheck>, ListComparer<SizeCheck>>();
        columns.Properties<ReferenceFace>().HaveConversion<string>().HaveMaxLength(20);
    }
}

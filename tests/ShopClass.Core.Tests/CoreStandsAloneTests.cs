using System.Reflection;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests;

public class CoreStandsAloneTests
{
    // Assemblies of .NET itself that would let the world in: files, network, processes, databases.
    private static readonly string[] WorldlyParts =
    [
        "System.IO.FileSystem",
        "System.Net",
        "System.Data",
        "System.Diagnostics.Process",
        "System.Console",
    ];

    [Fact]
    public void Core_refers_to_nothing_but_dotnet()
    {
        var references = typeof(Length)
            .Assembly.GetReferencedAssemblies()
            .Select(name => name.Name!)
            .ToList();
        Assert.NotEmpty(references);
        Assert.All(
            references,
            name =>
                Assert.True(
                    name.StartsWith("System.", StringComparison.Ordinal) && IsDotNet(name),
                    name
                )
        );
    }

    [Fact]
    public void Core_does_not_touch_files_network_processes_or_databases() =>
        Assert.DoesNotContain(
            typeof(Length).Assembly.GetReferencedAssemblies(),
            reference =>
                WorldlyParts.Any(part => reference.Name!.StartsWith(part, StringComparison.Ordinal))
        );

    // An assembly of the shared framework lies beside the one that holds object.
    private static bool IsDotNet(string name)
    {
        var framework = Path.GetDirectoryName(typeof(object).Assembly.Location);
        return Path.GetDirectoryName(Assembly.Load(name).Location) == framework;
    }
}

using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Running;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Bench;

/// <summary>Runs the benchmarks of the planner's inner kernels.</summary>
internal static class MicroBench
{
    public static int Run(string[] options)
    {
        BenchmarkSwitcher.FromTypes([typeof(PlannerKernels)]).Run(options);
        return 0;
    }
}

/// <summary>The steps of one exact search, on the planter in inches: 9 blanks of 4 kinds on one board.</summary>
[MemoryDiagnoser]
public class PlannerKernels
{
    private Core.Planning.Search.Bench bench = null!;
    private Lattice lattice = null!;
    private Stock stock = null!;

    /// <summary>Lays the case ready.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        var request = DemoProjects.Find("planter", UnitSystem.Inch);
        bench = Core.Planning.Search.Bench.Lay(
            request,
            new SortedDictionary<string, int>(StringComparer.Ordinal)
        );
        lattice = Lattice.Over(bench.Demand)!;
        stock = bench.Stocks[0];
    }

    /// <summary>A first plan.</summary>
    [Benchmark]
    public object Greedy() =>
        new Greedy(bench).LayOut(bench.Stocks, Core.Planning.Search.Greedy.Lead.Largest);

    /// <summary>All choices of blanks.</summary>
    [Benchmark]
    public object Choices() => Lattice.Over(bench.Demand)!;

    /// <summary>All strips.</summary>
    [Benchmark]
    public object Strips() => StripList.Of(bench, lattice, stock, stock.Usable, Plenty());

    /// <summary>All sections.</summary>
    [Benchmark]
    public object Sections() => SectionList.Of(bench, lattice, stock, stock.Usable, Plenty());

    /// <summary>All ways to fill the board.</summary>
    [Benchmark]
    public object Board() => BoardTable.For(bench, lattice, stock, stock.Usable, Plenty());

    private static Steps Plenty() => new(int.MaxValue, CancellationToken.None);
}

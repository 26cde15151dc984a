using ShopClass.Bench;

var arguments = new Arguments(args.Skip(1).ToList());
return args.FirstOrDefault() switch
{
    "students" => StudentsBench.Run(arguments),
    "ratio" => RatioBench.Run(arguments),
    "micro" => MicroBench.Run(args.Skip(1).ToArray()),
    _ => Usage(),
};

static int Usage()
{
    Console.WriteLine(
        """
        students [--seed X] [--count N] [--parts A-B] [--boards 1-3] [--defects 0-6] [--steps N]
            plans random student cases; every complete plan is rehearsed
        ratio [--rounds N]
            plans the demo projects and states each time as a ratio to sorting a fixed list in the same run
        micro [BenchmarkDotNet options]
            times the planner's inner kernels
        """
    );
    return 1;
}

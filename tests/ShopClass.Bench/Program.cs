using ShopClass.Bench;
using ShopClass.Bench.Circuits;
using ShopClass.Bench.Instances;
using ShopClass.Bench.Start;
using ShopClass.Bench.Ticks;

var arguments = new Arguments(args.Skip(1).ToList());
return args.FirstOrDefault() switch
{
    "students" => StudentsBench.Run(arguments),
    "oracle" => OracleBench.Run(arguments),
    "instances" => InstancesBench.Run(
        args.Skip(1).FirstOrDefault() is { } path && !path.StartsWith('-') ? path : null,
        arguments
    ),
    "class" => ClassBench.Run(arguments),
    "work" => WorkBench.Run(arguments),
    "ratio" => RatioBench.Run(arguments),
    "demo" => await DemoBench.Run(arguments),
    "start" => await StartBench.Run(
        arguments.Words("app") ?? "artifacts/app/ShopClass.Web.dll",
        arguments.Number("times", 5)
    ),
    "orders" => OrdersBench.Run(arguments),
    "remakes" => RemakesBench.Run(),
    "unpack" => UnpackBench.Run(),
    "lessons" => await LessonsBench.Run(),
    "ticks" => await TicksBench.Run(
        arguments.Words("app") ?? "artifacts/app/ShopClass.Web.dll",
        arguments.Number("students", 30),
        arguments.Number("seconds", 60),
        arguments.Number("pause", 3000),
        arguments.Number("rest", 5)
    ),
    "circuits" => await CircuitsBench.Run(
        arguments.Words("app") ?? "artifacts/app/ShopClass.Web.dll",
        arguments.Number("count", 20),
        arguments.Words("page")
    ),
    "first" => await FirstPlanBench.Run(
        arguments.Number("times", 10),
        arguments.Words("app") ?? "artifacts/app/ShopClass.Web.dll"
    ),
    "first-plan" => FirstPlanBench.PlanOnce(arguments.Words("practised") == "yes"),
    "nothing" => 0,
    "micro" => MicroBench.Run(args.Skip(1).ToArray()),
    _ => Usage(),
};

static int Usage()
{
    Console.WriteLine(
        """
        students [--seed X] [--count N] [--parts A-B] [--boards 1-3] [--defects 0-6] [--steps N]
            plans random student cases; every complete plan is rehearsed
        oracle [--seed X] [--count N] [--parts N]
            the planner beside a general solver on the same cases: same values, and how many times as long it takes
        instances PATH [--seconds S] [--steps N] [--only NAME]
            solves published instances from a file or a folder; every solution is checked; one CSV line each, then totals
        class [--students N] [--seed X] [--count N] [--way pooled|boards] [--unit inch|metric] [--steps N] [--verbose 1]
            orders wood for random classes; every board is rehearsed
        work [--count N] [--seed X]
            writes and rehearses the whole work of random students, with a joint and an open dimension each
        ratio [--rounds N]
            plans the demo projects and states each time as a ratio to sorting a fixed list in the same run
        demo [--rounds N]
            loads the demo course; for every student: first and quickest time of plan, rehearsal and verdict, and of the kit sheet
        start [--app PATH] [--times N]
            from starting the published app on an existing store to its first page, beside starting an empty program
        first [--app PATH] [--times N]
            a new process making its first plan, compiled as it runs and with the published app's core, beside an empty program
        circuits [--app PATH] [--count N] [--page room|plan|course]
            opens live pages on the published app in a browser: managed heap of the app for each of them
        ticks [--app PATH] [--students N] [--seconds S] [--pause MS] [--rest S]
            a class ticking steps on the published app: ms to a durable answer, and whether anything was lost or doubled
        orders [--students N]
            orders wood for a class in every way, then prints its sheets and everyone's kit sheet
        lessons
            plans classes of made-up work and the demo course by the rule and then with the solver; every plan is reviewed
        remakes
            spoils every part of the demo projects after every cut: ms until the ways out are there
        unpack
            ms to have a stored plan and its steps at hand, the first of a process and those after it
        micro [BenchmarkDotNet options]
            times the planner's inner kernels
        """
    );
    return 1;
}

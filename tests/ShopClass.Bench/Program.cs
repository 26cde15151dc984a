using ShopClass.Bench;

var arguments = new Arguments(args.Skip(1).ToList());
return args.FirstOrDefault() switch
{
    "students" => StudentsBench.Run(arguments),
    _ => Usage(),
};

static int Usage()
{
    Console.WriteLine(
        "students [--seed X] [--count N] [--parts A-B] [--boards 1-3] [--defects 0-6]"
    );
    return 1;
}

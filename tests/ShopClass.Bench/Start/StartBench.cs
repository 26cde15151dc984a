using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace ShopClass.Bench.Start;

/// <summary>
/// From starting the process to the first whole page, on a store that exists already. Baseline of the same run: how long
/// this runtime takes to start a program that does nothing.
/// </summary>
internal static class StartBench
{
    public static async Task<int> Run(string webAssembly, int times)
    {
        if (!File.Exists(webAssembly))
        {
            await Console.Error.WriteLineAsync(
                $"{webAssembly} is not there. Publish the app first: dotnet publish src/ShopClass.Web -c Release --use-current-runtime --self-contained false -o artifacts/app"
            );
            return 2;
        }

        var folder = Directory.CreateTempSubdirectory("shopclass-start-").FullName;
        try
        {
            await FirstPage(webAssembly, folder); // makes the store
            Console.WriteLine("run,first page ms,empty program ms,ratio");
            for (var run = 1; run <= times; run++)
            {
                var page = await FirstPage(webAssembly, folder);
                var baseline = await EmptyProgram();
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{run},{page.TotalMilliseconds:F0},{baseline.TotalMilliseconds:F0},{page / baseline:F1}"
                    )
                );
            }

            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Starts the app on a store and waits until it answers.</summary>
    public static async Task<(Process App, Uri Address)> StartOnAsync(
        string webAssembly,
        string folder,
        bool demo = false
    )
    {
        var address = new Uri($"http://127.0.0.1:{FreePort()}");
        var app = Start(
            webAssembly,
            "--urls",
            address.ToString(),
            "--Store:Folder",
            folder,
            "--environment",
            demo ? "Development" : "Production"
        );
        using var client = new HttpClient { BaseAddress = address };
        for (var waited = 0; waited < 600; waited++)
        {
            try
            {
                using var page = await client.GetAsync(new Uri("/health", UriKind.Relative));
                return (app, address);
            }
            catch (HttpRequestException) when (!app.HasExited)
            {
                await Task.Delay(100);
            }
        }

        throw new InvalidOperationException("The app does not answer.");
    }

    private static async Task<TimeSpan> FirstPage(string webAssembly, string folder)
    {
        var address = $"http://127.0.0.1:{FreePort()}";
        var watch = Stopwatch.StartNew();
        using var app = Start(webAssembly, "--urls", address, "--Store:Folder", folder);
        using var client = new HttpClient
        {
            BaseAddress = new Uri(address),
            Timeout = TimeSpan.FromSeconds(5),
        };
        while (true)
        {
            try
            {
                using var page = await client.GetAsync(new Uri("/", UriKind.Relative));
                if (page.StatusCode == HttpStatusCode.OK)
                    break;
            }
            catch (HttpRequestException)
                when (!app.HasExited && watch.Elapsed < TimeSpan.FromSeconds(60))
            {
                await Task.Delay(10);
            }
        }

        watch.Stop();
        app.Kill(entireProcessTree: true);
        await app.WaitForExitAsync();
        return watch.Elapsed;
    }

    /// <summary>How long this runtime takes to start a program that does nothing, and to end it.</summary>
    public static async Task<TimeSpan> EmptyProgram()
    {
        var watch = Stopwatch.StartNew();
        using var empty = Start(typeof(StartBench).Assembly.Location, "nothing");
        await empty.WaitForExitAsync();
        return watch.Elapsed;
    }

    private static Process Start(string assembly, params string[] arguments)
    {
        var how = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = Path.GetDirectoryName(Path.GetFullPath(assembly))!,
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        foreach (var argument in (string[])[Path.GetFullPath(assembly), .. arguments])
            how.ArgumentList.Add(argument);
        how.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        var process =
            Process.Start(how) ?? throw new InvalidOperationException($"{assembly} did not start.");
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        return process;
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}

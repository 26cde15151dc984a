using System.Runtime.InteropServices;

namespace ShopClass.Bench;

/// <summary>Processor time of this thread: what a plan costs whatever else the machine does. Linux only; elsewhere zero.</summary>
internal static partial class ThreadTime
{
    private const int ThreadClock = 3; // CLOCK_THREAD_CPUTIME_ID of clock_gettime(2)

    public static double Milliseconds =>
        OperatingSystem.IsLinux() && ClockGetTime(ThreadClock, out var time) == 0
            ? time.Seconds * 1e3 + time.Nanoseconds / 1e6
            : 0;

    [StructLayout(LayoutKind.Sequential)]
    private readonly struct Time
    {
        public readonly long Seconds;
        public readonly long Nanoseconds;
    }

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [DllImport("libc", EntryPoint = "clock_gettime")]
    private static extern int ClockGetTime(int clock, out Time time);
}

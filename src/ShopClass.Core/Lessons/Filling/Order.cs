using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Filling;

/// <summary>Whose turn it is, among those who are free.</summary>
internal sealed class Order
{
    private readonly Roster roster;
    private readonly int lesson;
    private readonly Habit habit;
    private readonly int[] minutesToCome;

    public Order(Roster roster, int lesson, Habit habit)
    {
        (this.roster, this.lesson, this.habit) = (roster, lesson, habit);
        minutesToCome =
        [
            .. roster.Students.Select(
                (_, s) =>
                    Enumerable
                        .Range(lesson, roster.Minutes.Length - lesson)
                        .Where(l => roster.Attends(s, l))
                        .Sum(l => roster.Minutes[l])
            ),
        ];
    }

    /// <summary>The free students, first served first.</summary>
    public IReadOnlyList<int> At(
        Ledger ledger,
        int t,
        int[] freeAt,
        (Station Station, int Place)?[] stands
    ) =>
        [
            .. Enumerable
                .Range(0, freeAt.Length)
                .Where(s => freeAt[s] <= t && ledger.Ahead(s) > 0 && roster.Attends(s, lesson))
                .OrderBy(s => habit.StaysOn && freeAt[s] == t && stands[s] is not null ? 0 : 1)
                .ThenByDescending(s => Claim(ledger, s))
                .ThenBy(s => s),
        ];

    private long Claim(Ledger ledger, int student)
    {
        var claim = habit.Turns switch
        {
            FirstServed.LongestAhead => LongestAhead(ledger, student),
            FirstServed.MostAhead => ledger.Ahead(student),
            _ => ledger.Ahead(student) - minutesToCome[student],
        };
        return claim + Mixed(student);
    }

    private long LongestAhead(Ledger ledger, int student)
    {
        foreach (var turn in roster.TurnsOf[student])
        {
            if (!ledger.IsDone(turn))
                return roster.Tails[turn];
        }

        return 0;
    }

    // A small whole-number hash: the same seed, student and lesson give the same claim, always.
    private long Mixed(int student)
    {
        if (habit.Seed == 0)
            return 0;
        unchecked
        {
            var x = (uint)(habit.Seed * 2654435761) ^ (uint)((student + 1) * 40503 + lesson * 7919);
            x ^= x >> 15;
            x *= 2246822519;
            x ^= x >> 13;
            return x % 40;
        }
    }
}

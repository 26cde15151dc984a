namespace ShopClass.Web.Features.Students;

/// <summary>What goes when a student is removed.</summary>
public static class StudentGoes
{
    public static string Says(string student, int boards, int plans) =>
        (boards, plans) switch
        {
            (0, 0) => $"{student} goes. No board is logged and no plan was made.",
            (_, 0) => $"{student} goes, with {Count(boards, "board")}. This cannot be taken back.",
            _ =>
                $"{student} goes, with {Count(boards, "board")} and {Count(plans, "plan")}. This cannot be taken back.",
        };

    private static string Count(int number, string what) =>
        number == 1 ? $"1 {what}" : $"{number} {what}s";
}

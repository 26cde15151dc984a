namespace ShopClass.Data.Access;

/// <summary>How much of anything is kept: enough for any class, small enough that nothing runs away.</summary>
public static class StoreLimits
{
    public const int StudentsInACourse = 200;

    public const int ProjectsInACourse = 40;

    public const int LessonsInACourse = 60;

    /// <summary>Boards of one student for one project.</summary>
    public const int BoardsForAProject = 12;

    public const int LongestName = 80;

    public const int LongestAlias = 40;

    public const int LongestNotes = 2000;
}

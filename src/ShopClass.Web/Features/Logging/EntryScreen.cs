namespace ShopClass.Web.Features.Logging;

/// <summary>What is asked about a board, one thing a screen. Drafts keep the numbers, so they stay as they are.</summary>
public enum EntryScreen
{
    Length = 0,
    Start = 1,
    Middle = 2,
    End = 3,
    Thickness = 4,
    Surface = 5,
    Wood = 6,
    Bad = 7,
    Photo = 8,
    Log = 9,
    Flat = 10,
}

/// <summary>The screens' addresses and words.</summary>
public static class EntryScreens
{
    /// <summary>All of them, in the order they are asked.</summary>
    public static IReadOnlyList<EntryScreen> All { get; } =
    [
        EntryScreen.Length,
        EntryScreen.Start,
        EntryScreen.Middle,
        EntryScreen.End,
        EntryScreen.Thickness,
        EntryScreen.Surface,
        EntryScreen.Flat,
        EntryScreen.Wood,
        EntryScreen.Bad,
        EntryScreen.Photo,
        EntryScreen.Log,
    ];

    /// <summary>Which of them it is, from 1.</summary>
    public static int Number(EntryScreen screen) => All.TakeWhile(s => s != screen).Count() + 1;

    /// <summary>The one asked before it; null for the first.</summary>
    public static EntryScreen? Before(EntryScreen screen) =>
        Number(screen) is > 1 and var number ? All[number - 2] : null;

    public static string Address(Guid project, EntryScreen screen) =>
        $"/my/board/new/{project}/{Slug(screen)}";

    /// <summary>The address of one bad place.</summary>
    public static string PlaceAddress(Guid project, int number) =>
        $"/my/board/new/{project}/place?n={number}";

    public static EntryScreen? Named(string? slug) =>
        All.Where(s => Slug(s) == slug).Select(s => (EntryScreen?)s).FirstOrDefault();

    public static string Question(EntryScreen screen) =>
        screen switch
        {
            EntryScreen.Length => "How long is it?",
            EntryScreen.Start => "How wide is it at the start?",
            EntryScreen.Middle => "How wide in the middle?",
            EntryScreen.End => "How wide at the far end?",
            EntryScreen.Thickness => "How thick is it?",
            EntryScreen.Surface => "Is it planed or rough?",
            EntryScreen.Flat => "Is it flat?",
            EntryScreen.Wood => "Which wood is it?",
            EntryScreen.Bad => "Where are its bad places?",
            EntryScreen.Photo => "A photo, if you like",
            EntryScreen.Log => "Is this your board?",
            _ => throw new ArgumentOutOfRangeException(nameof(screen), screen, null),
        };

    /// <summary>How to do it.</summary>
    public static string How(EntryScreen screen) =>
        screen switch
        {
            EntryScreen.Length =>
                "Hook the tape on the end you will mark from: that end is the start. Read the shortest place.",
            EntryScreen.Start =>
                "Measure the wood itself: what a seller calls 10 is narrower. The start is the end you hooked the tape on.",
            EntryScreen.Middle or EntryScreen.End => "Boards taper, so every width counts.",
            EntryScreen.Thickness => "At the thinnest place you find.",
            EntryScreen.Surface => "Look at its faces and edges, against the light.",
            EntryScreen.Flat =>
                "Lay a straightedge across where it is worst: how deep is the hollow under it? Lay the board on a flat bench: how far does one corner stand off while the other three touch?",
            EntryScreen.Wood => "If you do not know, ask your instructor.",
            _ => "",
        };

    /// <summary>The field of the board that is asked for; null where it is more than one.</summary>
    public static string? Field(EntryScreen screen) =>
        screen switch
        {
            EntryScreen.Length => "Length",
            EntryScreen.Start => "WidthAtStart",
            EntryScreen.Middle => "WidthAtMiddle",
            EntryScreen.End => "WidthAtEnd",
            EntryScreen.Thickness => "Thickness",
            _ => null,
        };

    private static string Slug(EntryScreen screen) => screen.ToString().ToLowerInvariant();
}

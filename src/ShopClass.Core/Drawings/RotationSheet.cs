using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings;

/// <summary>A rotation being drawn: students in rows, or side by side on an upright frame.</summary>
internal sealed class RotationSheet
{
    private readonly LessonRequest request;
    private readonly LessonPlan plan;
    private readonly int lesson;
    private readonly DrawingFrame frame;
    private readonly StudentWork[] students;
    private readonly List<Shape> shapes = [];
    private readonly double t;
    private readonly double names;
    private readonly double row;
    private readonly double top;

    private readonly ILookup<string, FreeSpell> free;

    public RotationSheet(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        DrawingFrame frame,
        IEnumerable<StudentWork> of
    )
    {
        (this.request, this.plan, this.lesson, this.frame) = (request, plan, lesson, frame);
        t = frame.TextSize;
        students = [.. of.Where(s => s.Work is { Steps.Count: > 0 })];
        free = Spells.In(request, plan, lesson).ToLookup(s => s.StudentId, StringComparer.Ordinal);
        row = frame.Upright ? 3.4 * t : 2.5 * t;
        names = frame.Upright
            ? 0
            : Math.Min(
                frame.Width * 0.2,
                students.Select(s => LetterWidths.Of(s.Name, t)).DefaultIfEmpty(0).Max() + t
            );
        top = 1.8 * t;
    }

    public IReadOnlyList<Shape> Shapes => shapes;

    public double Height => Round(top + students.Length * row + 0.6 * t);

    private int Minutes => Math.Max(1, request.Lessons[lesson].Minutes);

    public void Draw()
    {
        DrawHours();
        foreach (var (i, student) in students.Index())
            DrawStudent(student, top + i * row);
    }

    private double X(int minute) => names + (frame.Width - names - 1) * minute / Minutes;

    // A line each quarter of an hour, the figure where there is room for it.
    private void DrawHours()
    {
        var step =
            Minutes > 240 ? 60
            : Minutes > 90 && frame.Upright ? 30
            : 15;
        for (var m = 0; m <= Minutes; m += step)
        {
            var x = Round(X(m));
            shapes.Add(new Line(x, Round(1.3 * t), x, Height, Ink.Grain));
            var text = RotationWords.At(request.Lessons[lesson], m);
            var anchor =
                m == 0 ? Anchor.Start
                : X(m) + LetterWidths.Of(text, t) / 2 > frame.Width ? Anchor.End
                : Anchor.Middle;
            shapes.Add(new Label(x, Round(0.6 * t), text, t, anchor, Ink.Quiet));
        }
    }

    private void DrawStudent(StudentWork student, double y)
    {
        var (boxTop, height) = frame.Upright
            ? (y + 1.35 * t, row - 1.65 * t)
            : (y + 0.2 * t, row - 0.4 * t);
        var nameY = frame.Upright ? y + 0.7 * t : y + row / 2;
        shapes.Add(
            new Label(0, Round(nameY), Shortened(student.Name), t, Anchor.Start, Ink.Lettering)
        );
        if (!request.Lessons[lesson].IsAttendedBy(student.StudentId))
        {
            Write(0, Minutes, boxTop, height, ["absent"], Ink.Quiet);
            return;
        }

        var program = plan.Lessons[lesson];
        foreach (
            var showing in program.Showings.Where(s =>
                s.StudentId is null || s.StudentId == student.StudentId
            )
        )
            Box(showing.Start, showing.End, boxTop, height, Ink.Waste, ["watch", "w"], student);
        foreach (var (start, end, first) in Runs(program, student.StudentId))
            Box(
                start,
                end,
                boxTop,
                height,
                InkOf(first.Turn.Station),
                [
                    StationWords.Place(first.Turn.Station, first.Place),
                    Short(first.Turn.Station, first.Place),
                ],
                student
            );
        foreach (var spell in free[student.StudentId])
            Write(spell.Start, spell.End, boxTop, height, ["free"], Ink.Quiet);
    }

    // Turns that follow each other at one place are one box.
    private static IEnumerable<(int Start, int End, PlacedTurn First)> Runs(
        LessonProgram program,
        string student
    )
    {
        (int Start, int End, PlacedTurn First)? run = null;
        foreach (
            var turn in program.Turns.Where(x => x.Turn.StudentId == student).OrderBy(x => x.Start)
        )
        {
            if (
                run is { } now
                && now.End == turn.Start
                && now.First.Turn.Station == turn.Turn.Station
                && now.First.Place == turn.Place
            )
            {
                run = (now.Start, turn.End, now.First);
                continue;
            }

            if (run is { } done)
                yield return done;
            run = (turn.Start, turn.End, turn);
        }

        if (run is { } last)
            yield return last;
    }

    private void Box(
        int start,
        int end,
        double y,
        double height,
        Ink ink,
        string[] words,
        StudentWork student
    )
    {
        shapes.Add(
            new Box(
                Round(X(start)),
                Round(y),
                Round(X(end) - X(start)),
                Round(height),
                ink,
                student.Name
            )
        );
        Write(start, end, y, height, words, Ink.Lettering);
    }

    // The longest of the words that fit; none where none does: the words beside the picture tell all.
    private void Write(int start, int end, double y, double height, string[] words, Ink ink)
    {
        var room = X(end) - X(start) - 0.3 * t;
        if (words.FirstOrDefault(w => LetterWidths.Of(w, t) <= room) is not { } fits)
            return;
        shapes.Add(
            new Label(
                Round((X(start) + X(end)) / 2),
                Round(y + height / 2),
                fits,
                t,
                Anchor.Middle,
                ink
            )
        );
    }

    private string Shortened(string name)
    {
        if (frame.Upright)
            return name;
        for (var most = name.Length; most > 1 && LetterWidths.Of(name, t) > names - 0.5 * t; )
            name = WholeLetters.Start(name, --most);
        return name;
    }

    private static Ink InkOf(Station station) =>
        station switch
        {
            Station.SawBench => Ink.Wood,
            Station.Vise => Ink.Blank,
            Station.BenchHook => Ink.Offcut,
            _ => Ink.Finished,
        };

    private static string Short(Station station, int? place) =>
        station switch
        {
            Station.SawBench => $"S{place}",
            Station.Vise => $"V{place}",
            Station.BenchHook => $"H{place}",
            Station.Sharpening => $"E{place}",
            Station.Gluing => "G",
            _ => "B",
        };

    private static double Round(double points) => Math.Round(points, 2);
}

namespace ShopClass.Core.Lessons.Reviewing;

/// <summary>Nobody is in two places, no place holds two, and nothing runs past the end of the lesson.</summary>
internal static class RoomRules
{
    /// <summary>Turns and demonstrations lie within the lesson, and the student is there.</summary>
    public static IEnumerable<string> WithinTheLesson(Days days)
    {
        for (var l = 0; l < days.Plan.Lessons.Count; l++)
        {
            var lesson = days.Request.Lessons[l];
            var program = days.Plan.Lessons[l];
            foreach (var turn in program.Turns)
            {
                if (turn.Start < 0 || turn.End > lesson.Minutes)
                    yield return $"{days.Name(turn.Turn.StudentId)} works outside {Days.Name(l)}.";
                if (!lesson.IsAttendedBy(turn.Turn.StudentId))
                    yield return $"{days.Name(turn.Turn.StudentId)} is absent from {Days.Name(l)} and has a turn.";
            }

            foreach (var showing in program.Showings)
            {
                if (showing.Start < 0 || showing.End > lesson.Minutes)
                    yield return $"A demonstration runs outside {Days.Name(l)}.";
                if (showing.StudentId is { } student && !lesson.IsAttendedBy(student))
                    yield return $"{days.Name(student)} is absent from {Days.Name(l)} and is shown something.";
            }
        }
    }

    /// <summary>A student does one thing at a time, watching included.</summary>
    public static IEnumerable<string> OneThingAtATime(Days days)
    {
        for (var l = 0; l < days.Plan.Lessons.Count; l++)
            foreach (var student in days.Working)
            {
                var program = days.Plan.Lessons[l];
                var spells = program
                    .Turns.Where(t => t.Turn.StudentId == student.StudentId)
                    .Select(t => (t.Start, t.End))
                    .Concat(
                        program
                            .Showings.Where(s =>
                                s.StudentId is null || s.StudentId == student.StudentId
                            )
                            .Select(s => (s.Start, s.End))
                    )
                    .Order()
                    .ToList();
                if (spells.Zip(spells.Skip(1)).Any(p => p.Second.Start < p.First.End))
                    yield return $"{student.Name} does two things at once in {Days.Name(l)}.";
            }
    }

    /// <summary>Every counted place holds one student at a time, and there are no more places than the shop has.</summary>
    public static IEnumerable<string> PlacesEnough(Days days)
    {
        for (var l = 0; l < days.Plan.Lessons.Count; l++)
        {
            var turns = days.Plan.Lessons[l].Turns;
            var shop = days.Request.Lessons[l].Stations ?? days.Request.Shop;
            foreach (var turn in turns)
            {
                var places = shop.PlacesAt(turn.Turn.Station);
                if (
                    places is null
                        ? turn.Place is not null
                        : turn.Place is null or < 1 || turn.Place > places
                )
                    yield return $"{days.Name(turn.Turn.StudentId)} has no place in {Days.Name(l)}.";
            }

            foreach (
                var place in turns
                    .Where(t => t.Place is not null)
                    .GroupBy(t => (t.Turn.Station, t.Place))
            )
            {
                var order = place.OrderBy(t => t.Start).ToList();
                if (order.Zip(order.Skip(1)).Any(p => p.Second.Start < p.First.End))
                    yield return $"Two students share {StationWords.Place(place.Key.Station, place.Key.Place)} in {Days.Name(l)}.";
            }
        }
    }
}

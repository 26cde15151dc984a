namespace ShopClass.Core.Lessons.Reviewing;

/// <summary>Every skill is seen before it is used, and the instructor shows one thing at a time.</summary>
internal static class ShowingRules
{
    /// <summary>What the instructor put into a lesson is shown there, where it fits.</summary>
    public static IEnumerable<string> WhereAskedFor(Days days)
    {
        for (var l = 0; l < days.Plan.Lessons.Count; l++)
        {
            var free = days.Request.Lessons[l].Minutes;
            foreach (var skill in days.Request.Lessons[l].Shows)
            {
                var takes = days.Request.MinutesToShow(skill);
                var isShown = days
                    .Plan.Lessons[l]
                    .Showings.Any(s => s.Skill == skill && s.StudentId is null);
                if (takes <= free && !isShown && free >= Lesson.FewestMinutes)
                    yield return $"{SkillBook.Of(skill).Name} is not shown in {Days.Name(l)}.";
                free -= takes;
            }
        }
    }

    /// <summary>A student has seen a skill, with the class or alone, before using it.</summary>
    public static IEnumerable<string> SeenBeforeUse(Days days)
    {
        foreach (var student in days.Working)
        foreach (var doing in days.Of(student.StudentId))
        {
            var skill = doing.Placed.Turn.Skill;
            var isSeen = days
                .Plan.Lessons.Where(
                    (program, l) =>
                        days.Request.Lessons[l].IsAttendedBy(student.StudentId)
                        && program.Showings.Any(s =>
                            s.Skill == skill
                            && (s.StudentId is null || s.StudentId == student.StudentId)
                            && days.Begins[l] + s.End <= doing.Begins
                        )
                )
                .Any();
            if (!isSeen)
                yield return $"{student.Name} uses {SkillBook.Of(skill).Name} in {Days.Name(doing.Lesson)} without having seen it.";
        }
    }

    /// <summary>Demonstrations take their time and do not overlap.</summary>
    public static IEnumerable<string> OneAtATime(Days days)
    {
        for (var l = 0; l < days.Plan.Lessons.Count; l++)
        {
            var order = days
                .Plan.Lessons[l]
                .Showings.OrderBy(s => s.Start)
                .ThenBy(s => s.End)
                .ToList();
            if (order.Zip(order.Skip(1)).Any(p => p.Second.Start < p.First.End))
                yield return $"Two demonstrations overlap in {Days.Name(l)}.";
            foreach (var showing in order)
            {
                if (showing.Minutes < days.Request.MinutesToShow(showing.Skill))
                    yield return $"{SkillBook.Of(showing.Skill).Name} is shown too briefly in {Days.Name(l)}.";
            }
        }
    }
}

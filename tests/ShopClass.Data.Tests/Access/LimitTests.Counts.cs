using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using Xunit;

namespace ShopClass.Data.Tests.Access;

// How many of each.
public partial class LimitTests
{
    [Fact]
    public async Task The_twelfth_board_goes_in_and_the_next_is_refused()
    {
        await using var store = shop.Copy();
        await using (var context = store.Open())
        {
            context.Boards.AddRange(
                Enumerable
                    .Range(2, StoreLimits.BoardsForAProject - 2)
                    .Select(i => new BoardRow
                    {
                        Id = Guid.NewGuid(),
                        StudentId = shop.Student.Id,
                        ProjectId = shop.Project.Id,
                        Position = i,
                    })
            );
            await context.SaveChangesAsync(Cancel);
        }

        await TheLastAndOneMoreAsync(() =>
            store.Boards.AddAsync(shop.Self, shop.Student.Id, shop.Project.Id, Wood.Pine(), Cancel)
        );
    }

    [Fact]
    public async Task The_two_hundredth_student_goes_in_and_the_next_is_refused()
    {
        await using var store = shop.Copy();
        await using (var context = store.Open())
        {
            context.Students.AddRange(
                Enumerable
                    .Range(0, StoreLimits.StudentsInACourse - 3)
                    .Select(i => new StudentRow
                    {
                        Id = Guid.NewGuid(),
                        CourseId = shop.Course.Id,
                        Name = $"Student {i}",
                    })
            );
            await context.SaveChangesAsync(Cancel);
        }

        await TheLastAndOneMoreAsync(() =>
            store.Students.AddAsync(shop.Owner, shop.Course.Id, new("Dov", "", false), Cancel)
        );
    }

    [Fact]
    public async Task The_fortieth_project_goes_in_and_the_next_is_refused()
    {
        await using var store = shop.Copy();
        await using (var context = store.Open())
        {
            context.Projects.AddRange(
                Enumerable
                    .Range(2, StoreLimits.ProjectsInACourse - 2)
                    .Select(i => new ProjectRow
                    {
                        Id = Guid.NewGuid(),
                        CourseId = shop.Course.Id,
                        Name = $"Project {i}",
                        Position = i,
                    })
            );
            await context.SaveChangesAsync(Cancel);
        }

        await TheLastAndOneMoreAsync(() =>
            store.Projects.CreateAsync(shop.Owner, shop.Course.Id, "Box", Cancel)
        );
    }
}

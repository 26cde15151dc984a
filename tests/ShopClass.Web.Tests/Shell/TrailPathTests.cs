using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Tests.Shell;

public sealed class TrailPathTests
{
    private static readonly Guid C = Guid.Parse("11111111-1111-1111-1111-111111111111");
    private static readonly Guid P = Guid.Parse("22222222-2222-2222-2222-222222222222");
    private static readonly Guid S = Guid.Parse("33333333-3333-3333-3333-333333333333");

    [Theory]
    [InlineData("/courses", false, false, false)]
    [InlineData("/courses/{c}/settings", true, false, false)]
    [InlineData("/courses/{c}/projects/{p}", true, true, false)]
    [InlineData("/courses/{c}/students/{s}?project={p}", true, false, true)]
    [InlineData("/courses/{c}/students/{s}/projects/{p}/plan", true, true, true)]
    [InlineData("/courses/not-an-id/students/", false, false, false)]
    public void An_address_says_which_course_project_and_student_it_is_about(
        string path,
        bool course,
        bool project,
        bool student
    )
    {
        var address = path.Replace("{c}", C.ToString(), StringComparison.Ordinal)
            .Replace("{p}", P.ToString(), StringComparison.Ordinal)
            .Replace("{s}", S.ToString(), StringComparison.Ordinal);

        Assert.Equal(
            new TrailPath(course ? C : null, project ? P : null, student ? S : null),
            TrailPath.Of(address)
        );
    }
}

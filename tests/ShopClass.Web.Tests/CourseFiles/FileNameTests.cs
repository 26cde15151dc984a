using ShopClass.Web.Features.CourseFiles;

namespace ShopClass.Web.Tests.CourseFiles;

public sealed class FileNameTests
{
    [Theory]
    [InlineData("Evening class", "course", "evening-class.course.json")]
    [InlineData("  Tool tote (1) ", "project", "tool-tote-1.project.json")]
    [InlineData("../../etc/passwd", "course", "etc-passwd.course.json")]
    [InlineData("\"quoted\"\r\nX: y", "project", "quoted-x-y.project.json")]
    [InlineData("Möbel", "project", "m-bel.project.json")]
    [InlineData("木工", "course", "course.json")]
    public void A_file_is_named_by_plain_letters_and_digits(
        string name,
        string kind,
        string file
    ) => Assert.Equal(file, FileDownloads.NameOf(name, kind));
}

using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Tests.Account;

public sealed class ReturnAddressTests
{
    [Theory]
    [InlineData("/courses/1?x=2", "/courses/1?x=2")]
    [InlineData("/", "/")]
    [InlineData(null, "/courses")]
    [InlineData("", "/courses")]
    [InlineData("//elsewhere.test/x", "/courses")]
    [InlineData("/\\elsewhere.test", "/courses")]
    [InlineData("https://elsewhere.test", "/courses")]
    [InlineData("/\t/elsewhere.test", "/courses")]
    public void Only_our_own_pages_are_returned_to(string? asked, string given) =>
        Assert.Equal(given, ReturnAddress.Of(asked));
}

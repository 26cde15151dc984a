using System.Net;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Tests.Joining;

public sealed class CodeTriesTests
{
    [Fact]
    public void One_address_is_stopped_and_its_neighbour_is_not()
    {
        using var tries = new CodeTries();
        var guesser = IPAddress.Parse("192.0.2.7");
        for (var i = 0; i < CodeTries.FromOneAddress; i++)
        {
            Assert.True(tries.MayTry(guesser));
            tries.WasWrong(guesser);
        }

        Assert.False(tries.MayTry(guesser));
        Assert.False(tries.MayTry(guesser.MapToIPv6()));
        Assert.True(tries.MayTry(IPAddress.Parse("192.0.2.8")));
    }

    [Fact]
    public void A_guesser_with_many_addresses_is_stopped_too()
    {
        using var tries = new CodeTries();
        for (var i = 0; i < CodeTries.FromAll; i++)
            tries.WasWrong(IPAddress.Parse($"10.0.{i / 200}.{i % 200}"));

        Assert.False(tries.MayTry(IPAddress.Parse("10.9.9.9")));
    }

    [Fact]
    public void All_addresses_of_one_network_count_as_one()
    {
        using var tries = new CodeTries();
        for (var i = 0; i < CodeTries.FromOneAddress; i++)
            tries.WasWrong(IPAddress.Parse($"2001:db8:1:2::{i + 1}"));

        Assert.False(tries.MayTry(IPAddress.Parse("2001:db8:1:2:aaaa::1")));
        Assert.True(tries.MayTry(IPAddress.Parse("2001:db8:1:3::1")));
    }
}

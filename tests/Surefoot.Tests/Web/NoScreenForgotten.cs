namespace Surefoot.Tests.Web;

/// <summary>A page that is added is looked at too, in every light and size.</summary>
public class NoScreenForgotten
{
    public static TheoryData<string> All => [.. Screens.All];

    [Theory]
    [MemberData(nameof(All))]
    public void Every_page_has_an_address_at_which_it_is_looked_at(string route) => Assert.True(
        Screens.Rooms.ContainsKey(route) || Screens.Kept.ContainsKey(route) || Screens.Elsewhere.ContainsKey(route),
        $"Say in Screens.cs where {route} is looked at.");

    [Fact]
    public void Nothing_is_looked_at_that_is_not_there_any_more()
    {
        Assert.Empty(Screens.Rooms.Keys.Concat(Screens.Kept.Keys).Concat(Screens.Elsewhere.Keys).Except(Screens.All).Except(["/dance/{address}/print"]));
    }
}

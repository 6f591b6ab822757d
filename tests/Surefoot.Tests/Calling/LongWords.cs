using Surefoot.Draw;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Calling;

/// <summary>A word that is longer than its count is wide stands in smaller type on paper; it is not broken.</summary>
public class LongWords
{
    [Fact]
    public void Stand_smaller_on_a_single_count_and_as_usual_on_two()
    {
        var html = CallHtml.Write(DemoNotebook.Read("circle/kettle-lid-shuffle.dance"), new());
        Assert.Matches("colspan=\"1\"><b style=\"font-size:0\\.\\d+em\">shuffle<", html);
        Assert.Matches("colspan=\"2\"><b>shuffle<", html);
        Assert.Matches("colspan=\"1\"><b>brush<", html);
    }

    [Fact]
    public void Are_smaller_still_in_large_print_where_columns_stay_as_they_are()
    {
        var reading = DemoNotebook.Read("circle/kettle-lid-shuffle.dance");
        Assert.Contains("font-size:0.92em\">brush", CallHtml.Write(reading, new() { LargePrint = true }));
    }
}

using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Library.Keeping;
using Surefoot.Library.Searching;

namespace Surefoot.Tests.Library;

/// <summary>A dance that is kept over and over stands in the search once, and leaves the others where they are.</summary>
public class PutInAgain
{
    private static Card Card(long page, string title, bool deleted = false) => new(
        new ShelfItem(page, 1, $"dance-{page}", title, false, DateTimeOffset.UnixEpoch, false, Floor.Walls, 4, 32, new(4, 4), 100, 110, "beginner", "", 0, 0, 0, default, default, default, default, default),
        Folding.Key(title), page, deleted);

    private static long[] Found(SearchIndex index, string words) => [.. SearchIndex.InOrderOfFit(index.Search(Question.Read(words), null)).Select(h => h.Card.Item.Page)];

    [Fact]
    public void Only_the_last_is_found_and_everything_else_still_is()
    {
        var index = new SearchIndex();
        for (var page = 1; page <= 5; page++) index.Put(Card(page, $"Willow {(char)('a' + page)}"), "near the pond", "");
        index.Put(Card(7, "Heron"), "", "d1\tvine left\nd5\tjazz box\n");
        // Many times more than there are dances, so that empty places are closed up more than once.
        for (var time = 0; time < 3500; time++) index.Put(Card(6, time % 2 == 0 ? "Otter" : "Badger"), "near the pond", "");
        Assert.Equal([6], Found(index, "badger"));
        Assert.Empty(Found(index, "otter"));
        Assert.Equal([1, 2, 3, 4, 5], Found(index, "willow"));
        Assert.Equal([6, 1, 2, 3, 4, 5], Found(index, "pond"));
        Assert.Equal([7], Found(index, "vine then jazz box"));
        index.Put(Card(6, "Badger", deleted: true), "", "");
        Assert.Empty(Found(index, "badger"));
    }
}

using Surefoot.Library;
using Surefoot.Library.PostgreSql;
using Surefoot.Library.Sqlite;
using Surefoot.Library.Store;

// Saves without end until it is killed, and says after each save that it was acknowledged:
//   sqlite|postgresql  file|connection  page  drafts|versions
LibraryStore store = args[0] == "sqlite" ? new SqliteStore(args[1]) : new PostgreSqlStore(args[1]);
var page = long.Parse(args[2]);
var library = await DanceLibrary.OpenAsync(store);
for (var number = 1; ; number++)
{
    // A page's usual size, different every time.
    var text = $"Saved {number}\n" + string.Concat(Enumerable.Repeat($"1-4  Vine right, touch L, {number}\n", 200));
    if (args[3] == "drafts")
    {
        if (await library.Drafts.SaveAsync(page, "child", number, 1, text) is { } refusal) throw new InvalidOperationException(refusal.Why);
    }
    else if (await library.Pages.KeepAsync(page, number, text) is not Kept)
    {
        throw new InvalidOperationException("A version was not kept.");
    }

    Console.WriteLine(number);
    Console.Out.Flush();
}

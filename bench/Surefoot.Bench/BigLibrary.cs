using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using Surefoot.Library;
using Surefoot.Library.Sqlite;
using Surefoot.Tests.Library;

namespace Surefoot.Bench;

/// <summary>Ten thousand dances in one SQLite file: opening the list, searching, saving.</summary>
[SimpleJob(RunStrategy.Monitoring, warmupCount: 2, iterationCount: 10)]
public class BigLibrary
{
    private string _folder = "";
    private SqliteStore _store = null!;
    private DanceLibrary _library = null!;
    private long _page;
    private long _sequence;
    private int _version = 1;

    [GlobalSetup]
    public async Task Setup()
    {
        _folder = Directory.CreateTempSubdirectory("surefoot-bench-").FullName;
        _store = new(Path.Combine(_folder, "dances.db"));
        _library = await DanceLibrary.OpenAsync(_store);
        var notebook = (await _library.Notebooks.AddAsync("The hall")).Notebook!.Id;
        await Filling.ManyAsync(_store, notebook, 10_000);
        _page = (await _library.Pages.AddAsync(notebook, ManyDances.Page(1), "measured")).Page!.Id;
        await _library.Catalogue.SearchAsync("first");
    }

    [GlobalCleanup]
    public void Cleanup()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>As a program that has just started: opened, listed with a filter, sorted, the first fifty shown.</summary>
    [Benchmark]
    public async Task<int> OpenAndList()
    {
        using var library = await DanceLibrary.OpenAsync(_store);
        return (await library.Catalogue.ListAsync(new() { ForCouples = true, Sort = SortBy.Counts, Take = 50 })).Total;
    }

    /// <summary>The first search, which reads the words of every dance.</summary>
    [Benchmark]
    public async Task<int> OpenAndSearch()
    {
        using var library = await DanceLibrary.OpenAsync(_store);
        return (await library.Catalogue.SearchAsync("lantern bridge")).Count;
    }

    [Benchmark]
    [Arguments("lantern brigde waltz")]
    [Arguments("her turn then walks")]
    [Arguments("partner sweetheart about 112 bpm 40 counts")]
    [Arguments("vine then jazz box improver that i half rember")]
    public async Task<int> Search(string words) => (await _library.Catalogue.SearchAsync(words)).Count;

    [Benchmark]
    public Task<Refusal?> SaveDraft() => _library.Drafts.SaveAsync(_page, "bench", ++_sequence, 1, ManyDances.Page((int)_sequence % 1000));

    [Benchmark]
    public async Task<KeepResult> KeepVersion()
    {
        var result = await _library.Pages.KeepAsync(_page, _version, ManyDances.Page(_version) + "> kept\n");
        if (result is Kept kept) _version = kept.Number;
        return result;
    }
}

using Surefoot.Dance;
using Surefoot.Dance.Scoring;

namespace Surefoot.Web.Notebook;

/// <summary>What stands in the notebook, for its list: couples' dances and line dances apart.</summary>
internal sealed class Contents(INotebook notebook)
{
    private IReadOnlyList<ListedGroup>? _groups;

    /// <summary>Made once: the notebook does not change while the studio runs.</summary>
    public IReadOnlyList<ListedGroup> Groups => _groups ??= Made();

    private List<ListedGroup> Made()
    {
        var dances = new List<(bool Couples, ListedDance Dance)>();
        foreach (var name in notebook.List())
        {
            if (notebook.Read(name) is not { } text) continue;
            // Nothing in the list depends on where the couple is, so nobody solves it here.
            var score = DanceReader.Read(text, notebook.Book).Score;
            dances.Add((score.Facts.ForCouples, new(name, score.Title.Length > 0 ? score.Title : name, Says(score))));
        }

        return [.. dances.GroupBy(d => d.Couples).OrderByDescending(g => g.Key)
            .Select(g => new ListedGroup(g.Key ? "For couples" : "Line dances", [.. g.Select(d => d.Dance)]))];
    }

    // "improver, 40 counts, 4/4, 100 to 116 a minute".
    private static string Says(DanceScore score)
    {
        var facts = score.Facts;
        var said = new List<string>();
        if (facts.Level is { Length: > 0 } level) said.Add(level);
        if (facts.Walls is { } walls) said.Add(walls == 1 ? "1 wall" : $"{walls} walls");
        said.Add($"{score.Counts.Ceiling} counts");
        said.Add(facts.Meter.ToString());
        if (facts is { TempoFrom: { } from, TempoTo: { } to }) said.Add(from == to ? $"{from} a minute" : $"{from} to {to} a minute");
        return string.Join(", ", said);
    }
}

internal sealed record ListedGroup(string Name, IReadOnlyList<ListedDance> Dances);

internal sealed record ListedDance(string Name, string Title, string Says);

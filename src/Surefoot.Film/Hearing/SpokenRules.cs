namespace Surefoot.Film.Hearing;

/// <summary>What a run of words is, besides steps.</summary>
internal enum Cue
{
    Correct,
    FromBack,
    FromFront,
    FromSide,
    FromAbove,
    Lead,
    Follow,
    Both,
    Again,
    AgainOther,
    Top,
    Tally,
    Restart,
    Talk,
}

/// <summary>The rows of <c>words/spoken.rules</c>: how people talk through a dance, and what recognisers make of it.</summary>
internal sealed class SpokenRules
{
    private static readonly Lazy<SpokenRules> TheShipped = new(() => new());

    private static readonly Dictionary<string, Cue> Cues = new(StringComparer.Ordinal)
    {
        ["correct"] = Cue.Correct,
        ["from back"] = Cue.FromBack,
        ["from front"] = Cue.FromFront,
        ["from side"] = Cue.FromSide,
        ["from above"] = Cue.FromAbove,
        ["role lead"] = Cue.Lead,
        ["role follow"] = Cue.Follow,
        ["role both"] = Cue.Both,
        ["again"] = Cue.Again,
        ["again other"] = Cue.AgainOther,
        ["top"] = Cue.Top,
        ["tally"] = Cue.Tally,
        ["restart"] = Cue.Restart,
        ["talk"] = Cue.Talk,
    };

    private readonly Dictionary<string, List<(string[] Words, Cue Cue)>> _cues = new(StringComparer.Ordinal);

    private SpokenRules()
    {
        using var reader = new StreamReader(typeof(SpokenRules).Assembly.GetManifestResourceStream("spoken.rules")!);
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '>') continue;
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            Row(line[..colon], line[(colon + 1)..].Trim());
        }

        foreach (var list in _cues.Values) list.Sort((a, b) => b.Words.Length - a.Words.Length);
    }

    public static SpokenRules Shipped => TheShipped.Value;

    /// <summary>What was meant, by what is written for it.</summary>
    public Dictionary<string, string> Alike { get; } = new(StringComparer.Ordinal);

    /// <summary>The same for numbers, which are so only beside other numbers.</summary>
    public Dictionary<string, string> AlikeInCounting { get; } = new(StringComparer.Ordinal);

    public List<(string[] From, string[] To)> Phrases { get; } = [];

    public Dictionary<string, string> Keys { get; } = new(StringComparer.Ordinal);

    public HashSet<string> Headings { get; } = new(StringComparer.Ordinal);

    public HashSet<string> HeadingsAlike { get; } = new(StringComparer.Ordinal);

    public List<string> Ordinals { get; } = [];

    public HashSet<string> Hesitations { get; } = new(StringComparer.Ordinal);

    public HashSet<string> Fillers { get; } = new(StringComparer.Ordinal);

    public HashSet<string> NoCountAfter { get; } = new(StringComparer.Ordinal);

    public HashSet<string> NoCountBefore { get; } = new(StringComparer.Ordinal);

    public HashSet<string> Loose { get; } = new(StringComparer.Ordinal);

    /// <summary>Figures that are said for each other, by figure: the number of their family.</summary>
    public Dictionary<string, int> Family { get; } = new(StringComparer.Ordinal);

    /// <summary>The longest run of words at a place that means something by itself.</summary>
    public (Cue Cue, int Length)? CueAt(IReadOnlyList<Spoken> words, int at)
    {
        if (!_cues.TryGetValue(words[at].Word, out var list)) return null;
        foreach (var (says, cue) in list)
        {
            if (at + says.Length > words.Count) continue;
            var same = true;
            for (var i = 1; i < says.Length && same; i++) same = words[at + i].Word == says[i];
            if (same) return (cue, says.Length);
        }

        return null;
    }

    /// <summary>What is said without the words in it that mean no step.</summary>
    public string WithoutTalk(string said)
    {
        foreach (var (words, cue) in _cues.Values.SelectMany(c => c))
        {
            if (cue == Cue.Talk && said.Contains(words[0], StringComparison.Ordinal)) said = said.Replace(string.Join(' ', words), "", StringComparison.Ordinal);
        }

        return said;
    }

    private void Row(string kind, string value)
    {
        var all = value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (Cues.TryGetValue(kind, out var cue))
        {
            foreach (var one in all)
            {
                var words = one.Split(' ');
                if (!_cues.TryGetValue(words[0], out var list)) _cues[words[0]] = list = [];
                list.Add((words, cue));
            }
        }
        else if (kind.StartsWith("alike ", StringComparison.Ordinal)) Each(all, one => Alike.TryAdd(one, kind["alike ".Length..]));
        else if (kind.StartsWith("count ", StringComparison.Ordinal)) Each(all, one => AlikeInCounting[one] = kind["count ".Length..]);
        else if (kind.StartsWith("key ", StringComparison.Ordinal)) Each(all, one => Keys.TryAdd(one, kind["key ".Length..]));
        else if (kind == "phrase" && value.Split("=>", StringSplitOptions.TrimEntries) is [var from, var to]) Phrases.Add((from.Split(' '), to.Split(' ')));
        else if (kind == "heading") Headings.UnionWith(all);
        else if (kind == "heading alike") HeadingsAlike.UnionWith(all);
        else if (kind == "ordinal") Ordinals.AddRange(all);
        else if (kind == "hesitating") Hesitations.UnionWith(all);
        else if (kind == "filler") Fillers.UnionWith(all);
        else if (kind == "not a count after") NoCountAfter.UnionWith(all);
        else if (kind == "not a count before") NoCountBefore.UnionWith(all);
        else if (kind == "loose") Loose.UnionWith(all);
        else if (kind == "family")
        {
            var number = Family.Count;
            Each(all, one => Family.TryAdd(one, number));
        }
        else throw new FormatException($"The rules of speaking have a row that the program does not know: {kind}");
    }

    private static void Each(string[] all, Action<string> add)
    {
        foreach (var one in all) add(one);
    }
}

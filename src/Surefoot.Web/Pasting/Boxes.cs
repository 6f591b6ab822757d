using System.Globalization;
using Surefoot.Transcribe;

namespace Surefoot.Web.Pasting;

/// <summary>Where a correction holds, as its choice says it.</summary>
internal enum Holds
{
    /// <summary>At its own place.</summary>
    Here,

    /// <summary>Wherever the sheet says the same.</summary>
    All,

    /// <summary>On every sheet from now on: the hall's own word.</summary>
    Always,
}

/// <summary>The fields in which the phrases of a sheet are corrected: one for each phrase at its line, and one for what nobody understood above all lines.</summary>
internal static class Boxes
{
    /// <summary>Fields that a form of a sheet may have: two for each phrase, and the longest sheet has some 5 000 of these. Working value.</summary>
    public const int Most = 20_000;

    /// <summary>The field for what a phrase should be.</summary>
    public static string Means(int line, int phrase) => Named("means", line, phrase);

    /// <summary>The field for where that holds.</summary>
    public static string Where(int line, int phrase) => Named("where", line, phrase);

    /// <summary>The field for what an unknown phrase means, wherever it stands.</summary>
    public static string Asked(int line, int phrase) => Named("asked", line, phrase);

    /// <summary>The field for whether the hall keeps that.</summary>
    public static string AskedAlways(int line, int phrase) => Named("always", line, phrase);

    /// <summary>
    /// What of a sheet nobody understood, each once, in order, with the line and the number of the phrase there: the one
    /// unknown word of a phrase, where it has one, else the phrase.
    /// </summary>
    public static List<(int Line, int Phrase, PhraseSaid Said)> Unknown(Transcript read) =>
    [
        .. read.Lines.SelectMany(l => l.Said.Select((s, n) => (Line: l.Number, Phrase: n, Said: s, Told: !s.OneWord && n + 1 < l.Said.Count && l.Said[n + 1].OneWord)))
            .Where(p => p is { Told: false, Said: { Understood: false, WholeLine: false } })
            .DistinctBy(p => new SheetWord(p.Said.Words, "").Key).Select(p => (p.Line, p.Phrase, p.Said)),
    ];

    /// <summary>Everything that was filled in: the phrase, what it should be, where that holds, and the name of its field.</summary>
    public static IEnumerable<(PhraseSaid Said, string Means, Holds Holds, string Field)> Filled(Transcript read, IFormCollection form)
    {
        foreach (var line in read.Lines)
        {
            for (var n = 0; n < line.Said.Count; n++)
            {
                // At its own line is nearer than above all lines.
                if (Text(form, Means(line.Number, n)) is { Length: > 0 } means) yield return (line.Said[n], means, Read(Text(form, Where(line.Number, n))), Means(line.Number, n));
                else if (Text(form, Asked(line.Number, n)) is { Length: > 0 } told) yield return (line.Said[n], told, form.ContainsKey(AskedAlways(line.Number, n)) ? Holds.Always : Holds.All, Asked(line.Number, n));
            }
        }
    }

    /// <summary>What was typed and chosen in all of them.</summary>
    public static Dictionary<string, string> Typed(IFormCollection form) =>
        form.Where(f => f.Key.Contains('-') && !string.IsNullOrWhiteSpace(f.Value)).ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal);

    private static string Text(IFormCollection form, string name) => form[name].ToString().Trim();

    private static Holds Read(string chosen) => chosen switch { "all" => Holds.All, "always" => Holds.Always, _ => Holds.Here };

    private static string Named(string what, int line, int phrase) => string.Create(CultureInfo.InvariantCulture, $"{what}-{line}-{phrase}");
}

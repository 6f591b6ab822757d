using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"IN three &amp; kick" with "IN = L R L kick R." further down: a prompt by its name, and what the name stands for.</summary>
internal static class NamesExplained
{
    private static readonly Regex Explains = new(@"(?<=^|[.;]\s+)(?<name>\p{Lu}{2,}(?: \p{Lu}{2,})?)\s*=\s*(?<steps>[^.;=]+)", RegexOptions.CultureInvariant);

    private static readonly Regex Feet = new(@"^(?:L|R|left|right)(?:[ ,-]+(?:L|R|left|right)\b)+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Foot = new(@"\b(?:L|R|left|right)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "L R L kick R": what is done with the last of them is a step of its own.
    private static readonly Regex AfterFeet = new(@"(?<=\b(?:L|R|left|right)) (?=\p{L}{3,}\b)(?!left\b|right\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Puts what a name stands for where a line begins with it.</summary>
    /// <returns>The lines that only explain.</returns>
    public static IReadOnlySet<int> In(List<SheetLine> lines)
    {
        var explain = new HashSet<int>();
        foreach (var line in lines.ToList())
        {
            foreach (Match told in Explains.Matches(line.Plain))
            {
                var steps = told.Groups["steps"].Value.Trim();
                var name = told.Groups["name"].Value;
                // All that the prompt says up to a row of dots, a bracket or its end is said again by the steps.
                var prompt = new Regex($@"^{Regex.Escape(name)}\b(?!\s*=)[^.()\[]*?(?=\s*(?:\.{{2,}}|[(\[]|\.?$))", RegexOptions.CultureInvariant);
                if (Foot.Count(steps) < 2 || !lines.Exists(l => prompt.IsMatch(l.Plain))) continue;
                var said = (Feet.IsMatch(steps) ? Way(name) : "") + AfterFeet.Replace(steps, ", ");
                for (var i = 0; i < lines.Count; i++)
                {
                    if (lines[i].Number != line.Number) lines[i] = lines[i] with { Plain = prompt.Replace(lines[i].Plain, said) };
                }

                explain.Add(line.Number);
            }
        }

        return explain;
    }

    // In a ring one goes in forward and comes out backward.
    private static string Way(string name) => name switch
    {
        "IN" => "walk forward ",
        "OUT" => "walk back ",
        _ => "",
    };
}

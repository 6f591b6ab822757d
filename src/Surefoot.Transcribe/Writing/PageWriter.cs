using System.Text;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Choosing;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Writing;

/// <summary>Writes the page, and remembers which line of the sheet each of its lines came from.</summary>
internal sealed class PageWriter
{
    private readonly StringBuilder _page = new();
    private readonly List<int> _from = [];

    /// <summary>For each line of the page, and the empty end, the number of the sheet's line it came from, or 0.</summary>
    public IReadOnlyList<int> From => [.. _from, 0];

    public string Text => _page.ToString();

    public void Write(SheetPlan plan, SheetFacts facts, FeetChosen feet, List<DraftPart> parts, bool same, IEnumerable<SheetLine> notes)
    {
        Line(plan.Title.Length > 0 ? plan.Title : "A dance without a name");
        if (facts.Couple) Line("Kind: partner, circle");
        else if (facts.Circle && facts.Walls is null) Line("Kind: circle, no partner");
        else Line(facts.Walls is { } walls ? $"Kind: line, {walls} wall{(walls == 1 ? "" : "s")}" : "Kind: line");
        if (facts.Meter is { } meter) Line($"Meter: {meter}");
        if (facts.Tempo is { } tempo) Line($"Tempo: {tempo}");
        if (facts.Hold is { } hold) Line($"Hold: {hold}");
        if (facts.Facing is { } facing) Line($"Facing: {facing}");
        Line(!facts.Couple ? $"Feet: {Named(feet.Lead)} free" : same ? $"Feet: same, {Named(feet.Lead)} free" : $"Feet: opposite, lead {Named(feet.Lead)} free");
        if (facts.Level is { } level) Line($"Level: {level}");
        if (facts.Counts is { } counts) Line($"Counts: {counts}");
        if (facts.Order is { } order && parts.Count > 1 && order.Split(' ').Distinct().All(letter => parts.Exists(p => p.Heading.StartsWith($"Part {letter}", StringComparison.Ordinal) && !p.Heading.StartsWith($"Part {letter}1", StringComparison.Ordinal)))) Line($"Order: {order}");
        foreach (var part in parts) Write(part, parts.Count > 1);
        var first = true;
        foreach (var note in notes)
        {
            if (first) Line("");
            first = false;
            Line($"> {note.Plain}", note);
        }
    }

    private void Write(DraftPart part, bool several)
    {
        Line("");
        if (part.Heading.Length > 0 || several)
        {
            var stated = part.StatedCounts is { } counts ? $"  ({counts} counts)" : "";
            _parts++;
            Line((part.Heading.Length > 0 ? part.Heading : $"Part {_parts}") + stated);
        }

        var roles = part.Lines.Exists(l => l.Role is not null);
        Role? block = null;
        foreach (var line in roles ? InBlocks(part.Lines) : part.Lines)
        {
            if (line.Role != block)
            {
                Line(line.Role switch { Role.Lead => "Lead:", Role.Follow => "Follow:", _ => "Both:" });
                block = line.Role;
            }

            Line($"{line.Counts.Name,-6} {Words(line)}", line.From);
        }
    }

    // His lines, what both dance, then hers; where both begin, they come in the order of their counts, so that the part begins where it begins.
    private static IEnumerable<DraftLine> InBlocks(List<DraftLine> lines)
    {
        var both = lines.FindAll(l => l.Role is null);
        var bothFirst = both.Count > 0 && both.Min(l => l.Counts.From) < lines.Where(l => l.Role is not null).Min(l => l.Counts.From);
        return lines.OrderBy(l => l.Role is Role.Follow ? 1 : 0).ThenBy(l => l.Role is null || bothFirst ? l.Counts.From : 0);
    }

    private int _parts;

    private static string Words(DraftLine line)
    {
        var words = new StringBuilder();
        foreach (var phrase in line.Phrases)
        {
            if (phrase.Text.Length > 0)
            {
                if (words.Length > 0) words.Append(", ");
                // "1&2&   3 steps" would be counts that go on.
                var text = words.Length == 0 && LeadingDigit.Match(phrase.Text) is { Success: true } digit ? NumberWords.Spell(digit.Value[0] - '0') + phrase.Text[1..] : phrase.Text;
                words.Append(words.Length == 0 ? char.ToUpperInvariant(text[0]) + text[1..] : text);
                if (phrase.Unknown.Count > 0) words.Append(" (").Append(Kept(phrase.Said)).Append(')');
            }
            else if (phrase.Said.Length > 0)
            {
                words.Append(words.Length > 0 ? " (" : "(").Append(Kept(phrase.Said)).Append(')');
            }
        }

        return words.ToString();
    }

    // In brackets it is a note, as long as it has none of its own.
    private static string Kept(string said) => "\"" + said.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).Replace("\"", "", StringComparison.Ordinal) + "\"";

    private static readonly Regex LeadingDigit = new(@"^[1-8](?= \p{L})", RegexOptions.CultureInvariant);

    private static string Named(Foot foot) => foot == Foot.Left ? "left" : "right";

    private void Line(string text, SheetLine? from = null)
    {
        _page.Append(text).Append('\n');
        _from.Add(from?.Number ?? 0);
    }
}

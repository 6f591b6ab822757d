using Surefoot.Dance.Basics;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>How steps without a figure's name are called, from the file words/calls.words.</summary>
internal sealed class CallBook
{
    private static readonly Lazy<CallBook> TheShipped = new(() => new(ShippedText.Read("words/calls.words")));

    private readonly Dictionary<string, string> _turns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _ways = new(StringComparer.Ordinal);

    private CallBook(string text)
    {
        var patterns = new List<CallPattern>();
        foreach (var raw in text.Split('\n'))
        {
            var line = raw.Trim();
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0 || line[0] == '>') continue;
            var (kind, rest) = (line[..colon], line[(colon + 1)..].Trim());
            var arrow = rest.IndexOf("=>", StringComparison.Ordinal);
            var (left, right) = arrow < 0 ? ("", rest) : (rest[..arrow].Trim(), rest[(arrow + 2)..].Trim());
            switch (kind)
            {
                case "steps":
                    patterns.Add(new(left.Split(',', StringSplitOptions.TrimEntries).ToValueList(), right));
                    break;
                case "turning":
                    Turning = right;
                    break;
                case "turning steps":
                    TurningSteps = right;
                    break;
                case "turn":
                    _turns[left] = right;
                    break;
                case "way":
                    _ways[left] = right;
                    break;
                case "restart":
                    Restart = right;
                    break;
                default:
                    throw new FormatException($"The file of calls has a row that the program does not know: {kind}");
            }
        }

        Patterns = [.. patterns.Select((p, i) => (p, i)).OrderByDescending(x => x.p.Steps.Count).ThenBy(x => x.i).Select(x => x.p)];
    }

    public static CallBook Shipped => TheShipped.Value;

    /// <summary>The longest first.</summary>
    public IReadOnlyList<CallPattern> Patterns { get; }

    /// <summary>How one step that turns and is no figure is called.</summary>
    public string Turning { get; } = "";

    /// <summary>How several steps that turn together are called.</summary>
    public string TurningSteps { get; } = "";

    public string Restart { get; } = "";

    /// <summary>The word for an amount of turning in eighths, or nothing.</summary>
    public string TurnWord(int eighths) => _turns.GetValueOrDefault($"{Math.Abs(eighths)}", "");

    /// <summary>The word for a way, or nothing where it is not called.</summary>
    public string WayWord(string way) => _ways.GetValueOrDefault(way, "");
}

/// <summary>Actions that follow each other, each as <see cref="CallPattern.KeyOf"/> writes it or "kind *" for any way, and what is called for them.</summary>
internal sealed record CallPattern(ValueList<string> Steps, string Words)
{
    public bool Fits(IReadOnlyList<string> keys, int at)
    {
        if (at + Steps.Count > keys.Count) return false;
        for (var i = 0; i < Steps.Count; i++)
        {
            var (pattern, key) = (Steps[i], keys[at + i]);
            if (pattern.EndsWith(" *", StringComparison.Ordinal) ? !(key == pattern[..^2] || key.StartsWith(pattern[..^1], StringComparison.Ordinal)) : key != pattern) return false;
        }

        return true;
    }

    /// <summary>"rock forward", "recover", "step together": the action without foot and turn.</summary>
    public static string KeyOf(Steps.ScoreStep step)
    {
        var word = Dance.Steps.ActionKinds.Word(step.Kind);
        var direction = Dance.Steps.Directions.Word(step.Direction);
        if (step.Kind == Dance.Steps.ActionKind.Step) return $"{word} {direction}";
        return step.Direction == Dance.Steps.Direction.InPlace || step.Kind is Dance.Steps.ActionKind.Recover or Dance.Steps.ActionKind.Drop or Dance.Steps.ActionKind.Hold or Dance.Steps.ActionKind.Pivot or Dance.Steps.ActionKind.Turn
            ? word
            : $"{word} {direction}";
    }
}

using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>What somebody would say who is asked "what kind of dance is it?", in a few sentences.</summary>
internal static class OpeningWords
{
    public static string Of(DanceScore score, SheetOptions options, RoleNames names)
    {
        var sentences = new[]
        {
            Size(score, options.Only, names), Music(score.Facts), Start(score, options.Only, names), Round(score), Names(score.Facts),
        };
        return string.Join(' ', sentences.Where(s => s.Length > 0));
    }

    private static string Size(DanceScore score, Role? only, RoleNames names)
    {
        var parts = score.Parts.Count(p => p.Kind == PartKind.Part);
        var inParts = parts > 1 ? $" in {Numbers.Spelled(parts)} parts" : "";
        return $"{KindOf(score.Facts)}: {Numbers.Counts(score.Counts.Ceiling)}{inParts}{ToLearn(score, only, names)}.";
    }

    private static string KindOf(DanceFacts facts) => (facts.ForCouples, facts.Floor) switch
    {
        (true, Floor.Track) => "A circle dance for couples",
        (true, _) => "A dance for couples that is told by the walls of the room",
        (false, Floor.Track) => "A dance round the room, each for themselves",
        _ when facts.Walls is { } walls => $"A line dance on {Numbers.Spelled(walls)} wall{(walls == 1 ? "" : "s")}",
        _ => "A line dance",
    };

    private static string ToLearn(DanceScore score, Role? only, RoleNames names)
    {
        var loads = score.Roles.Where(r => only is null || !score.Facts.ForCouples || r.Role == only)
            .Select(r => LearningLoad.Of(score, r.Role)).ToList();
        if (loads.Count == 0 || loads.TrueForAll(l => l.New >= l.Counts)) return "";
        if (loads.Count == 2 && loads[0].New != loads[1].New)
        {
            return $", of which {names.The(loads[0].Role)} learns {loads[0].New} and {names.The(loads[1].Role)} {loads[1].New}";
        }

        var mirrored = loads[0].Mirrored > 0
            ? $" and {loads[0].Mirrored} {(loads[0].Mirrored == 1 ? "is" : "are")} the same begun on the other foot"
            : "";
        return $", of which {loads[0].New} {(loads[0].New == 1 ? "is" : "are")} to learn{mirrored}";
    }

    private static string Music(DanceFacts facts)
    {
        var songs = facts.Music is { Length: > 0 } music ? " " + Phrases.Sentence($"It is danced to {music.Trim()}") : "";
        var tempo = (facts.TempoFrom, facts.TempoTo) switch
        {
            ({ } from, { } to) when from != to => $"{from} to {to} beats a minute",
            ({ } from, _) => $"{from} beats a minute",
            (null, { } to) => $"up to {to} beats a minute",
            _ => "",
        };
        var at = tempo.Length == 0 ? "" : $" at {tempo}";
        return facts.Level is { Length: > 0 } level
            ? $"It is {Phrases.Article(level)} {level} dance in {facts.Meter}{at}.{songs}"
            : $"The music is in {facts.Meter}{at}.{songs}";
    }

    private static string Start(DanceScore score, Role? only, RoleNames names)
    {
        var starts = score.Roles.Where(r => only is null || !score.Facts.ForCouples || r.Role == only)
            .Select(r => r.Start with { Role = r.Role }).ToList();
        if (starts.Count == 0) return "";
        var standing = Standing.Words(starts, score.Facts.Floor, names, full: true);
        var hold = score.Facts.ForCouples && score.Facts.Hold is { Length: > 0 } name ? HoldPhrases.In(name) + ", " : "";
        var (wait, before) = Wait(score.Facts.Intro ?? score.Parts.FirstOrDefault(SheetPlan.IsOnlySaid)?.Name);
        return $"{before}{(wait.Length > 0 ? $"{wait}, then start" : "Start")} {hold}{standing}.";
    }

    /// <summary>What to do until the dance begins, or a sentence in front where the page says more than a number.</summary>
    private static (string Wait, string Before) Wait(string? intro)
    {
        if (intro?.Trim().TrimEnd('.') is not { Length: > 0 } said) return ("", "");
        var number = said.Split(' ')[0];
        var rest = said[number.Length..].Trim();
        var plain = rest.Length == 0 || rest is "count" or "counts" or "beat" or "beats";
        if (plain && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var counts))
        {
            return counts == 0 ? ("", "") : ($"Wait {Numbers.Counts(counts)}", "");
        }

        return ("", Phrases.Sentence($"Introduction: {said}") + " ");
    }

    /// <summary>How a line dance goes round its walls; nothing where each repeat ends as it began.</summary>
    private static string Round(DanceScore score)
    {
        if (score.Facts.ForCouples || score.Facts.Floor != Floor.Walls || score.Roles.Count == 0) return "";
        var role = score.Roles[0];
        var turned = role.End.Facing - role.Start.Facing;
        if (turned.IsNone) return "";
        return Math.Abs(turned.Eighths) == 4
            ? "Every repeat begins on the opposite wall."
            : $"Every repeat begins a {Turn.AmountName(Math.Abs(turned.Eighths))} turn further to the {(turned.Eighths > 0 ? "left" : "right")}.";
    }

    private static string Names(DanceFacts facts) =>
        facts.OtherNames.Count == 0 ? "" : $"Also known as {Phrases.And([.. facts.OtherNames])}.";
}

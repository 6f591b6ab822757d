using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Writing;

namespace Surefoot.Transcribe.Choosing;

/// <summary>How the feet of the whole dance come out best.</summary>
/// <param name="Lead">The foot that is free for the lead, or for everybody where nobody leads.</param>
/// <param name="Tie">True when another reading is as good.</param>
internal sealed record FeetChosen(Foot Lead, Foot? Follow, bool Tie)
{
    /// <summary>What was changed against the words, and where feet still clash.</summary>
    public double Cost { get; init; }

    private const double AsGood = 0.25;

    private const string Everybodys = "feet named here are taken for both dancers";

    private const string HisFeet = "feet named here are the lead's, and the follow's are the other ones";

    /// <summary>What a foot that is named for both costs where partners otherwise use opposite ones, and every further one of the line: less than any step on a foot that is not free.</summary>
    private const double BothTheSame = 3, StillTheSame = 0.1;

    private static readonly Regex Own = new(@"\bown (?:left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Chooses, and writes what was chosen into the lines.</summary>
    /// <param name="told">True where the sheet itself says who uses which foot.</param>
    public static FeetChosen In(List<DraftPart> parts, FootTrial trial, SheetFacts facts, bool opposite, bool told)
    {
        var walk = new Walk(trial);
        var roles = parts.Exists(p => p.Lines.Exists(l => l.Role is not null));
        var lead = One(parts, walk, roles ? Role.Lead : null, facts.LeadFree, mirrored: false, maybeSame: false, !facts.Couple);
        if (!parts.Exists(p => p.Lines.Exists(l => l.Role == Role.Follow))) return new(lead.Free, null, AsGoodElsewhere(lead)) { Cost = lead.Cost };
        // Where the sheet says whether they use the same feet, a slip in her lines does not say otherwise.
        Foot? hers = facts.SameFeet is { } said ? said ? lead.Free : lead.Free == Foot.Left ? Foot.Right : Foot.Left : null;
        var follow = One(parts, walk, Role.Follow, hers, mirrored: opposite, maybeSame: !told, alone: false);
        return new(lead.Free, follow.Free, AsGoodElsewhere(lead) || AsGoodElsewhere(follow)) { Cost = lead.Cost + follow.Cost };
    }

    private static bool AsGoodElsewhere(WalkChoice choice) => choice.Cost > Walk.Unforced && choice.Second - choice.Cost < AsGood;

    private static WalkChoice One(List<DraftPart> parts, Walk walk, Role? role, Foot? start, bool mirrored, bool maybeSame, bool alone)
    {
        var places = new List<(DraftLine Line, int Phrase)>();
        var phrases = new List<WalkPhrase>();
        foreach (var line in parts.SelectMany(p => InOrder(p.Lines.FindAll(l => role is null || l.Role is null || l.Role == role))))
        {
            var several = line.Phrases.Count(p => p.Text.Length > 0) > 1;
            for (var i = 0; i < line.Phrases.Count; i++)
            {
                if (line.Phrases[i].Text.Length == 0) continue;
                var text = line.Phrases[i].Text;
                places.Add((line, i));
                var hers = mirrored && line.Role is null ? Alternatives.Mirrored(text) : text;
                // "To your own right from R": here the foot that is named is everybody's.
                var everybodys = hers != text && Own.IsMatch(line.Phrases[i].Said);
                phrases.Add(new(everybodys ? text : hers, several ? null : line.Counts, line.Phrases[i].Told)
                {
                    Besides = maybeSame && hers != text && !everybodys ? [new(text, line.Phrases.Take(i).Any(p => Alternatives.Mirrored(p.Text) != p.Text) ? StillTheSame : BothTheSame, Everybodys)] : [],
                });
            }
        }

        var choice = walk.Of(phrases, start, alone || role == Role.Follow ? Foot.Right : Foot.Left, alone);
        // Where they do not come out for her, what is said of both may name her own feet.
        var unsure = role == Role.Follow && places.Where((at, p) => at.Line.Role is null && choice.Clashes[p] > 0).Any();
        var apart = mirrored && role == Role.Follow ? Apart(places, choice) : [];
        for (var p = 0; p < places.Count; p++)
        {
            var (line, i) = places[p];
            if (apart.Contains(line)) continue;
            // What is danced by both is written once, as the lead dances it.
            if (role == Role.Follow && line.Role is null)
            {
                line.Phrases[i] = line.Phrases[i] with { Clashes = Math.Max(line.Phrases[i].Clashes, choice.Clashes[p]) };
                if (unsure && mirrored && !line.Assumed.Contains(HisFeet)) line.Assumed.Add(HisFeet);
                continue;
            }

            var chosen = choice.Chosen[p];
            line.Phrases[i] = line.Phrases[i] with { Text = chosen.Text, Clashes = choice.Clashes[p] };
            if (chosen.Says is { } says) line.Assumed.Add($"\"{(line.Phrases[i].Said.Length > 0 ? line.Phrases[i].Said : chosen.Text)}\" is {says}");
        }

        foreach (var part in parts) Split(part, places, choice, apart);
        return choice;
    }

    // Hers may be told after all of his: what she dances comes in the order of its counts, where these follow each other.
    private static List<DraftLine> InOrder(List<DraftLine> lines)
    {
        var ordered = lines.OrderBy(l => l.Counts.From).ToList();
        return ordered.Zip(ordered.Skip(1)).All(p => p.Second.Counts.From == p.First.Counts.To + 1) ? ordered : lines;
    }

    // Lines for both on which a foot that is named is the same for both, and all after them as long as their feet stay so.
    private static HashSet<DraftLine> Apart(List<(DraftLine Line, int Phrase)> places, WalkChoice choice)
    {
        var (apart, opposite) = (new HashSet<DraftLine>(ReferenceEqualityComparer.Instance), new HashSet<DraftLine>(ReferenceEqualityComparer.Instance));
        for (var p = 0; p < places.Count; p++)
        {
            var (line, i) = places[p];
            var said = line.Phrases[i].Text;
            if (line.Role is not null || Alternatives.Mirrored(said) == said) continue;
            var everybodys = choice.Chosen[p].Says == Everybodys || (choice.Chosen[p].Text == said && Own.IsMatch(line.Phrases[i].Said));
            (everybodys ? apart : opposite).Add(line);
        }

        // Nobody changes over within a line.
        apart.ExceptWith(opposite);
        return apart;
    }

    // What both dance, and not from opposite feet, is written once for each.
    private static void Split(DraftPart part, List<(DraftLine Line, int Phrase)> places, WalkChoice choice, HashSet<DraftLine> apart)
    {
        for (var at = part.Lines.Count - 1; at >= 0; at--)
        {
            var line = part.Lines[at];
            if (!apart.Contains(line)) continue;
            var hers = line with { Role = Role.Follow, Phrases = [.. line.Phrases] };
            for (var p = 0; p < places.Count; p++)
            {
                if (ReferenceEquals(places[p].Line, line)) hers.Phrases[places[p].Phrase] = hers.Phrases[places[p].Phrase] with { Text = choice.Chosen[p].Text, Clashes = choice.Clashes[p] };
            }

            var his = line with { Role = Role.Lead };
            his.Assumed.Add(Everybodys);
            part.Lines[at] = his;
            part.Lines.Insert(at + 1, hers);
        }
    }
}

using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Writing;

namespace Surefoot.Transcribe.Choosing;

/// <summary>How the feet of the whole dance come out best.</summary>
/// <param name="Lead">The foot that is free for the lead, or for everybody where nobody leads.</param>
/// <param name="Tie">True when another reading is as good.</param>
internal sealed record FeetChosen(Foot Lead, Foot? Follow, bool Tie)
{
    private const double AsGood = 0.25;

    private const string HisFeet = "feet named here are the lead's, and the follow's are the other ones";

    /// <summary>Chooses, and writes what was chosen into the lines.</summary>
    public static FeetChosen In(List<DraftPart> parts, FootTrial trial, SheetFacts facts, bool opposite)
    {
        var walk = new Walk(trial);
        var roles = parts.Exists(p => p.Lines.Exists(l => l.Role is not null));
        var lead = One(parts, walk, roles ? Role.Lead : null, facts.LeadFree, mirrored: false, !facts.Couple);
        if (!parts.Exists(p => p.Lines.Exists(l => l.Role == Role.Follow))) return new(lead.Free, null, AsGoodElsewhere(lead));
        // Where the sheet says whether they use the same feet, a slip in her lines does not say otherwise.
        Foot? hers = facts.SameFeet is { } said ? said ? lead.Free : lead.Free == Foot.Left ? Foot.Right : Foot.Left : null;
        var follow = One(parts, walk, Role.Follow, hers, mirrored: opposite, alone: false);
        return new(lead.Free, follow.Free, AsGoodElsewhere(lead) || AsGoodElsewhere(follow));
    }

    private static bool AsGoodElsewhere(WalkChoice choice) => choice.Cost > Walk.Unforced && choice.Second - choice.Cost < AsGood;

    private static WalkChoice One(List<DraftPart> parts, Walk walk, Role? role, Foot? start, bool mirrored, bool alone)
    {
        var places = new List<(DraftLine Line, int Phrase)>();
        var phrases = new List<WalkPhrase>();
        foreach (var line in parts.SelectMany(p => p.Lines))
        {
            if (role is not null && line.Role is { } own && own != role) continue;
            var several = line.Phrases.Count(p => p.Text.Length > 0) > 1;
            for (var i = 0; i < line.Phrases.Count; i++)
            {
                if (line.Phrases[i].Text.Length == 0) continue;
                var text = line.Phrases[i].Text;
                places.Add((line, i));
                phrases.Add(new(mirrored && line.Role is null ? Alternatives.Mirrored(text) : text, several ? null : line.Counts, line.Phrases[i].Told));
            }
        }

        var choice = walk.Of(phrases, start, alone || role == Role.Follow ? Foot.Right : Foot.Left, alone);
        // Where they do not come out for her, what is said of both may name her own feet.
        var unsure = role == Role.Follow && places.Where((at, p) => at.Line.Role is null && choice.Clashes[p] > 0).Any();
        for (var p = 0; p < places.Count; p++)
        {
            var (line, i) = places[p];
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

        return choice;
    }
}

using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>A step from which the weight comes back at once is a rock, whatever the sheet calls it.</summary>
internal static class RocksBefore
{
    private static readonly Regex Step = new(@"\b(?:steps?|stepping)\b\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Rock = new(@"^rocks? (?<way>forward|back)(?: (?<foot>L|R))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Again = new(@"\brocks?\b\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Recovers = new(@"^(?:slow )?recover", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Slow = new("^slow ", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<DraftPart> parts, PhraseWords words)
    {
        foreach (var part in parts)
        {
            foreach (var role in (Role[])[Role.Lead, Role.Follow])
            {
                (DraftLine Line, int At)? before = null;
                foreach (var line in part.Lines)
                {
                    if (line.Role is { } own && own != role) continue;
                    for (var i = 0; i < line.Phrases.Count; i++)
                    {
                        var text = line.Phrases[i].Text;
                        if (text.Length == 0) continue;
                        if (Recovers.IsMatch(text) && before is var (was, at)
                            && words.Page(was.Phrases[at].Text).Moves is [{ Verb: ActionKind.Step, Figure: null, OnlyTurn: false, Way: Direction.Forward or Direction.Back or Direction.Side or Direction.DiagonalForward or Direction.DiagonalBack }])
                        {
                            was.Phrases[at] = was.Phrases[at] with { Text = Slow.IsMatch(was.Phrases[at].Text) ? "slow rock " + Slow.Replace(Step.Replace(was.Phrases[at].Text, ""), "") : "rock " + Step.Replace(was.Phrases[at].Text, "") };
                        }

                        // "Left foot forward, rock back on the right": that is the weight coming back, and no second rock.
                        if (Rock.Match(text) is { Success: true } rock && before is var (step, place)
                            && words.Page(step.Phrases[place].Text).Moves is [{ Verb: ActionKind.Step or ActionKind.Rock, Figure: null, Way: Direction.Forward or Direction.Back } first]
                            && (first.Way == Direction.Forward) == rock.Groups["way"].Value.Equals("back", StringComparison.OrdinalIgnoreCase))
                        {
                            step.Phrases[place] = step.Phrases[place] with { Text = "rock " + Step.Replace(Again.Replace(step.Phrases[place].Text, ""), "") };
                            line.Phrases[i] = line.Phrases[i] with { Text = $"recover {rock.Groups["foot"].Value}".TrimEnd() };
                        }

                        before = (line, i);
                    }
                }
            }
        }
    }
}

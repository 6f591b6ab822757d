using System.Text;

namespace Surefoot.Bench;

/// <summary>
/// As many made-up dances as a measurement wants, in families as halls have them: some stand alone, most have a few
/// versions with other names, other eights, other counts, another first foot or another order of their parts. The same
/// on every run.
/// </summary>
internal sealed class Families(int seed)
{
    private static readonly string[] Twos =
    [
        "{1}-{2}  Rock forward {a}, recover {b}", "{1}-{2}  Rock back {a}, recover {b}", "{1}-{2}  Rock {a} to the side, recover {b}",
        "{1}-{2}  Walk forward {a}, walk forward {b}", "{1}-{2}  Walk back {a}, walk back {b}", "{1}-{2}  Step {a} to the side, step {b} together",
        "{1}-{2}  Step {a} behind {b}, step {b} to the side", "{1}-{2}  Cross {a} over {b}, step {b} to the side", "{1}-{2}  Step forward {a}, pivot ½ {bw}",
        "{1}-{2}  Step forward {a}, pivot ¼ {bw}", "{1}-{2}  Stomp {a}, stomp {b}", "{1}-{2}  Step {a} in place, step {b} in place",
        "{1}-{2}  ½ turn {bw} stepping {a} back, step {b} back", "{1}-{2}  ¼ turn {aw} stepping {a} forward, step {b} forward", "{1}-{2}  Step back {a}, step {b} together",
        "{1}-{2}  Cross rock {a} over {b}, recover {b}", "{1}-{2}  Stomp {a} forward, step {b} together", "{1}-{2}  Sway {aw}, sway {bw}", "{1}-{2}  Run forward {a}, run forward {b}",
        "{1}-{2}  Step {a} diagonal forward, lock {b} behind", "{1}-{2}  Step {a} diagonal back, lock {b} in front", "{1}-{2}  ¼ turn {bw} stepping {a} back, step {b} to the side",
        "{1}-{2}  Cross {a} behind {b}, ¼ turn {bw} stepping {b} forward", "{1}&{2}  Step forward {a}, step {b} together, hold", "{1}-{2}  Step {a} in place, ½ turn {aw} stepping {b} back",
        "{1}-{2}  Lead: walk forward {a}, walk forward {b}. Follow: ½ turn {aw} stepping {a} back, ½ turn {aw} stepping {b} forward",
        "{1}-{2}  Lead: rock forward {a}, recover {b}. Follow: rock back {a}, recover {b}", "{1}-{2}  Lead: step {a} in place, step {b} in place. Follow: full turn {aw} {a}, {b}",
        "{1}-{2}  Lead: walk back {a}, walk back {b}. Follow: walk forward {a}, walk forward {b}", "{1}-{2}  Lead: step {a} to the side, step {b} together. Follow: cross {a} over {b}, step {b} to the side",
        "{1}-{2}  Lead: step back {a}, step {b} together. Follow: ¼ turn {aw} stepping {a} forward, ¼ turn {aw} stepping {b} to the side",
    ];

    // These end on the foot they began with, so that the other one goes on.
    private static readonly string[] Odd =
    [
        "{1}&{2}  Shuffle forward {a} {b} {a}", "{1}&{2}  Shuffle back {a} {b} {a}", "{1}&{2}  Coaster step {a}", "{1}&{2}  Sailor step {a}", "{1}&{2}  Chassé {aw}",
        "{1}-{2}  Step {a} to the side, touch {b} together", "{1}-{2}  Step forward {a}, scuff {b}", "{1}-{2}  Step forward {a}, kick {b} forward", "{1}-{2}  Step back {a}, hook {b}",
        "{1}-{2}  Step {a} to the side, hold", "{1}-{2}  Cross {a} over {b}, point {b} to the side", "{1}-{2}  Step forward {a}, touch {b} heel forward",
        "{1}&{2}  Triple step in place {a} {b} {a}", "{1}&{2}  Cross shuffle {a} {b} {a}", "{1}&{2}  Kick {b}, step {b} together, step {a} forward", "{1}&{2}  Triple half turn {aw} {a} {b} {a}", "{1}&{2}  Mambo forward {a}", "{1}&{2}  Mambo back {a}",
        "{1}-{2}  Step {a} to the side, drag {b} together", "{1}-{2}  ¼ turn {aw} stepping {a} forward, brush {b}", "{1}-{2}  ½ turn {bw} stepping {a} back, hitch {b}", "{1}-{2}  Step {a} in place, clap", "{1}-{2}  Step back {a}, touch {b} toe back",
        "{1}-{2}  Touch {a} heel forward, step {a} together", "{1}-{2}  Touch {a} toe to the side, step {a} together", "{1}-{2}  Step {a} forward, stomp up {b}", "{1}-{2}  Step {a} to the side, flick {b}", "{1}-{2}  Step {a} behind {b}, sweep {b}",
        "{1}&{2}  Lead: shuffle forward {a} {b} {a}. Follow: triple half turn {aw} {a} {b} {a}", "{1}&{2}  Lead: shuffle back {a} {b} {a}. Follow: shuffle forward {a} {b} {a}", "{1}&{2}  Lead: triple step in place {a} {b} {a}. Follow: shuffle forward {a} {b} {a}",
    ];

    private static readonly string[] First = ["Amber", "Barley", "Cedar", "Dusty", "Ember", "Fiddle", "Gravel", "Harvest", "Indigo", "Juniper"];

    private static readonly string[] Second = ["Bridge", "Corner", "Ditch", "Evening", "Ferry", "Gate", "Hollow", "Island", "Junction", "Kitchen"];

    private readonly Dice _chance = new((ulong)seed);

    // Eights that everybody knows: a third of all are from these.
    private List<Eight>? _common;

    /// <summary>Pages, family after family.</summary>
    public IEnumerable<string> Pages()
    {
        _common = [.. Enumerable.Range(0, 60).Select(_ => Fresh())];
        for (var number = 0; ;)
        {
            var first = new Dance(_chance.Next(3) > 0, [.. Enumerable.Range(0, _chance.Next(2, 9)).Select(_ => AnEight())], false);
            yield return Page(first, number++);
            // Half of all families are one dance; the others have three more at the mean.
            for (var more = _chance.Next(2) == 0 ? 0 : _chance.Next(1, 6); more > 0; more--) yield return Page(Version(first), number++);
        }
    }

    private Dance Version(Dance dance)
    {
        var eights = dance.Eights.ToList();
        for (var edits = _chance.Next(0, 4); edits > 0; edits--)
        {
            var at = _chance.Next(eights.Count);
            switch (_chance.Next(6))
            {
                case 0: eights[at] = AnEight(); break;
                case 1: eights.Insert(at, AnEight()); break;
                case 2 when eights.Count > 2: eights.RemoveAt(at); break;
                case 3: eights.Reverse(0, Math.Min(2, eights.Count)); break;
                default: eights[at] = eights[at].With(_chance.Next(4), _chance); break;
            }
        }

        return dance with { Eights = eights, Right = _chance.Next(4) == 0 ? !dance.Right : dance.Right };
    }

    private Eight AnEight() => _chance.Next(3) == 0 ? _common![_chance.Next(_common.Count)] : Fresh();

    // Some figures are danced everywhere and others hardly ever.
    private static int Common(int kinds, Dice chance) => (int)(kinds * Math.Pow(chance.NextDouble(), 1.5));

    // Two of the four halves end on the other foot, or none does: so that an eight ends ready for the next.
    private Eight Fresh()
    {
        var odd = _chance.Next(3) == 0 ? 0b0000 : _chance.Next(2) == 0 ? 0b1010 : 0b0110;
        return new([.. Enumerable.Range(0, 4).Select(i => (odd >> i) % 2 == 0 ? Common(Twos.Length, _chance) : ~Common(Odd.Length, _chance))]);
    }

    private static string Page(Dance dance, int number)
    {
        var page = new StringBuilder($"{First[number % 10]} {Second[number / 10 % 10]} {number / 100}\nKind: {(dance.Couple ? "partner, circle" : "line")}\n");
        if (dance.Couple) page.Append("Hold: sweetheart\nFacing: line of dance\n");
        page.Append($"Feet: {(dance.Couple ? "same, " : "")}{(dance.Right ? "right" : "left")} free\nPhrase: any\n");
        for (var part = 0; part < dance.Eights.Count; part++)
        {
            page.Append($"\nPart {part + 1}  (8 counts)\n");
            var right = dance.Right;
            for (var half = 0; half < 4; half++)
            {
                var line = dance.Eights[part].Lines[half];
                var words = line >= 0 ? Twos[line] : Odd[~line];
                page.Append(words.Replace("{1}", $"{(half * 2) + 1}").Replace("{2}", $"{(half * 2) + 2}")
                    .Replace("{a}", right ? "R" : "L").Replace("{b}", right ? "L" : "R").Replace("{aw}", right ? "right" : "left").Replace("{bw}", right ? "left" : "right")).Append('\n');
                if (line < 0) right = !right;
            }
        }

        return page.ToString();
    }

    private sealed record Dance(bool Couple, List<Eight> Eights, bool Right);

    /// <summary>Four lines of two counts; below nothing those that end on their first foot.</summary>
    private sealed record Eight(int[] Lines)
    {
        public Eight With(int at, Dice chance)
        {
            var lines = (int[])Lines.Clone();
            lines[at] = lines[at] >= 0 ? Common(Twos.Length, chance) : ~Common(Odd.Length, chance);
            return new(lines);
        }
    }
}

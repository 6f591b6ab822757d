using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;
using Surefoot.Transcribe.Choosing;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Trying;
using Surefoot.Transcribe.Wording;
using Surefoot.Transcribe.Writing;

namespace Surefoot.Transcribe;

/// <summary>Turns a sheet that somebody typed in a way of their own into a page.</summary>
public static class SheetReader
{
    /// <summary>Reads a sheet. It never fails: what nobody can make sense of is kept and told.</summary>
    /// <param name="sheet">Plain text, in any layout.</param>
    /// <param name="book">The words and figures in force; those that come with Surefoot when null.</param>
    /// <param name="told">What somebody told of the sheet's words: the hall's own words, and corrections of this sheet. They win over every rule.</param>
    public static Transcript Read(string sheet, FigureBook? book = null, IReadOnlyList<SheetWord>? told = null)
    {
        book ??= FigureBook.Shipped;
        var stood = SheetText.Lines(sheet);
        var plain = new PhraseWords(book);
        var signs = StandIns.In(stood, told ?? [], said => plain.Read(said) is { Unknown.Count: 0, Moves.Count: > 0 });
        var lines = signs.Lines;
        var words = signs.Used.Count == 0 ? plain : new PhraseWords(book, signs);
        var trial = new FootTrial(book, words);
        var best = new Attempts(meant => Attempt([.. lines], signs, words, trial, meant), words).Best();
        var (plan, facts, laying, parts, feet, doubts) = (best.Plan, best.Facts, best.Laying, best.Parts, best.Feet, best.Doubts);
        lines = best.Lines;
        PartsFilled.In(parts, facts);
        var writer = new PageWriter();
        writer.Write(plan, facts, feet, parts, best.Same, lines.Where(l => plan.Kinds.GetValueOrDefault(l.Number) is LineKind.Remark or LineKind.Fact).Concat(plan.Asides).OrderBy(l => l.Number));
        // What stood on the sheet stands again where a sign stood in for it.
        var page = signs.AsItStood(writer.Text);
        var reading = DanceReader.Read(page, book);
        new DoubtFinder(doubts).Find(plan, facts, laying, feet, parts, reading, writer, words.Meant);
        var said = new PhrasesSaid(stood, plain, signs, plan, parts);
        var read = LinesRead.Of(stood, plan, parts, doubts).Select(l => AsItStood(l, signs) with { Said = said.Of(l) }).ToValueList();
        doubts.RemoveAll(d => d is { Kind: DoubtKind.Assumed, Phrase: { } phrase } && signs.IsNoStep(phrase));
        return new(page, read, doubts.OrderBy(d => d.Kind).ThenBy(d => d.Line).Select(d => d with { Says = signs.AsItStood(d.Says), Phrase = d.Phrase is { } phrase ? signs.AsItStood(phrase) : null }).ToValueList())
        {
            From = writer.From.ToValueList(),
            Words = signs.Used.Where(u => plan.Kinds.GetValueOrDefault(u.Line) == LineKind.Steps || u.Word.IsNoStep).ToValueList(),
        };
    }

    // The sheet read in one way.
    private static Attempt Attempt(List<SheetLine> lines, StandIns signs, PhraseWords words, FootTrial trial, Meant meant)
    {
        var plan = new PlanReader(lines, words.Speaks, meant).Read();
        var own = lines.Where(l => plan.Kinds.GetValueOrDefault(l.Number) != LineKind.Remark || plan.Facts.Contains(l));
        var facts = FactFinder.In(signs.AsItStood(string.Join('\n', own.Select(l => l.Plain))), signs.AsItStood(string.Join('\n', plan.Facts.Concat(plan.Asides).Select(f => f.Plain))));
        if (facts.Meter is null && plan.BeatsInBar is 2 or 3 or 4) facts = facts with { Meter = $"{plan.BeatsInBar}/4" };
        if (plan.Only is not null) facts = facts with { Couple = false, Hold = null, Circle = true, Facing = facts.Facing is "line of dance" or "inside" ? facts.Facing : "line of dance" };
        var laying = new Laying(plan, facts, words);
        var parts = laying.Lay();
        HalfBeats.In(string.Join('\n', lines.Select(l => l.Plain)), parts);
        RocksBefore.In(parts, words);
        NoWayTold.In(parts, facts, words);
        var doubts = new List<Doubt>();
        var same = SameFeet(plan, facts, parts, doubts);
        var feet = FeetChosen.In(parts, trial, facts, opposite: !same, told: facts.OtherFeetSaid);
        if (feet.Follow is { } follow) same = follow == feet.Lead;
        if (facts is { FacingTaken: true, Hold: null } && PartnersFace(parts)) facts = facts with { Facing = "lead LOD, follow RLOD" };
        var read = new Attempt { Lines = lines, Plan = plan, Facts = facts, Laying = laying, Parts = parts, Feet = feet, Same = same };
        read.Doubts.AddRange(doubts);
        read.Cost = HangsTogether.Of(read);
        return read;
    }

    private static LineRead AsItStood(LineRead line, StandIns signs) => line with
    {
        Became = line.Became.Select(signs.AsItStood).ToValueList(),
        Assumed = line.Assumed.Select(signs.AsItStood).ToValueList(),
        NotUnderstood = line.NotUnderstood.Select(signs.AsItStood).ToValueList(),
    };

    // One forward while the other goes back, and never both the same way: they look at each other.
    private static bool PartnersFace(List<DraftPart> parts)
    {
        var lead = parts.SelectMany((p, n) => p.Lines.Where(l => l.Role == Role.Lead).Select(l => (Place: (n, l.Counts.Name), Way: WayOf(l)))).ToLookup(l => l.Place, l => l.Way);
        var pairs = parts.SelectMany((p, n) => p.Lines.Where(l => l.Role == Role.Follow).SelectMany(l => lead[(n, l.Counts.Name)].Select(way => way * WayOf(l)))).Where(w => w != 0).ToList();
        return pairs.Count > 0 && pairs.TrueForAll(w => w < 0);
    }

    // +1 where all of a line's ways are forward, -1 where they are back.
    private static int WayOf(DraftLine line)
    {
        var text = string.Join(' ', line.Phrases.Select(p => p.Text));
        var (forward, back) = (text.Contains("forward", StringComparison.OrdinalIgnoreCase), text.Contains("back", StringComparison.OrdinalIgnoreCase));
        return forward == back ? 0 : forward ? 1 : -1;
    }

    // "You do everything on the other foot": where hers are not told, his steps are both's.
    private static void OnlyHisTold(List<DraftPart> parts)
    {
        foreach (var lines in parts.Select(p => p.Lines))
        {
            var hers = lines.FindAll(l => l.Role == Role.Follow);
            if (hers.Sum(l => l.Counts.Length) * 2 > lines.Where(l => l.Role == Role.Lead).Sum(l => l.Counts.Length)) continue;
            for (var i = 0; i < lines.Count; i++)
            {
                if (lines[i].Role == Role.Lead && !hers.Exists(h => h.Counts.From <= lines[i].Counts.To && h.Counts.To >= lines[i].Counts.From)) lines[i] = lines[i].ForBoth();
            }
        }
    }

    // Roles that are written apart settle it; otherwise the sheet's words, or what is usual in the hold.
    private static bool SameFeet(SheetPlan plan, SheetFacts facts, List<DraftPart> parts, List<Doubt> doubts)
    {
        if (!facts.Couple) return true;
        var follow = parts.Exists(p => p.Lines.Exists(l => l.Role == Role.Follow));
        var lead = parts.Exists(p => p.Lines.Exists(l => l.Role == Role.Lead));
        // A line of one role among lines for both does not outweigh what the sheet says.
        if (facts.SameFeet == true && parts.Exists(p => p.Lines.Exists(l => l.Role is null))) return true;
        var same = facts.SameFeet ?? (facts.Hold is "sweetheart" or "skaters" or "shadow" or null && !plan.Opposite);
        if (follow && lead && !same && (plan.Opposite || facts.OtherFeetSaid)) OnlyHisTold(parts);
        if (follow && lead) return same;
        if (lead || follow && parts.Sum(p => p.Lines.Count(l => l.Role is null)) <= parts.Sum(p => p.Lines.Count(l => l.Role is not null)))
        {
            // One role only: the other does the opposite, as partners who face each other do.
            foreach (var part in parts)
            {
                for (var i = 0; i < part.Lines.Count; i++) part.Lines[i] = part.Lines[i].ForBoth();
            }

            if (!plan.Opposite) doubts.Add(new(DoubtKind.Assumed, 0, $"Only the {(lead ? "lead" : "follow")}'s steps are written. The {(lead ? "follow" : "lead")} was taken to do the opposite."));
            return false;
        }

        if (facts.SameFeet is null && !plan.Opposite)
        {
            doubts.Add(new(DoubtKind.Assumed, 0, same ? "The sheet does not say who uses which foot. Both were taken to use the same one." : "The sheet does not say who uses which foot. Partners were taken to use opposite feet."));
        }

        return same && !plan.Opposite;
    }
}

namespace Surefoot.Dance.Motion;

/// <summary>How a step's own unknowns move a place: by its length along one way, by its aside along another.</summary>
/// <param name="Step">Index of the step in its role.</param>
/// <param name="Along">Metres moved for each metre of length.</param>
/// <param name="Aside">Metres moved for each metre of the small sideways give.</param>
public readonly record struct Term(int Step, Spot Along, Spot Aside);

/// <summary>
/// A place on the floor before lengths are known: the middle of an earlier stance, plus something fixed,
/// plus what a few steps add. Facings are known from the page, so every place is such a sum.
/// </summary>
/// <param name="Base">Index of the stance whose middle it starts from.</param>
public sealed record Form(int Base, Spot Fixed, Term[] Terms)
{
    public static Form Middle(int stance) => new(stance, Spot.Origin, []);

    public Form Moved(Spot by) => this with { Fixed = Fixed + by };

    public Form With(Term term) => this with { Terms = [.. Terms, term] };

    /// <summary>The place once middles and lengths are known.</summary>
    public Spot Value(ReadOnlySpan<Spot> middles, ReadOnlySpan<double> lengths, ReadOnlySpan<double> asides)
    {
        var at = middles[Base] + Fixed;
        foreach (var term in Terms) at = at + (term.Along * lengths[term.Step]) + (term.Aside * asides[term.Step]);
        return at;
    }
}

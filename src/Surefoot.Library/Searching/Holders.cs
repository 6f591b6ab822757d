namespace Surefoot.Library.Searching;

/// <summary>For every word, by its number, the dances that have it, by their places, and how much it weighs there.</summary>
internal sealed class Holders
{
    private readonly List<List<Held>> _of = [];

    public void Add(int word, int place, byte weight)
    {
        while (_of.Count <= word) _of.Add([]);
        _of[word].Add(new(place, weight));
    }

    /// <summary>For every place the best of its words: how well it fits times how much it weighs; 0 where it has none.</summary>
    /// <param name="fits">How well each word fits, of 255.</param>
    /// <param name="leastFit">Words that fit less do not count.</param>
    /// <param name="leastWeight">Nor do those that weigh less where they stand.</param>
    /// <param name="best">Where it is written, for all places; what stood there goes.</param>
    public void Best(byte[] fits, byte leastFit, byte leastWeight, int[] best)
    {
        Array.Clear(best);
        for (var word = fits.AsSpan().IndexOfAnyExcept((byte)0); word >= 0 && word < fits.Length; word++)
        {
            var fit = fits[word];
            if (fit < leastFit || word >= _of.Count) continue;
            foreach (var (place, weight) in System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_of[word]))
            {
                if (weight >= leastWeight && fit * weight > best[place]) best[place] = fit * weight;
            }
        }
    }

    /// <summary>Gives every dance its new place; those with -1 are gone.</summary>
    public void Move(int[] places)
    {
        foreach (var held in _of)
        {
            held.RemoveAll(h => places[h.Place] < 0);
            for (var i = 0; i < held.Count; i++) held[i] = held[i] with { Place = places[held[i].Place] };
        }
    }

    private readonly record struct Held(int Place, byte Weight);
}

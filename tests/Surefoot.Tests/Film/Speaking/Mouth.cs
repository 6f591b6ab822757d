namespace Surefoot.Tests.Film.Speaking;

/// <summary>Says words one after the other and keeps their times, in seconds.</summary>
internal sealed class Mouth(Chance random)
{
    public List<SpokenWord> Words { get; } = [];

    public double Now { get; private set; } = 0.5;

    /// <summary>Seconds a word takes when one explains; conversational English is about 150 words a minute (common figure, no source).</summary>
    private const double WordTakes = 0.36;

    public void Say(string words, bool meant = false)
    {
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var takes = WordTakes * (0.75 + (0.5 * random.NextDouble()));
            Words.Add(new(word, Now, Now + (takes * 0.9), meant));
            Now += takes;
        }
    }

    /// <summary>Words that have to be out by a moment of the music.</summary>
    public void SayAt(double at, string words, double room)
    {
        var all = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var each = Math.Min(0.3, room / all.Length);
        var from = Math.Max(Now, at + ((random.NextDouble() - 0.5) * 0.06));
        foreach (var word in all)
        {
            Words.Add(new(word, from, from + (each * 0.9)));
            from += each;
        }

        Now = from;
    }

    public void Pause(double from, double to) => Now += from + ((to - from) * random.NextDouble());

    public void Until(double at) => Now = Math.Max(Now, at);
}

using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Figures;

/// <summary>
/// The words and figures a page may use: what Surefoot brings along, and over it what a notebook's figure
/// page or the page itself defines. Figures are read when first asked for.
/// </summary>
public sealed class FigureBook
{
    private static readonly Lazy<FigureBook> TheShipped = new(Build);
    private readonly FigureBook? _below;
    private readonly List<Entry> _figures = [];
    private readonly Lock _gate = new();
    private readonly int _first;

    private FigureBook(FigureBook? below)
    {
        _below = below;
        _first = below is null ? 0 : below._first + below._figures.Count;
        Lexicon = new(below?.Lexicon);
        Rows = below?.Rows ?? [];
    }

    /// <summary>The words and figures that come with Surefoot.</summary>
    public static FigureBook Shipped => TheShipped.Value;

    public Lexicon Lexicon { get; }

    /// <summary>The rows of the words file.</summary>
    public IReadOnlyList<WordRow> Rows { get; private set; }

    /// <summary>All figures in force, those that were overridden left out.</summary>
    public IEnumerable<Figure> All
    {
        get
        {
            var names = new HashSet<string>(StringComparer.Ordinal);
            for (var book = this; book is not null; book = book._below)
            {
                for (var i = 0; i < book._figures.Count; i++)
                {
                    if (names.Add(book._figures[i].Figure.Name)) yield return book.Figure(book._first + i);
                }
            }
        }
    }

    /// <summary>A book that adds the figures a text defines; this one stays as it is.</summary>
    public FigureBook With(SourceText text) => With(text, out _);

    internal FigureBook With(SourceText text, out List<LineNode> nodes)
    {
        nodes = [];
        var heads = FigureReader.Heads(text);
        if (heads.Count == 0) return this;
        var book = new FigureBook(this);
        foreach (var (figure, from, to) in heads)
        {
            figure.Own = true;
            figure.Overrides = IsFigure(figure.Name);
            book.AddHead(figure, text, from, to);
        }

        for (var i = 0; i < book._figures.Count; i++) nodes.AddRange(book.Filled(i));
        return book;
    }

    /// <summary>A figure by the number its names carry in the lexicon, read and ready.</summary>
    public Figure Figure(int number)
    {
        if (number < _first) return _below!.Figure(number);
        Filled(number - _first);
        return _figures[number - _first].Figure;
    }

    public Figure? Named(string name)
    {
        foreach (var sense in Lexicon.Find(name))
        {
            if (sense.Kind == SenseKind.Figure) return Figure(sense.Value);
        }

        return null;
    }

    public static string HoldName(int number) => Holds.All[number].Name;

    private bool IsFigure(string name) => Lexicon.Find(name).Any(s => s.Kind == SenseKind.Figure);

    private List<LineNode> Filled(int index)
    {
        lock (_gate)
        {
            var entry = _figures[index];
            if (entry.Nodes is { } nodes) return nodes;
            // Marked first, so that a figure that names itself is met half-read and found out when danced.
            _figures[index] = entry with { Nodes = [] };
            var read = FigureReader.Fill(entry.Figure, entry.Text, entry.From, entry.To, this);
            _figures[index] = entry with { Nodes = read };
            return read;
        }
    }

    private void AddHead(Figure figure, SourceText text, int from, int to)
    {
        var number = _first + _figures.Count;
        _figures.Add(new(figure, text, from, to, null));
        Lexicon.Add(figure.Name, new(SenseKind.Figure, number, -1));
        foreach (var name in figure.OtherNames) Lexicon.Add(name, new(SenseKind.Figure, number, -1));
    }

    private static FigureBook Build()
    {
        var book = new FigureBook(below: null);
        var rows = WordFile.Read(ShippedText.Read("words/english.words"));
        book.Rows = rows;
        // Single words first, so that "hands" in a longer name is the plural of "hand".
        foreach (var row in rows) WordLoader.Add(row, book.Lexicon, single: true);
        foreach (var row in rows) WordLoader.Add(row, book.Lexicon, single: false);
        foreach (var file in ShippedText.Names("figures/"))
        {
            var text = new SourceText(ShippedText.Read(file));
            foreach (var (figure, from, to) in FigureReader.Heads(text)) book.AddHead(figure, text, from, to);
        }

        return book;
    }

    private sealed record Entry(Figure Figure, SourceText Text, int From, int To, List<LineNode>? Nodes);
}

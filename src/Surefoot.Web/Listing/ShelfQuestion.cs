using System.Globalization;
using Surefoot.Dance.Scoring;
using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>What the shelf is asked for. It stands in the address, so that going back and bookmarks find the same list.</summary>
public sealed record ShelfQuestion
{
    /// <summary>Dances on one page of the list: some four screens of a tablet. Working value.</summary>
    public const int PageLength = 50;

    public string Words { get; init; } = "";

    public bool? ForCouples { get; init; }

    public string? Level { get; init; }

    public Meter? Meter { get; init; }

    public int? Counts { get; init; }

    public int? TempoFrom { get; init; }

    public int? TempoTo { get; init; }

    public long? Notebook { get; init; }

    public string? Tag { get; init; }

    /// <summary>"clean", "doubtful" or "broken"; null for all.</summary>
    public string? State { get; init; }

    /// <summary>Null is the usual way: by title, or what fits best where words are looked for.</summary>
    public SortBy? Sort { get; init; }

    public bool Descending { get; init; }

    /// <summary>From 1.</summary>
    public int Page { get; init; } = 1;

    /// <summary>How many ways it narrows the list down, the words not counted.</summary>
    public int Narrowing =>
        Count(ForCouples) + Count(Level) + Count(Meter) + Count(Counts) + Count(TempoFrom ?? TempoTo) + Count(Notebook) + Count(Tag) + Count(State);

    public ListQuestion Asked => new()
    {
        Notebook = Notebook,
        Sort = Sort ?? SortBy.Title,
        Descending = Descending,
        ForCouples = ForCouples,
        Level = Level,
        Tag = Tag,
        Meter = Meter,
        Counts = Counts,
        TempoAtLeast = TempoFrom,
        TempoAtMost = TempoTo,
        Broken = State switch { "broken" => true, "doubtful" => false, _ => null },
        Clean = State switch { "clean" => true, "doubtful" => false, _ => null },
        Skip = (Page - 1) * PageLength,
        Take = PageLength,
    };

    /// <summary>Reads an address; what makes no sense in it is not asked.</summary>
    public static ShelfQuestion Read(IQueryCollection query)
    {
        string? Text(string name) => query[name].ToString().Trim() is { Length: > 0 } text ? text : null;
        int? Number(string name) => int.TryParse(Text(name), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is > 0 and < 10_000 ? number : null;
        return new()
        {
            Words = Text("q") ?? "",
            ForCouples = Text("kind") switch { "couples" => true, "line" => false, _ => null },
            Level = Text("level"),
            Meter = MeterOf(Text("meter")),
            Counts = Number("counts"),
            TempoFrom = Number("from"),
            TempoTo = Number("to"),
            Notebook = long.TryParse(Text("notebook"), NumberStyles.None, CultureInfo.InvariantCulture, out var notebook) ? notebook : null,
            Tag = Text("tag"),
            State = Text("state") is { } state and ("clean" or "doubtful" or "broken") ? state : null,
            Sort = Enum.TryParse<SortBy>(Text("sort"), ignoreCase: true, out var sort) && Enum.IsDefined(sort) ? sort : null,
            Descending = Text("down") is not null,
            Page = Number("page") ?? 1,
        };
    }

    /// <summary>The address of this list for forms to go back to; it always has its mark, by which they know it from other ways.</summary>
    public string Back => At(Page) is "/" ? "/?" : At(Page);

    /// <summary>The address of another page of the same list.</summary>
    public string At(int page)
    {
        var parts = new List<string>();
        void Say(string name, object? value)
        {
            if (value is not null and not "") parts.Add($"{name}={Uri.EscapeDataString(Convert.ToString(value, CultureInfo.InvariantCulture)!)}");
        }

        Say("q", Words);
        Say("kind", ForCouples switch { true => "couples", false => "line", _ => null });
        Say("level", Level);
        Say("meter", Meter?.ToString());
        Say("counts", Counts);
        Say("from", TempoFrom);
        Say("to", TempoTo);
        Say("notebook", Notebook);
        Say("tag", Tag);
        Say("state", State);
        Say("sort", Sort?.ToString().ToLowerInvariant());
        Say("down", Descending ? 1 : null);
        Say("page", page > 1 ? page : null);
        return parts.Count == 0 ? "/" : "/?" + string.Join('&', parts);
    }

    private static Meter? MeterOf(string? text) =>
        text?.Split('/') is [var beats, var unit] && int.TryParse(beats, NumberStyles.None, CultureInfo.InvariantCulture, out var b) && int.TryParse(unit, NumberStyles.None, CultureInfo.InvariantCulture, out var u) ? new(b, u) : null;

    private static int Count<T>(T? asked) => asked is null ? 0 : 1;
}

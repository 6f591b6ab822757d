using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>One page of the shelf's list.</summary>
/// <param name="All">Dances there are before anything was asked; counted only where none was found.</param>
/// <param name="Total">Dances that were asked for.</param>
/// <param name="Whole">False when no dance has all of the words and the nearest are shown.</param>
public sealed record ShelfAnswer(ShelfQuestion Question, int All, int Total, bool Whole, IReadOnlyList<Found> Dances, IReadOnlyDictionary<long, string> Notebooks)
{
    /// <summary>Dances in the bin, which is not searched; counted only where none was found.</summary>
    public int Binned { get; init; }

    public int Pages => (Total + ShelfQuestion.PageLength - 1) / ShelfQuestion.PageLength;

    /// <summary>What the list is, in words that are also read out.</summary>
    public string Says => (Total, Question.Words.Length > 0 || Question.Narrowing > 0) switch
    {
        (0, _) => "No dance found",
        (1, true) => Whole ? "1 dance found" : "No dance has all of that; this one comes nearest",
        (_, true) => Whole ? $"{Total} dances found" : $"No dance has all of that; {Total} come near",
        (1, false) => "1 dance",
        _ => $"{Total} dances",
    };
}

/// <summary>What there is to choose from when the list is narrowed down.</summary>
public sealed record ShelfChoices(IReadOnlyList<Notebook> Notebooks, ListChoices Of);

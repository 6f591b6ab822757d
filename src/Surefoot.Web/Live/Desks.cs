using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Figures;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Live;

/// <summary>
/// The last text of each open window, so that its sheet and its motion are made from what was read already and
/// the text travels once. The windows used longest ago are forgotten; they send their text again.
/// </summary>
internal sealed class Desks(Shelves shelves, ILinearSolver solver)
{
    /// <summary>Windows that are remembered: more than anybody has open; a reading takes a few hundred kilobytes. Working value.</summary>
    private const int Most = 32;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, Desk> _desks = new(StringComparer.Ordinal);
    private readonly LinkedList<string> _order = new();

    /// <param name="notebook">Whose figures and words for the roles hold.</param>
    public async Task<Desk> ReadAsync(string id, int number, string text, long? notebook)
    {
        var home = await shelves.NotebookAsync(notebook);
        var book = home is null ? FigureBook.Shipped : await shelves.Library.Pages.FiguresAsync(home.Id);
        var desk = new Desk(number, text, DanceReader.Read(text, book, solver, home?.Settings.Heights ?? default, home?.Settings.Measures, Find(id)?.Reading), book, home?.Settings ?? new());
        lock (_gate)
        {
            // Two texts may be read at the same time; the later one stays.
            if (_desks.TryGetValue(id, out var known) && known.Number > number) return desk;
            if (known is not null) _order.Remove(id);
            _desks[id] = desk;
            _order.AddLast(id);
            if (_order.Count > Most)
            {
                _desks.Remove(_order.First!.Value);
                _order.RemoveFirst();
            }
        }

        return desk;
    }

    public Desk? Find(string id)
    {
        lock (_gate) return _desks.GetValueOrDefault(id);
    }
}

using Surefoot.Dance;
using Surefoot.Dance.Figures;
using Surefoot.Library;

namespace Surefoot.Web.Live;

/// <summary>One open page in one browser window: the text as it stands there, and everything known of it.</summary>
/// <param name="Number">The window's own count of its texts; answers carry it back, so that an old one is known as old.</param>
/// <param name="Book">The words and figures it was read with.</param>
/// <param name="Settings">Its notebook's.</param>
internal sealed record Desk(int Number, string Text, Reading Reading, FigureBook Book, NotebookSettings Settings);

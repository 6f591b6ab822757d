using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;

namespace Surefoot.Dance.Text;

/// <summary>A line's words as a sheet prints them: the writer's words with abbreviations spelled the usual way.</summary>
internal static class RowText
{
    public static string Of(SourceText source, Segment segment, FigureBook book)
    {
        if (segment.Pieces.Count == 0) return "";
        var text = Tidy.Words(source, segment.Span, book).Trim(' ', '.', ',', ';');
        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }

    public static string Label(CountGroup group)
    {
        if (group.Slots.Count == 1) return group.First.Name;
        if (group.Plain) return $"{group.First.Name}-{group.Slots[^1].Name}";
        var label = new StringBuilder();
        for (var i = 0; i < group.Slots.Count; i++)
        {
            var slot = group.Slots[i];
            var name = slot.Name;
            if (slot.Value.IsWhole)
            {
                if (i > 0 && group.Slots[i - 1].Value.IsWhole) label.Append('-');
                label.Append(name);
            }
            else
            {
                label.Append(name.Trim('0', '1', '2', '3', '4', '5', '6', '7', '8', '9'));
            }
        }

        return label.ToString();
    }
}

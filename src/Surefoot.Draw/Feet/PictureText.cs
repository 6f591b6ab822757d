using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Feet;

/// <summary>The picture told to somebody who hears it: every moment of every role in words.</summary>
internal static class PictureText
{
    public static string Of(IReadOnlyList<PictureLine> lines, IReadOnlyList<Role> roles, RoleNames names)
    {
        var text = new StringBuilder();
        for (var r = 0; r < roles.Count; r++)
        {
            if (text.Length > 0) text.Append(' ');
            if (roles.Count > 1) text.Append(names.Title(roles[r])).Append(": ");
            text.Append(string.Join("; ", lines.SelectMany(l => l.Columns).Select(c => Moment(c, r)).Where(m => m.Length > 0))).Append('.');
        }

        return text.ToString();
    }

    private static string Moment(Column column, int role)
    {
        if (column.Says is { } says) return says;
        if (column.Frames[role] is not { } frame) return "";
        var weight = frame.Before.Weight;
        var words = new List<string>();
        foreach (var action in frame.Actions)
        {
            words.Add(StepWords.Of(action, weight, spelled: true));
            weight = action.Weight;
        }

        var at = column.CountName.Length > 0 ? column.At.Name : $"after {column.At.Whole}";
        return $"{at} {string.Join(" and ", words)}";
    }
}

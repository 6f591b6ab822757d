using System.Text;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Draw.Calls;
using Surefoot.Draw.Sheet.Plain;
using Surefoot.Draw.Sheet.Plan;

namespace Surefoot.Draw;

/// <summary>The calls of a dance as plain text: under each part the counts, for whom, and what is called.</summary>
public static class CallText
{
    private const int Width = 78, CountColumn = 9;

    public static string Write(Reading reading, SheetOptions options)
    {
        var plan = CallPlan.Of(reading, options);
        var text = new StringBuilder();
        Paragraph(text, plan.Title);
        text.Append(new string('=', Math.Min(plan.Title.Length, Width))).Append('\n');
        if (plan.Doubt.Length > 0) Paragraph(text, plan.Doubt);
        foreach (var band in plan.Bands)
        {
            if (band.Heading.Length > 0) text.Append('\n').Append(band.Heading).Append(band.Name.Length > 0 ? "  " + band.Name : "").Append('\n');
            if (band.Heading.Length > 0 && band.Calls.Count == 0 && band.Counts.Count <= 8) text.Append("  nothing is called\n");
            foreach (var call in band.Calls)
            {
                var counts = call.Length == 1 ? band.Counts[call.At] : $"{band.Counts[call.At]}-{band.Counts[call.At + call.Length - 1]}";
                var who = call.Role is { } role && role != Role.Dancer ? plan.Names.Bare(role) + ": " : "";
                text.Append("  ").Append(counts.PadRight(CountColumn)).Append(who).Append(call.Words).Append(call.Written ? "  (as written)" : "").Append('\n');
            }
        }

        if (plan.Once.Count > 0) text.Append('\n');
        foreach (var once in plan.Once) Paragraph(text, once);
        return text.Append('\n').Append(SheetPlan.MadeWith).Append('\n').ToString();
    }

    private static void Paragraph(StringBuilder text, string words)
    {
        foreach (var line in Columns.Wrap(words, Width)) text.Append(line).Append('\n');
    }
}

using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Cli.Printing;

/// <summary>What was found in one run, and the line that says so.</summary>
internal sealed class Tally
{
    public int Pages { get; private set; }

    public int Errors { get; private set; }

    public int Warnings { get; private set; }

    public int Hints { get; private set; }

    /// <summary>Problems that have a sure fix.</summary>
    public int Sure { get; private set; }

    public void Add(ValueList<Problem> problems)
    {
        Pages++;
        foreach (var problem in problems)
        {
            if (problem.Severity == Severity.Error) Errors++;
            else if (problem.Severity == Severity.Warning) Warnings++;
            else Hints++;
            foreach (var fix in problem.Fixes)
            {
                if (fix.Sureness != Sureness.Sure) continue;
                Sure++;
                break;
            }
        }
    }

    /// <summary>"18 pages: 2 errors, 1 warning, 5 hints."</summary>
    public string Sentence(int unread)
    {
        var found = new List<string>();
        if (Errors + Warnings + Hints == 0)
        {
            found.Add("nothing to mend");
        }
        else
        {
            found.Add(Prose.Number(Errors, "error"));
            if (Warnings > 0) found.Add(Prose.Number(Warnings, "warning"));
            if (Hints > 0) found.Add(Prose.Number(Hints, "hint"));
        }

        return $"{Prose.Number(Pages, "page")}: {string.Join(", ", found)}{(unread > 0 ? $"; {unread} could not be read" : "")}.";
    }
}

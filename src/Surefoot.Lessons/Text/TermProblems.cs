using Surefoot.Dance.Problems;

namespace Surefoot.Lessons.Text;

/// <summary>Collects what is wrong with a term, each with its place. Their names are listed in docs/lessons.md, each with an example in corpus/terms.</summary>
internal sealed class TermProblems
{
    private readonly List<Problem> _all = [];

    public ValueList<Problem> InOrder => _all.OrderBy(p => p.Span.Start).ThenBy(p => p.Name, StringComparer.Ordinal).ToValueList();

    public void Error(string name, TextSpan at, string message, string reason) => Add(name, Severity.Error, at, message, reason);

    public void Warning(string name, TextSpan at, string message, string reason) => Add(name, Severity.Warning, at, message, reason);

    private void Add(string name, Severity severity, TextSpan at, string message, string reason) =>
        _all.Add(new(name, severity, at, null, null, null, message, reason));
}

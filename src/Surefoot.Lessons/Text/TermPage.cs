using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Lessons.Text;

/// <summary>A term file, read: the term as far as it can be understood, and what is wrong with it.</summary>
/// <param name="Term">Null where the file does not say when the term is.</param>
public sealed record TermPage(SourceText Source, string Title, Term? Term, ValueList<Problem> Problems)
{
    /// <summary>Reads a term file. Reading never fails.</summary>
    public static TermPage Read(string text) => new TermReader(text).Read();

    /// <summary>The words under which lists begin, as they are usually written.</summary>
    public static ValueList<string> Headings => ["Evenings", "Dances", "Known", "Reached", "Told"];
}

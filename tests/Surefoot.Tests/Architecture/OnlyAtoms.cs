using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Words;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Architecture;

/// <summary>Figures live in text files; code knows only the atoms.</summary>
public class OnlyAtoms
{
    [Fact]
    public void No_figure_is_named_in_code()
    {
        var names = FigureBook.Shipped.All.SelectMany(f => f.OtherNames.Prepend(f.Name)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        // A hold may share its name with the figure that leads into it.
        names.ExceptWith(Holds.All.Select(h => h.Name));
        // An amount of turning, before it is a figure.
        names.Remove("full turn");
        foreach (var file in Directory.EnumerateFiles(Root.At("src"), "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}")))
        {
            var code = string.Join('\n', File.ReadLines(file).Where(l => !l.TrimStart().StartsWith("//", StringComparison.Ordinal)));
            foreach (Match literal in Regex.Matches(code, "\"([^\"\\\\\r\n]*)\""))
            {
                Assert.False(names.Contains(literal.Groups[1].Value), $"{Path.GetFileName(file)} names the figure \"{literal.Groups[1].Value}\"");
            }
        }
    }

    [Fact]
    public void Every_row_of_the_words_file_that_can_be_written_has_a_meaning()
    {
        foreach (var row in FigureBook.Shipped.Rows.Where(r => r.Kind is "verb" or "way" or "hold" or "header" or "facing" or "handverb" or "role" or "amount"))
        {
            Assert.True(row.Meaning.Length > 0, $"{row.Kind} {row.Key} has no meaning");
        }
    }

    [Fact]
    public void No_spelling_means_two_atoms()
    {
        var rows = FigureBook.Shipped.Rows.Where(r => r.Kind == "verb").SelectMany(r => r.Spellings.Select(s => (s, r.Key)));
        foreach (var same in rows.GroupBy(r => r.s)) Assert.Single(same);
    }

    [Fact]
    public void Every_word_of_the_file_is_found_by_its_spellings()
    {
        foreach (WordRow row in FigureBook.Shipped.Rows.Where(r => r.Kind is not ("header" or "sense" or "call" or "nocall" or "openingcall")))
        {
            Assert.All(row.Spellings, spelling => Assert.True(FigureBook.Shipped.Lexicon.Has(spelling), $"{row.Kind} {row.Key}: {spelling}"));
        }
    }
}

using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Words;

/// <summary>A row of the words file: what can be written and what it means.</summary>
/// <param name="Kind">The row's kind as written: "verb", "way", "hold", "header" …</param>
/// <param name="Key">What the program calls it.</param>
/// <param name="Spellings">All spellings, the first one being how Surefoot itself writes it.</param>
/// <param name="Dated">Spellings that are read and never written, marked "~" in the file.</param>
public sealed record WordRow(string Kind, string Key, ValueList<string> Spellings, string Meaning, ValueList<string> Dated = default);

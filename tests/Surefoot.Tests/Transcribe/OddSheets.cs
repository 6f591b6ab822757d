using Surefoot.Dance;
using Surefoot.Transcribe;

namespace Surefoot.Tests.Transcribe;

/// <summary>Sheets that somebody could paste and nobody would write: read to their end, and for what they are.</summary>
public class OddSheets
{
    private const string Head = "Lamp Oil\n32 counts, 4 walls\n\n";

    /// <summary>A row of digits can be cut in more ways than there is time for.</summary>
    [Fact(Timeout = 60_000)]
    public async Task A_bracket_full_of_digits_that_never_closes_is_read_to_its_end()
    {
        var sheet = $"Lamp Oil\n\nMeas  Ct\n1  1-2  step L, step R\n2  1-2  step L, step R\n3  1-2  walk ({new string('7', 5000)}\n";
        var read = await Task.Run(() => SheetReader.Read(sheet), TestContext.Current.CancellationToken);
        Assert.Contains("step L", read.Page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Digits_of_another_script_are_the_same_numbers()
    {
        var plain = SheetReader.Read(Head + "1-4 Vine right, touch L\n5-8 Vine left, touch R\n");
        var other = SheetReader.Read(Head + "\uFF11-\u0664 Vine right, touch L\n\u0665-\uFF18 Vine left, touch R\n");
        Assert.Equal(Steps(plain), Steps(other));
        Assert.NotEmpty(Steps(plain));
    }

    /// <summary>Numbers in brackets that go up are no totals where nothing is danced before them.</summary>
    [Fact]
    public void Tempos_of_songs_and_lengths_of_sections_are_no_running_totals()
    {
        var read = SheetReader.Read("Lamp Oil\nMusic: One (112), Two (118), Three (124), Four (130)\n\n1-4 Vine right, touch L\n5-8 Vine left, touch R\n");
        Assert.Equal(8, DanceReader.Read(read.Page).Score.Counts.Ceiling);
    }

    [Fact]
    public void A_bar_named_once_in_a_drawn_table_is_meant_for_the_counts_under_it()
    {
        var read = SheetReader.Read("Lamp Oil\n4/4\n\n| Bar | Count | Man | Lady |\n|:-:|:-:|:-:|:-:|\n| 1 | 1-2 | walk L, R | walk R, L |\n|  | 3-4 | rock L fwd, recover R | rock R back, recover L |\n| 2 | 1-2 | walk L, R | walk R, L |\n|  | 3-4 | step L back, touch R tog | step R fwd, touch L tog |\n");
        Assert.Equal(8, DanceReader.Read(read.Page).Score.Counts.Ceiling);
        Assert.All(DanceReader.Read(read.Page).Score.Roles, r => Assert.Equal(8, r.Steps.Count));
    }

    [Fact]
    public void What_is_told_of_a_word_holds_in_a_drawn_table()
    {
        var (words, _) = SheetWords.Read("frobble => walk L, R, L, R\n");
        var read = SheetReader.Read("Lamp Oil\n\n| Count | Man | Lady |\n| --- | --- | --- |\n| 1-4 | frobble | same |\n", told: [.. words]);
        Assert.Contains("walk L, R, L, R", read.Page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Small_roman_numbers_stay_as_they_are() => Assert.Contains("viii", SheetReader.Read(Head + "1-4 Vine right, touch L\nThe book has it on page viii.\n").Page, StringComparison.OrdinalIgnoreCase);

    private static List<string> Steps(Transcript read) => [.. DanceReader.Read(read.Page).Score.Roles[0].Steps.Select(s => $"{s.At} {s.Foot} {s.Kind} {s.Direction}")];
}

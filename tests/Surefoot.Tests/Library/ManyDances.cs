using System.Text;

namespace Surefoot.Tests.Library;

/// <summary>As many different dances as a test wants, with names, tempos, levels and figures of their own; the same on every run.</summary>
internal static class ManyDances
{
    private static readonly string[] First =
        ["Amber", "Barley", "Cedar", "Dusty", "Ember", "Fiddle", "Gravel", "Harvest", "Indigo", "Juniper", "Kettle", "Lantern", "Meadow", "Nettle", "Orchard", "Pebble", "Quarry", "Rusty", "Saddle", "Timber"];

    private static readonly string[] Second =
        ["Bridge", "Corner", "Ditch", "Evening", "Ferry", "Gate", "Hollow", "Island", "Junction", "Kitchen", "Ladder", "Mill", "Night", "Oven", "Porch", "Quilt", "River", "Stable", "Tower", "Window"];

    private static readonly string[] Third = ["Shuffle", "Waltz", "Cha-Cha", "Two-Step", "Schottische", "Polka", "Stroll", "Swing", "Walk", "Hop"];

    private static readonly string[] Levels = ["beginner", "improver", "intermediate", "advanced"];

    private static readonly string[] Eights =
    [
        "1-2    Rock forward L, recover R\n3&4    Shuffle back L R L\n5-6    Rock back R, recover L\n7&8    Shuffle forward R L R\n",
        "1-2    Lead: walk L, R. Follow: full turn right L under right hands, release left hands\n3-4    Walk L, R, take left hands\n5-6    Walk L, R\n7&8    Shuffle forward L R L\n",
        "1-2    Step forward L, pivot ½ right\n3&4    Shuffle forward L R L\n5-6    Step forward R, pivot ½ left\n7&8    Shuffle forward R L R\n",
        "1-4    Vine left, touch R together\n5-8    Vine right, touch L together\n",
        "1-4    Jazz box L, step together R\n5-8    Rocking chair L\n",
    ];

    public static string Title(int number) =>
        $"{First[number % 20]} {Second[number / 20 % 20]} {Third[number / 400 % 10]}{(number >= 4000 ? $" {number / 4000}" : "")}";

    public static string Page(int number)
    {
        var couple = number % 3 != 0;
        var waltz = number % 7 == 0;
        var tempo = 90 + (number * 13 % 60);
        var page = new StringBuilder($"{Title(number)}\nKind: {(couple ? "partner, circle" : $"line, {(number % 2 == 0 ? 4 : 2)} walls")}\nMeter: {(waltz ? "3/4" : "4/4")}\nTempo: {tempo}-{tempo + 10}\n");
        if (couple) page.Append($"Hold: {(number % 2 == 0 ? "sweetheart" : "skaters")}\nFacing: line of dance\n");
        page.Append($"Feet: {(couple ? "same, " : "")}left free\nLevel: {Levels[number % 4]}\nPhrase: any\n");
        for (var part = 0; part < 2 + (number % 5); part++)
        {
            var eight = (number + (part * (1 + (number / 7 % 4)))) % Eights.Length;
            page.Append($"\nPart {part + 1}  (8 counts)\n").Append(Eights[!couple && eight == 1 ? 3 : eight]);
        }

        return page.Append($"\n> Number {number}.\n").ToString();
    }
}

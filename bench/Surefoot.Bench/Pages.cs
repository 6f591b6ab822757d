using System.Text;

namespace Surefoot.Bench;

/// <summary>Pages of any length for measuring: danceable 8s for two roles, no two pages alike.</summary>
internal static class Pages
{
    private static readonly string[] Eights =
    [
        "{1}-{2}    Rock forward L, recover R\n{3}&{4}    Shuffle back L R L\n{5}-{6}    Rock back R, recover L\n{7}&{8}    Shuffle forward R L R\n",
        "{1}-{2}    Lead: walk L, R. Follow: full turn right L under right hands, release left hands\n{3}&{4}    Shuffle forward L R L, take left hands\n{5}-{6}    Walk R, L\n{7}&{8}    Shuffle forward R L R\n",
        "{1}-{2}    Step forward L, pivot ½ right\n{3}&{4}    Shuffle forward L R L (facing RLOD)\n{5}-{6}    Step forward R, pivot ½ left\n{7}&{8}    Shuffle forward R L R (facing LOD)\n",
        "{1}-{4}    Vine left, touch R together\n{5}-{8}    Vine right, touch L together\n",
        "{1}-{2}    Lead: rock forward L, recover R. Follow: rock back L, recover R\n{3}&{4}    Lead: shuffle back L R L. Follow: shuffle forward L R L\n{5}-{6}    Lead: rock back R, recover L. Follow: rock forward R, recover L\n{7}&{8}    Triple in place R L R\n",
        "{1}-{4}    Jazz box L, step together R\n{5}-{8}    Rocking chair L\n",
    ];

    /// <summary>A couple's page that can be danced: the Millpond pattern of rocks, shuffles, pivots and her turns, again and again.</summary>
    public static string Couple(int counts)
    {
        var page = new StringBuilder("Measured couple\nKind: partner, circle\nMeter: 4/4\nTempo: 100-110\nHold: sweetheart\nFacing: line of dance\nFeet: same, left free\nLevel: improver\nPhrase: any\n");
        for (var part = 0; part < counts / 8; part++)
        {
            page.Append("\nPart ").Append(part + 1).Append("  (8 counts)\n");
            var eight = Eights[part % 3];
            for (var count = 1; count <= 8; count++) eight = eight.Replace("{" + count + "}", count.ToString());
            page.Append(eight);
        }

        return page.ToString();
    }

    /// <summary>A page of a number of counts, a multiple of 8; different numbers give different pages.</summary>
    public static string Of(int counts, int number)
    {
        var page = new StringBuilder();
        page.Append("Measured dance ").Append(number).Append("\nKind: partner, circle\nMeter: 4/4\nTempo: 100-118\nHold: sweetheart\nFacing: line of dance\nFeet: same, left free\nLevel: improver\nPhrase: any\n");
        var parts = counts / 8;
        for (var part = 0; part < parts; part++)
        {
            page.Append("\nPart ").Append(part + 1).Append("  Eight number ").Append(part + 1).Append("  (8 counts)\n");
            var eight = Eights[(number + (part * (1 + (number / 7 % 5)))) % Eights.Length];
            for (var count = 1; count <= 8; count++) eight = eight.Replace("{" + count + "}", count.ToString());
            page.Append(eight);
        }

        page.Append("\n> Measured ").Append(number).Append(" times.\n");
        return page.ToString();
    }
}

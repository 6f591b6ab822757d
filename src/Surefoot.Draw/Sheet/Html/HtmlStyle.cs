using System.Globalization;

namespace Surefoot.Draw.Sheet.Html;

/// <summary>
/// How the printable sheet looks. Hairlines instead of grounds, because browsers leave grounds out when they
/// print; dark only on a screen that asks for it.
/// </summary>
internal static class HtmlStyle
{
    /// <summary>Distance of lines over type size.</summary>
    public const double LineHeight = 1.32;

    /// <summary>Space above and below the words of a row, and between parts, in type sizes.</summary>
    public const double RowPadding = 0.16, PartGap = 1.25;

    /// <summary>Share of the width for each side where the roles have their own words; the counts stand in the middle.</summary>
    public const double SideShare = 0.43;

    /// <summary>Shares of the width left and right of the counts where everybody has the same words.</summary>
    public const double HeadShare = 0.34, WordsShare = 0.55;

    /// <summary>Type of what Surefoot worked out over that of the author's words.</summary>
    public const double OursSize = 0.86;

    public static string Of(double typeSize, PaperSize paper)
    {
        var size = typeSize.ToString("0.##", CultureInfo.InvariantCulture);
        var page = paper == PaperSize.Letter ? "letter" : "A4";
        return $"@page{{size:{page};margin:13mm 14mm}}:root{{--type:{size}pt}}" + Rules + (typeSize >= Large ? Broken : "");
    }

    // From this size on, in points, a part fills half a page and more: kept whole it would leave the rest of a page empty. Working value.
    private const double Large = 14;

    // Then a part goes on on the next page, between two of its rows, not below its first and not above its last.
    private const string Broken = "@media print{table{break-inside:auto}tr{break-inside:avoid}tr.top,tr:first-child{break-after:avoid}tr:last-child{break-before:avoid}}";

    private static readonly string Rules = """
        :root{--ink:#1c1b19;--soft:#a3a19b;--faint:#b5b2aa;--floor:#f4f2ec;--paper:#fff;--quiet:#5f5c55;--line:#cbc7bd;
        --book:Charter,"Iowan Old Style","Palatino Linotype",Palatino,Georgia,"Liberation Serif",serif;
        --plain:system-ui,"Segoe UI",Roboto,"Helvetica Neue","Liberation Sans",sans-serif}
        *{box-sizing:border-box}
        html{background:var(--paper);color:var(--ink);-webkit-text-size-adjust:100%}
        body{margin:0;font:var(--type)/1.32 var(--plain)}
        main{max-width:190mm;margin:0 auto}
        h1{font:600 2em/1.1 var(--book);margin:0 0 .3em;letter-spacing:-.01em}
        .opening{font:1.08em/1.42 var(--book);margin:0 0 .5em;max-width:60em}
        .order,.note{margin:0 0 .4em}
        .order{font:1.08em/1.42 var(--book)}
        .doubt{font-weight:700;border:1.5pt solid var(--ink);padding:.35em .7em;margin:0 0 .7em}
        .parts{margin-top:1em}
        table{width:100%;border-collapse:collapse;table-layout:fixed;margin:0 0 1.25em;break-inside:avoid}
        .l{width:34%}.m{width:5em}
        .sides .l{width:auto}.sides .m{width:6.4em}
        td,th{padding:.16em .7em;vertical-align:baseline;text-align:left;font-weight:400}
        td:first-child{padding-left:0}td:last-child{padding-right:0}
        th,td.count{text-align:center;font-weight:700;font-variant-numeric:tabular-nums;white-space:nowrap;padding-inline:.2em;
        border-inline:.75pt solid var(--line)}
        .tight{font-size:.86em}.but th.tight{padding-inline:.35em}
        th small{font-weight:400;font-style:italic;font-size:.85em}
        th small.fills{font-style:normal}
        .lead{text-align:right}
        .head{vertical-align:top}
        h2{font:600 1.14em/1.25 var(--book);margin:0}
        h2 span{font-weight:400;white-space:nowrap;color:var(--quiet);font-size:.86em}
        .stand{font-size:.94em;color:var(--quiet);margin:.1em 0 0;text-wrap:pretty}
        .who{font-size:.8em;letter-spacing:.06em;color:var(--quiet);margin-inline-end:.45em}
        tr.top .head{padding-block:0 .3em}thead tr.top .head{padding-bottom:0}
        .again td,.again th{font-style:italic}
        .but th{border-inline-style:double;border-inline-width:2.5pt}
        .remark td{font-family:var(--book);font-style:italic}
        .between td{text-align:center;padding:.3em 2em}
        .ours td{padding-top:0}
        .ours td:last-child span,p.ours{display:block;font:italic .86em/1.32 var(--plain);color:var(--quiet)}
        .ours td:last-child span{padding-inline-start:1.9em;text-indent:-1.9em}
        .ours span+span{margin-top:.15em}
        .ours b{display:inline-block;width:1.5em;margin-inline-end:.4em;color:var(--ink);border:.75pt solid var(--soft);border-radius:.5em;text-align:center;text-indent:0;font-style:normal;line-height:1.2}
        .key{margin:0 0 .6em;break-before:avoid}
        .care{break-before:avoid;break-inside:avoid;font:.94em/1.4 var(--book);margin:0 0 .6em;border-top:.75pt solid var(--line);padding-top:.5em}
        .pictures{break-inside:avoid;margin-top:1em}
        .pictures h2{font-size:1.3em;margin-bottom:.5em;break-after:avoid}
        figure{margin:0 0 .8em;break-inside:avoid}
        figure svg{display:block;width:100%;height:auto}
        footer{font-size:.72em;color:var(--quiet);text-align:right;break-before:avoid}
        @media screen{body{font-size:max(var(--type),16px);padding:1.2rem 1rem 2rem}figure{overflow-x:auto}figure svg{min-width:42rem}}
        @media screen and (prefers-color-scheme:dark){:root{--ink:#f1eee6;--soft:#85827b;--faint:#6b6963;--floor:#2a2927;--paper:#191817;--quiet:#b3afa5;--line:#47443f}}
        @media screen and (max-width:36rem){table,thead,tbody,tr,td,th{display:block}colgroup{display:none}
        tr{display:grid;grid-template-columns:minmax(4.2em,max-content) 1fr}
        .head{grid-column:1/-1;padding:0 0 .3em}.gap{display:none}tr.top{display:block}
        th{border-inline-start:0;text-align:left;padding:.16em .4em .16em 0}td.count{display:none}
        tr.apart th{grid-row:1/3;grid-column:1}tr.apart td{grid-column:2;text-align:left;padding-right:0}tr.apart .who{display:none}
        tr.apart td::before{content:attr(data-who);font-size:.8em;letter-spacing:.06em;color:var(--quiet);margin-inline-end:.45em}tr.apart td:empty::before{content:none}
        .ours td:last-child,.remark td:last-child{grid-column:2}
        td{padding-left:.6em}td:first-child{padding-right:.6em}tr.apart td:first-child{padding-left:.6em}.but th{border-inline-start:0}.but th small,th small.fills{display:block;line-height:1.1}}
        """.ReplaceLineEndings("");
}

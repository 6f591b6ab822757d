namespace Surefoot.Draw.Calls;

/// <summary>How the call sheet looks: read at arm's length in bad light, so the calls are large and everything else stands back.</summary>
internal static class CallStyle
{
    // Points of type; everything else is measured in it. Working values.
    private const string Usual = "12pt", Large = "16pt";

    public static string Of(SheetOptions options) =>
        $"@page{{size:{(options.Paper == PaperSize.Letter ? "letter" : "A4")};margin:12mm 13mm}}:root{{--type:{(options.LargePrint ? Large : Usual)}}}" + Rules;

    private static readonly string Rules = """
        :root{--ink:#1c1b19;--soft:#a3a19b;--faint:#b5b2aa;--floor:#f4f2ec;--paper:#fff;--quiet:#5f5c55;--line:#cbc7bd;
        --book:Charter,"Iowan Old Style","Palatino Linotype",Palatino,Georgia,"Liberation Serif",serif;
        --plain:system-ui,"Segoe UI",Roboto,"Helvetica Neue","Liberation Sans",sans-serif}
        *{box-sizing:border-box}
        html{background:var(--paper);color:var(--ink);-webkit-text-size-adjust:100%}
        body{margin:0;font:var(--type)/1.25 var(--plain)}
        main{max-width:190mm;margin:0 auto}
        h1{font:600 1.7em/1.1 var(--book);margin:0 0 .2em}
        .opening{font:.94em/1.35 var(--book);margin:0 0 .7em;color:var(--quiet)}
        .doubt{font-weight:700;border:1.5pt solid var(--ink);padding:.35em .7em;margin:0 0 .7em}
        h2{font:600 1.05em/1.2 var(--book);margin:.75em 0 .15em;break-after:avoid}
        h2 span{font-weight:400;color:var(--quiet)}
        table{width:100%;border-collapse:collapse;table-layout:fixed;margin:0 0 .55em;break-inside:avoid}
        .who{width:4.2em}
        td,th{padding:0 .2em;text-align:left;vertical-align:bottom;font-weight:400}
        tr>:first-child{padding-left:0;font-size:.72em;color:var(--quiet);vertical-align:middle}
        .call .said{font-size:1.16em;line-height:1.1;padding:.12em 0 0}
        .call b{display:block;margin-right:.35em;padding:0 .1em .08em .15em;border-bottom:2.5pt solid var(--ink);overflow-wrap:anywhere}
        .counts th{font-variant-numeric:tabular-nums;color:var(--quiet);font-size:.86em;border-left:.75pt solid var(--line);border-top:.75pt solid var(--line);border-bottom:.75pt solid var(--line);padding:.1em .2em .1em .35em}
        .counts th:last-of-type{border-right:.75pt solid var(--line)}
        .danced .said{font:italic .82em/1.15 var(--book);vertical-align:top;padding:.15em .1em 0 .3em;border-left:.75pt solid var(--line)}
        .danced b{font-weight:400}
        .once{margin:.5em 0 0;font-weight:600}
        .unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        footer{font-size:.66em;color:var(--quiet);text-align:right;margin-top:1em}
        @media screen{body{font-size:max(var(--type),16px);padding:1.2rem 1rem 2rem}}
        @media screen and (max-width:36rem){body{font-size:12.5px;padding:.8rem .5rem}.who{width:3em}.call .said{font-size:1em}}
        @media screen and (prefers-color-scheme:dark){:root{--ink:#f1eee6;--soft:#85827b;--faint:#6b6963;--floor:#2a2927;--paper:#191817;--quiet:#b3afa5;--line:#47443f}}
        """.ReplaceLineEndings("");
}

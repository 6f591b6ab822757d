using System.CommandLine;
using System.Text;
using System.Text.Json;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Json;
using Surefoot.Cli.Mending;
using Surefoot.Cli.Printing;
using Surefoot.Dance;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot check: what cannot be danced, what looks odd, what was assumed.</summary>
internal static class CheckCommand
{
    public static Command Make(Screen screen)
    {
        var pages = new Argument<string[]>("page") { HelpName = "PAGE", Arity = ArgumentArity.OneOrMore, Description = "a page, or a folder for every page in it" };
        var fix = new Option<bool>("--fix") { Description = "mends what can only be meant one way: shows the change, then writes it into the page" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("check", "Reads pages and says what cannot be danced as written, what looks odd, and what was assumed.")
        {
            Missing = "Say which page to check, for example: surefoot check millpond.dance",
            Examples =
            [
                ("surefoot check millpond.dance", "checks one page"),
                ("surefoot check notebook", "checks every page of a folder, with the hall's own figures"),
                ("surefoot check --fix millpond.dance", "mends plain slips of the pen"),
            ],
        };
        command.Add(pages);
        command.Add(fix);
        command.Add(json);
        command.SetAction(asked => new Run(screen, asked.GetValue(pages) ?? [], asked.GetValue(fix), asked.GetValue(json)).Check());
        return command;
    }

    private sealed class Run(Screen screen, string[] named, bool fix, bool json)
    {
        private readonly Tally _tally = new();
        // Kept back while a bar shows how far the work is.
        private readonly StringBuilder _kept = new();
        private TextWriter _said = TextWriter.Null;
        private List<Trouble> _troubles = [];
        private int _mends;
        private int _mendedPages;
        private bool _refused;

        public int Check()
        {
            using var said = new StringWriter(_kept) { NewLine = "\n" };
            _said = said;
            (var pages, _troubles) = PageFinder.Find(named);
            var files = Readable(pages);
            if (fix) files = Mended(files);
            var several = pages.Count > 1 || named.Any(Directory.Exists);
            var notebooks = new Notebooks();
            if (json)
            {
                JsonOut.Write(_said, writer => Document(writer, files, notebooks));
            }
            else
            {
                Progress.Through(files, screen, "Checking", file => Told(file, Read(file, notebooks), several));
            }

            screen.Out.Write(_kept.ToString());
            screen.Out.Flush();
            _troubles = [.. _troubles.Concat(notebooks.Troubles).DistinctBy(t => Path.GetFullPath(t.Path), StringComparer.Ordinal)];
            foreach (var trouble in _troubles) trouble.Tell(screen.Err);
            if (!json && _tally.Pages > 0) Summary();
            return _troubles.Count > 0 ? ExitCode.CouldNotRead : _tally.Errors > 0 ? ExitCode.ErrorsFound : ExitCode.Fine;
        }

        private List<PageFile> Readable(List<string> pages)
        {
            var files = new List<PageFile>(pages.Count);
            foreach (var path in pages)
            {
                var (file, trouble) = PageFiles.Read(path);
                if (file is not null) files.Add(file);
                if (trouble is not null) _troubles.Add(trouble);
            }

            return files;
        }

        private Reading Read(PageFile file, Notebooks notebooks)
        {
            var reading = Reader.Read(file.Text, notebooks.For(file.Path));
            _tally.Add(reading.Problems);
            return reading;
        }

        private void Told(PageFile file, Reading reading, bool several)
        {
            if (reading.Score.Sections.Count == 0 && reading.Page.Figures.Count == 0)
            {
                _said.WriteLine($"{file.Path} holds no dance yet. Steps begin with their counts, as in: 1-2  Rock forward L, recover R");
                _said.WriteLine();
            }

            if (reading.Problems.Count == 0) return;
            if (several)
            {
                _said.WriteLine(screen.Skin.Title(reading.Score.Title.Length > 0 ? $"{file.Path}   {Cells.Harmless(reading.Score.Title)}" : file.Path));
                _said.WriteLine();
            }

            foreach (var problem in reading.Problems)
            {
                ProblemPrinter.Print(problem, reading.Page, _said, screen.Skin, screen.Width);
                _said.WriteLine();
            }
        }

        private void Document(Utf8JsonWriter writer, List<PageFile> files, Notebooks notebooks)
        {
            writer.WriteStartObject();
            writer.WriteStartArray("pages");
            Progress.Through(files, screen, "Checking", file => CheckJson.Page(writer, file, Read(file, notebooks)));
            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        private void Summary()
        {
            if (_mends > 0) screen.Say($"Mended {Prose.Number(_mends, "place")} in {Prose.Number(_mendedPages, "page")}. What is left:");
            else if (fix && !_refused) screen.Say("There was nothing that could be mended without asking you.");
            screen.Say(screen.Skin.Title(_tally.Sentence(_troubles.Count)));
            if (!fix && _tally.Sure > 0)
            {
                var one = _tally.Sure == 1;
                screen.Say($"{(one ? "One of them can" : $"{_tally.Sure} of them can")} only be meant one way and {(one ? "is" : "are")} mended by: surefoot check --fix {string.Join(' ', named.Select(Names.Quoted))}");
            }
        }

        // Figure pages first: what they define decides how the others read.
        private List<PageFile> Mended(List<PageFile> files)
        {
            var notebooks = new Notebooks();
            var texts = new Dictionary<string, PageFile>(StringComparer.Ordinal);
            foreach (var figures in (ReadOnlySpan<bool>)[true, false])
            {
                foreach (var file in files)
                {
                    if (notebooks.IsFigurePage(file.Path) != figures) continue;
                    texts[file.Path] = Mended(file, notebooks);
                }

                notebooks = new();
            }

            return [.. files.Select(f => texts[f.Path])];
        }

        private PageFile Mended(PageFile file, Notebooks notebooks)
        {
            var (text, fixes) = Mender.Mend(file.Text, notebooks.For(file.Path));
            if (fixes == 0 || string.Equals(text, file.Text, StringComparison.Ordinal)) return file;
            var to = json ? screen.Err : _said;
            DifferencePrinter.Print(file.Path, "mended", file.Text, text, to, json ? screen.RemarkSkin : screen.Skin);
            to.WriteLine();
            if (!json)
            {
                // Seen before it is done.
                screen.Out.Write(_kept.ToString());
                screen.Out.Flush();
                _kept.Clear();
            }

            if (PageFiles.WriteBack(file, text) is { } trouble)
            {
                _troubles.Add(trouble);
                _refused = true;
                return file;
            }

            _mends += fixes;
            _mendedPages++;
            return file with { Text = text };
        }
    }
}

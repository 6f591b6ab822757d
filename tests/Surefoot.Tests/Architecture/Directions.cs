using System.Reflection;
using System.Xml.Linq;
using Surefoot.Dance;
using Surefoot.Draw;
using Surefoot.Library;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Architecture;

/// <summary>Dependencies point one way, as ARCHITECTURE.md draws them; values never change.</summary>
public class Directions
{
    /// <summary>Each project with the projects it may know, in the order of ARCHITECTURE.md.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Surefoot.Dance"] = [],
        ["Surefoot.Draw"] = ["Surefoot.Dance"],
        ["Surefoot.Solver"] = ["Surefoot.Dance"],
        ["Surefoot.Likeness"] = ["Surefoot.Dance"],
        ["Surefoot.Library"] = ["Surefoot.Dance", "Surefoot.Likeness", "Surefoot.Transcribe"],
        ["Surefoot.Lessons"] = ["Surefoot.Dance"],
        ["Surefoot.Lessons.Solver"] = ["Surefoot.Lessons"],
        ["Surefoot.Lessons.Sheets"] = ["Surefoot.Draw", "Surefoot.Lessons"],
        ["Surefoot.Library.Sqlite"] = ["Surefoot.Library"],
        ["Surefoot.Library.PostgreSql"] = ["Surefoot.Library"],
        ["Surefoot.Frames"] = [],
        ["Surefoot.Transcribe"] = ["Surefoot.Dance"],
        ["Surefoot.Transcribe.Files"] = ["Surefoot.Dance"],
        ["Surefoot.Film"] = ["Surefoot.Dance"],
        ["Surefoot.Cli"] = ["Surefoot.Dance", "Surefoot.Draw", "Surefoot.Solver", "Surefoot.Frames", "Surefoot.Likeness", "Surefoot.Library", "Surefoot.Library.Sqlite", "Surefoot.Transcribe", "Surefoot.Transcribe.Files", "Surefoot.Film", "Surefoot.Lessons", "Surefoot.Lessons.Solver", "Surefoot.Lessons.Sheets"],
        ["Surefoot.Web"] = ["Surefoot.Dance", "Surefoot.Draw", "Surefoot.Solver", "Surefoot.Likeness", "Surefoot.Library", "Surefoot.Library.Sqlite", "Surefoot.Library.PostgreSql", "Surefoot.Transcribe", "Surefoot.Transcribe.Files", "Surefoot.Film", "Surefoot.Lessons", "Surefoot.Lessons.Solver", "Surefoot.Lessons.Sheets"],
    };

    /// <summary>Packages a project may use; the dance itself uses none.</summary>
    private static readonly Dictionary<string, string[]> Packages = new()
    {
        ["Surefoot.Dance"] = [],
        ["Surefoot.Draw"] = [],
        ["Surefoot.Solver"] = ["Google.OrTools", "Google.Protobuf"],
        ["Surefoot.Likeness"] = [],
        ["Surefoot.Lessons"] = [],
        ["Surefoot.Lessons.Solver"] = ["Google.OrTools", "Google.Protobuf"],
        ["Surefoot.Lessons.Sheets"] = [],
        ["Surefoot.Library"] = ["Microsoft.EntityFrameworkCore.Relational", "DiffPlex"],
        ["Surefoot.Library.Sqlite"] = ["Microsoft.EntityFrameworkCore.Sqlite"],
        ["Surefoot.Library.PostgreSql"] = ["Npgsql.EntityFrameworkCore.PostgreSQL"],
        ["Surefoot.Frames"] = ["PuppeteerSharp"],
        ["Surefoot.Transcribe"] = [],
        ["Surefoot.Transcribe.Files"] = ["DocumentFormat.OpenXml", "PdfPig"],
        ["Surefoot.Film"] = [],
        ["Surefoot.Cli"] = ["System.CommandLine", "Spectre.Console", "DiffPlex"],
        ["Surefoot.Web"] = [],
    };

    public static TheoryData<string> Projects => [.. Directory.GetDirectories(Root.At("src")).Select(d => Path.GetFileName(d)!)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_knows_only_those_below_it(string project)
    {
        Assert.True(Allowed.ContainsKey(project), $"{project} has no place in the architecture yet");
        var file = XDocument.Load(Root.At("src", project, project + ".csproj"));
        var references = file.Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension((string)r.Attribute("Include")!));
        Assert.All(references, reference => Assert.Contains(reference, Allowed[project]));
        var packages = file.Descendants("PackageReference").Select(r => (string)r.Attribute("Include")!);
        Assert.All(packages, package => Assert.Contains(package, Packages[project]));
    }

    [Fact]
    public void The_dance_knows_neither_files_nor_screen_nor_network()
    {
        var names = typeof(DanceReader).Assembly.GetReferencedAssemblies().Select(a => a.Name!).ToList();
        Assert.All(names, name => Assert.StartsWith("System.", name));
        Assert.DoesNotContain(names, name => name.Contains("Console") || name.Contains("FileSystem") || name.Contains("Net.") || name.Contains("Process"));
    }

    [Fact]
    public void Drawing_knows_only_the_dance()
    {
        var names = typeof(FootPicture).Assembly.GetReferencedAssemblies().Select(a => a.Name!);
        Assert.All(names, name => Assert.True(name.StartsWith("System.", StringComparison.Ordinal) || name == "Surefoot.Dance", name));
    }

    [Fact]
    public void The_library_knows_no_database_and_no_screen()
    {
        var names = typeof(DanceLibrary).Assembly.GetReferencedAssemblies().Select(a => a.Name!).ToList();
        Assert.DoesNotContain(names, name => name.Contains("Sqlite") || name.Contains("Npgsql") || name.Contains("Console") || name.Contains("AspNetCore") || name.Contains("Net."));
    }

    /// <summary>
    /// Folders of the dance library in the order in which each is made from those before it. Words of a
    /// page and figures are one layer: a figure's text is read by the page's own reader.
    /// </summary>
    private static readonly string[][] Layers =
    [
        ["Basics"], ["Problems"], ["Steps"], ["Words", "Text", "Phrases", "Figures"], ["Scoring"], ["Motion"], ["Couple"], ["Moving"], ["Insight"], ["Checks"],
    ];

    [Fact]
    public void Folders_of_the_dance_library_point_one_way()
    {
        for (var layer = 0; layer < Layers.Length; layer++)
        {
            var above = Layers.Skip(layer + 1).SelectMany(l => l).ToList();
            foreach (var folder in Layers[layer])
            {
                foreach (var file in Directory.EnumerateFiles(Root.At("src", "Surefoot.Dance", folder), "*.cs", SearchOption.AllDirectories))
                {
                    var text = File.ReadAllText(file);
                    Assert.All(above, higher => Assert.False(
                        text.Contains($"using Surefoot.Dance.{higher}", StringComparison.Ordinal), $"{file} looks up to {higher}"));
                }
            }
        }

        Assert.All(Directory.GetDirectories(Root.At("src", "Surefoot.Dance")).Select(Path.GetFileName).Where(f => f is not ("bin" or "obj")),
            folder => Assert.Contains(folder, Layers.SelectMany(l => l)));
    }

    [Fact]
    public void Values_never_change()
    {
        Type[] homes = [typeof(Dance.Problems.Problem), typeof(Dance.Scoring.DanceScore), typeof(Dance.Motion.Stance), typeof(Dance.Basics.Count)];
        foreach (var home in homes)
        {
            foreach (var type in home.Assembly.GetExportedTypes().Where(t => t.Namespace == home.Namespace && !t.IsAbstract && !t.IsEnum))
            {
                foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    if (property.SetMethod is not { IsPublic: true } set) continue;
                    Assert.Contains(typeof(System.Runtime.CompilerServices.IsExternalInit), set.ReturnParameter.GetRequiredCustomModifiers());
                }

                Assert.All(type.GetFields(BindingFlags.Public | BindingFlags.Instance), field => Assert.True(field.IsInitOnly, $"{type.Name}.{field.Name} can be changed"));
            }
        }
    }
}

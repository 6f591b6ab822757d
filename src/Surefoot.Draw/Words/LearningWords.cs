using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>What there is to learn in a dance and what makes it easy or hard, in sentences.</summary>
public static class LearningWords
{
    /// <summary>For each role: "The lead learns 40 of 80 counts, taken 8 at a time. Taken 4 at a time it is …". Empty for a page without steps.</summary>
    public static List<string> ToLearn(DanceScore score, SheetOptions? options = null)
    {
        options ??= new();
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var loads = score.Roles.Where(r => r.Steps.Count > 0).Select(r => (r.Role, Sizes: LearningLoad.AtEverySize(score, r.Role))).ToList();
        if (loads.Count == 2 && loads[0].Sizes.Select(Told).SequenceEqual(loads[1].Sizes.Select(Told))) return [Sentence("Everybody", loads[0].Sizes)];
        return [.. loads.Select(l => Sentence(Phrases.Capital(names.The(l.Role)), l.Sizes))];
    }

    /// <summary>What a class that knows some dances knows of this one already.</summary>
    public static List<string> Known(DanceScore score, IReadOnlyList<DanceScore> known, SheetOptions? options = null)
    {
        options ??= new();
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var loads = score.Roles.Where(r => r.Steps.Count > 0).Select(r => LearningLoad.Of(score, r.Role, bite: null, known)).ToList();
        var from = known.Count == 1 ? "the dance you know" : $"the {known.Count} dances you know";
        if (loads.Count == 2 && Told(loads[0]) == Told(loads[1]) && loads[0].Known == loads[1].Known) return [$"Of these {Numbers.Counts(loads[0].New)} you know {loads[0].Known} from {from}."];
        return [.. loads.Select(l => $"Of these {Numbers.Counts(l.New)} {(l.Role == Role.Dancer ? "you know" : $"{names.The(l.Role)} knows")} {l.Known} from {from}.")];
    }

    /// <summary>The suggested level in a sentence.</summary>
    public static string Suggested(Difficulty difficulty, string? stated)
    {
        var said = Levels.Read(stated) is { } level
            ? level == difficulty.Suggested ? ", as the page says" : $"; the page says {level.Word()}"
            : "";
        return $"By the steps it is {Phrases.Article(difficulty.Suggested.Word())} {difficulty.Suggested.Word()} dance{said}.";
    }

    private static string Sentence(string who, ValueList<LearningLoad> sizes)
    {
        var usual = sizes[^1];
        var varied = usual.Changed > 0 ? $" {usual.Changed} of the {usual.New} are something known that comes differently." : "";
        var smaller = sizes.Reverse().Skip(1).Select(s => $"taken {s.Bite} at a time it is {s.New}{Mirrored(s)}").ToList();
        return $"{who} learns {usual.New} of {Numbers.Counts(usual.Counts)}{Mirrored(usual)}, taken {usual.Bite} at a time.{varied} {Phrases.Capital(string.Join("; ", smaller))}.";
    }

    private static string Mirrored(LearningLoad load) => load.Mirrored > 0 ? $" and {load.Mirrored} more that are known on the other foot" : "";

    private static (int, int, int) Told(LearningLoad load) => (load.New, load.Mirrored, load.Changed);
}

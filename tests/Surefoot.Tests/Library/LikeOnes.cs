using Microsoft.EntityFrameworkCore;
using Surefoot.Library;
using Surefoot.Likeness;

namespace Surefoot.Tests.Library;

/// <summary>Dances like one, found in the library; what was kept a moment ago is among them.</summary>
public class LikeOnes
{
    private const string Head = "Kind: line, 4 walls\nFeet: left free\nPhrase: any\n";

    private const string A = "\nPart A  (8 counts)\n1-4  Vine left, scuff R\n5-8  Vine right, touch L\n";

    private const string C = "\nPart C  (8 counts)\n1-2  Heel forward L, step L together\n3-4  Heel forward R, step R together\n5-8  Jazz box L, step R together\n";

    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_nearest_come_first_with_what_is_said_of_them(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var lamp = await home.AddAsync("Lamp Oil\n" + Head + A + C);
        var version = await home.AddAsync("Barrel Lid\n" + Head + A + C.Replace("Jazz box L, step R together", "Walk forward L, R, L, R"));
        var twin = await home.AddAsync("Gate Post\n" + Head + Likeness.Twins.Mirror(A + C));
        await home.AddAsync("Far Off\n" + Head + "\n1-4  Charleston L\n");
        var likes = await home.Library.Likes.OfAsync(lamp);
        Assert.Equal([twin, version], likes.Take(2).Select(l => l.Dance.Page));
        Assert.Equal(["The same dance under another name, begun on the other foot.", "A variant: differs in 4 counts."], likes.Take(2).Select(l => l.Verdict.Says));
        Assert.DoesNotContain(likes, l => l.Dance.Page == lamp);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_was_kept_brought_into_the_bin_or_back_counts_at_once(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var lamp = await home.AddAsync("Lamp Oil\n" + Head + A + C);
        var other = await home.AddAsync("Barrel Lid\n" + Head + "\n1-4  Charleston L\n");
        Assert.Empty(await home.Library.Likes.OfAsync(lamp));
        // Kept by somebody else's program.
        using (var beside = await home.AgainAsync()) await beside.Pages.KeepAsync(other, 1, "Barrel Lid\n" + Head + A + C);
        Assert.Equal(VerdictKind.Same, Assert.Single(await home.Library.Likes.OfAsync(lamp)).Verdict.Kind);
        await home.Library.Bin.PutAsync(other);
        Assert.Empty(await home.Library.Likes.OfAsync(lamp));
        await home.Library.Bin.TakeOutAsync(other);
        Assert.Single(await home.Library.Likes.OfAsync(lamp));
        Assert.Empty(await home.Library.Likes.OfAsync(lamp, notebook: home.Notebook + 1));
        Assert.Empty(await home.Library.Likes.OfAsync(999_999));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Steps_of_a_library_from_before_are_filled_in_when_it_is_opened(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var lamp = await home.AddAsync("Lamp Oil\n" + Head + A + C);
        await home.AddAsync("Barrel Lid\n" + Head + A + C);
        await using (var context = home.Store.Context())
        {
            await context.Shelf.ExecuteUpdateAsync(s => s.SetProperty(r => r.Steps, Array.Empty<byte>()).SetProperty(r => r.ReadWith, "1"));
        }

        using var again = await home.AgainAsync();
        Assert.Single(await again.Likes.OfAsync(lamp));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_dance_that_is_not_in_the_library_is_asked_about_as_well(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var lamp = await home.AddAsync("Lamp Oil\n" + Head + A + C);
        await home.AddAsync("Far Off\n" + Head + "\n1-4  Charleston L\n");
        var likes = await home.Library.Likes.OfAsync(Dance.DanceReader.Read("Gate Post\n" + Head + C + A).Score);
        Assert.Equal((lamp, VerdictKind.Same), (Assert.Single(likes).Dance.Page, likes[0].Verdict.Kind));
        Assert.Empty(await home.Library.Likes.OfAsync(Dance.DanceReader.Read("Nothing\n").Score));
    }
}

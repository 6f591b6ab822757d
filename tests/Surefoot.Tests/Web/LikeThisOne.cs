using Microsoft.Playwright;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>From a dance to those like it, to both side by side, and to what there is to learn.</summary>
public class LikeThisOne(Studio studio) : IClassFixture<Studio>
{
    private static string Twin => File.ReadAllText(Root.At("demo", "dances", "circle", "nine-buckets-cha-cha.dance")).Replace("Nine Buckets Cha-Cha", "Ten Pails");

    [Fact]
    public async Task A_dance_under_another_name_is_found_and_laid_beside_it()
    {
        var twin = await studio.AddAsync(Twin);
        await using var opened = await studio.OpenAsync($"/dance/{twin}");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Like this one" }).ClickAsync();
        var first = opened.Page.Locator(".likes li").First;
        await Expect(first).ToContainTextAsync("Nine Buckets Cha-Cha");
        await Expect(first).ToContainTextAsync("The same dance under another name.");
        await first.GetByRole(AriaRole.Link).ClickAsync();
        await Expect(opened.Page.Locator(".laid .verdict")).ToHaveTextAsync("The same dance under another name.");
        // Alike from beginning to end, a line for each part.
        await Expect(opened.Page.Locator(".laid tbody tr.is-alike").First).ToContainTextAsync("8 counts alike");
        await Expect(opened.Page.Locator(".laid tbody tr:not(.is-alike)")).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_a_class_knows_is_chosen_by_a_tag()
    {
        var twin = await studio.AddAsync(Twin.Replace("Ten Pails", "Eleven Pails"));
        var known = await studio.AddAsync(Twin.Replace("Ten Pails", "Twelve Pails"));
        using (var library = await studio.LookAsync()) Assert.Null(await library.Details.AddTagAsync(known, "Tuesday class"));
        await using var opened = await studio.OpenAsync($"/dance/{twin}");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "To learn" }).ClickAsync();
        await Expect(opened.Page.Locator("#new-name + p")).ToContainTextAsync("Everybody learns 26 of 32 counts");
        await opened.Page.GetByRole(AriaRole.Combobox).And(opened.Page.Locator("[name=knows]")).SelectOptionAsync("Tuesday class");
        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Reckon" }).ClickAsync();
        await Expect(opened.Page.Locator(".learn [role=status]")).ToHaveTextAsync("Of these 26 counts you know 26 from the dance you know.");
        await Expect(opened.Page.Locator(".learn table tbody tr").First).ToBeVisibleAsync();
        Assert.Empty(opened.Faults);
    }
}

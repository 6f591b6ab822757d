using Surefoot.Frames;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Cli;

/// <summary>surefoot frames: numbered pictures of both dancers.</summary>
public class Picturing
{
    private static readonly string Page = Root.At("demo", "dances", "circle", "split-rail-cha-cha.dance");

    [Fact]
    public void A_stretch_is_drawn_as_numbered_pictures_of_the_size_asked_for()
    {
        using var notebook = new Asked.Notebook();
        var folder = Path.Combine(notebook.Folder, "film");
        // 120 counts a minute are two a second: a count at ten pictures a second is five steps of the film, and its start.
        var (exit, _, errors) = Asked.For("frames", Page, "--camera", "side", "--size", "320x180", "--rate", "10", "--tempo", "120", "--from", "3", "--to", "3", "--out", folder);
        Assert.True(exit == 0, errors);
        Assert.Equal(Enumerable.Range(1, 6).Select(i => $"split-rail-cha-cha-{i:000000}.png"), Directory.GetFiles(folder).Select(f => Path.GetFileName(f)!).Order());
        Assert.Contains("6 pictures written", errors);
        var pictures = Directory.GetFiles(folder).Order().Select(File.ReadAllBytes).ToList();
        Assert.All(pictures, picture =>
        {
            // PNG (ISO/IEC 15948): eight bytes of signature, then a header with width and height.
            Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], picture[..8]);
            Assert.Equal((320, 180), (Number(picture, 16), Number(picture, 20)));
        });
        Assert.NotEqual(pictures[0], pictures[^1]);

        static int Number(byte[] bytes, int at) => (bytes[at] << 24) | (bytes[at + 1] << 16) | (bytes[at + 2] << 8) | bytes[at + 3];
    }

    [Theory]
    [InlineData("no camera \"front\"", "--camera", "front")]
    [InlineData("room for two cameras", "--camera", "back", "--camera", "side", "--camera", "above")]
    [InlineData("After --size come width and height", "--size", "12")]
    [InlineData("After --role comes lead or follow", "--role", "lady")]
    [InlineData("After --look comes light, dark or dim", "--look", "pink")]
    [InlineData("After --from comes a count from 1 to", "--from", "1000")]
    [InlineData("comes after count", "--from", "5", "--to", "4")]
    [InlineData("After --rate comes a whole number", "--rate", "0")]
    public void What_cannot_be_drawn_is_said_in_plain_words(string says, params string[] asked)
    {
        var (exit, _, errors) = Asked.For(["frames", Page, .. asked]);
        Assert.NotEqual(0, exit);
        Assert.Contains(says, errors);
    }

    [Fact]
    public async Task A_browser_that_does_not_start_is_no_fault_of_the_program()
    {
        var trouble = await Assert.ThrowsAsync<NoPictureException>(() => FrameTaker.BeginAsync("/bin/false", "{}", new(["back"], 64, 64)));
        Assert.Contains("/bin/false could not draw", trouble.Message);
    }
}

using System.Text.Json;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web;

/// <summary>
/// A dozen dances from every camera at two counts, compared with kept pictures that somebody has looked at. A
/// picture that comes out differently is left beside the kept one as NAME.png.seen; "./test --accept" takes it over.
/// </summary>
public class Pictured(Studio studio) : IClassFixture<Studio>
{
    /// <summary>
    /// Mean difference of a colour, of 255, and share of points that are clearly another colour, in the picture of one
    /// camera at one count. Browsers of other versions smooth edges otherwise; an arm that lies elsewhere is more.
    /// </summary>
    private const double MeanMost = 1, ClearMost = 0.003;

    // One sheet: cameras from left to right, counts from top to bottom.
    private const string Taken = """
        async ([kept, counts]) => {
          const viewer = window.surefootViewer, view = viewer.watching.view, [w, h] = [240, 180];
          const picture = document.querySelector(".viewer-picture");
          Object.assign(picture.style, { flex: "none", width: w + "px", height: h + "px", minHeight: "0" });
          for (let i = 0; i < 4; i++) await new Promise(requestAnimationFrame);
          const cameras = ["back", "side", "above", ...(viewer.motion.roles.length > 1 ? ["partner"] : [])];
          const sheet = Object.assign(document.createElement("canvas"), { width: w * cameras.length, height: h * counts.length });
          const pen = sheet.getContext("2d", { willReadFrequently: true });
          for (const [row, count] of counts.entries()) {
            for (const [column, camera] of cameras.entries()) {
              view.cameras = [camera];
              viewer.watching.changed();
              const image = new Image();
              image.src = viewer.pictureAt(count);
              await image.decode();
              pen.drawImage(image, column * w, row * h, w, h);
            }
          }
          const png = sheet.toDataURL("image/png").split(",")[1];
          if (!kept) return { png, mean: 255, clear: 1, another: 1 };
          const before = new Image();
          before.src = "data:image/png;base64," + kept;
          await before.decode();
          if (before.width !== sheet.width || before.height !== sheet.height) return { png, mean: 255, clear: 1, another: 1 };
          const tile = (row, column) => pen.getImageData(column * w, row * h, w, h).data;
          const every = () => counts.map((_, row) => cameras.map((_, column) => tile(row, column)));
          const now = every();
          pen.drawImage(before, 0, 0);
          const then = every();
          const differ = (one, other) => {
            let sum = 0, clear = 0;
            for (let i = 0; i < one.length; i += 4) {
              const [r, g, b] = [0, 1, 2].map(k => Math.abs(one[i + k] - other[i + k]));
              sum += r + g + b;
              if (Math.max(r, g, b) > 60) clear++;
            }
            return { mean: sum / (one.length / 4 * 3), clear: clear / (one.length / 4) };
          };
          const found = now.flatMap((row, r) => row.map((picture, c) => differ(picture, then[r][c])));
          // What two counts of the same dance differ by: it has to be more than what is let pass.
          const between = then[0].map((picture, c) => differ(picture, then[1][c]).clear);
          return { png, mean: Math.max(...found.map(f => f.mean)), clear: Math.max(...found.map(f => f.clear)), another: Math.min(...between) };
        }
        """;

    [Theory]
    [InlineData("split-rail-cha-cha", 3, 21)]
    [InlineData("five-barns", 2, 11)]
    [InlineData("folded-quilt", 4, 14)]
    [InlineData("kettle-lid-shuffle", 3, 12.5)]
    [InlineData("nine-buckets-cha-cha", 5, 18)]
    [InlineData("pebble-fence-polka", 2, 9)]
    [InlineData("tall-grass-cha-cha", 6, 23)]
    [InlineData("weathervane", 3, 10)]
    [InlineData("both-footbridges", 2, 7)]
    [InlineData("steeple-clock", 4, 13)]
    [InlineData("wet-meadow-waltz", 2, 8)]
    [InlineData("salt-lick-cha-cha", 4, 15)]
    public async Task Every_camera_shows_what_it_showed(string dance, double one, double other)
    {
        await using var opened = await studio.OpenAsync($"/dance/{dance}/watch");
        await opened.Page.WaitForSelectorAsync("html[data-watching=whole]", new() { State = Microsoft.Playwright.WaitForSelectorState.Attached });
        var kept = Root.At("tests", "pictures", dance + ".png");
        var before = File.Exists(kept) ? Convert.ToBase64String(await File.ReadAllBytesAsync(kept, TestContext.Current.CancellationToken)) : null;
        var seen = await opened.Page.EvaluateAsync<JsonElement>(Taken, new object?[] { before, new[] { one, other } });
        var (mean, clear) = (seen.GetProperty("mean").GetDouble(), seen.GetProperty("clear").GetDouble());
        Assert.True(seen.GetProperty("another").GetDouble() > ClearMost, $"the two counts of {dance} look alike from some side");
        if (mean <= MeanMost && clear <= ClearMost) return;
        Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
        await File.WriteAllBytesAsync(kept + ".seen", Convert.FromBase64String(seen.GetProperty("png").GetString()!), TestContext.Current.CancellationToken);
        Assert.Fail(before is null ? $"{kept} is not there yet; look at {kept}.seen" : $"{dance} looks otherwise: mean difference {mean:0.00}, {clear:P2} of the points; look at {kept}.seen");
    }
}

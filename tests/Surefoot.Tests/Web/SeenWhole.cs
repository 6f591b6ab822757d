namespace Surefoot.Tests.Web;

/// <summary>Nothing that tells somebody where they are hides behind a dancer or lies outside the picture.</summary>
public class SeenWhole(Studio studio) : IClassFixture<Studio>
{
    // Where a place in the room comes to lie in a camera's picture: 0, 0 is its middle, 1 its right and upper edge.
    private const string Places = """
        const viewer = window.surefootViewer, { stage, watching: { view } } = viewer;
        const vector = stage.ground.group.position;
        const seen = (p, camera) => vector.clone().set(p.x, p.y, p.z).project(stage.cameras[camera]);
        const body = (count, who) => {
          const j = viewer.jointsAt(count)[who];
          return [j.head, ...["left", "right"].flatMap(s => [...Object.values(j.legs[s]), ...Object.values(j.arms[s])])].filter(p => typeof p?.z === "number");
        };
        """;

    [Theory]
    [InlineData("both-footbridges", "back")]
    [InlineData("both-footbridges", "side")]
    [InlineData("steeple-clock", "back")]
    [InlineData("steeple-clock", "side")]
    public async Task The_numbers_of_all_four_walls_are_seen_round_a_lone_dancer(string dance, string from)
    {
        await using var opened = await WatchAsync(dance);
        var hidden = await opened.Page.EvaluateAsync<string[]>("from => {" + Places + """
              view.cameras = [from];
              stage.draw(0, view);
              const dancer = body(0, 0).map(p => seen(p, 0)), [left, right] = [Math.min(...dancer.map(p => p.x)), Math.max(...dancer.map(p => p.x))];
              const nearest = Math.min(...dancer.map(p => p.z));
              return stage.ground.walls.map(({ sprite }, i) => {
                const p = seen(sprite.getWorldPosition(vector.clone()), 0);
                const outside = Math.abs(p.x) > 0.97 || Math.abs(p.y) > 0.97, behind = p.z > nearest && p.x > left && p.x < right;
                return outside ? `${i} is outside at ${p.x} ${p.y}` : behind ? `${i} is behind at ${p.x}` : "";
              }).filter(s => s);
            }
            """, from);
        Assert.Empty(hidden);
        Assert.Equal(4, await opened.Page.EvaluateAsync<int>("() => window.surefootViewer.stage.ground.walls.length"));
    }

    [Theory]
    [InlineData("kettle-lid-shuffle")]
    [InlineData("folded-quilt")]
    [InlineData("loose-hinge-two-step")]
    public async Task A_partner_is_seen_from_head_to_foot_beside_another_view(string dance)
    {
        await using var opened = await WatchAsync(dance);
        var worst = await opened.Page.EvaluateAsync<double>("() => {" + Places + """
              view.cameras = ["back", "partner"];
              let worst = 0;
              for (let count = 0; count < viewer.motion.counts; count++) {
                stage.draw(count, view);
                for (const p of body(count, 0)) {
                  const { x, y } = seen(p, 1);
                  worst = Math.max(worst, Math.abs(x), Math.abs(y));
                }
              }
              return worst;
            }
            """);
        // 1 is the edge of the picture; 0 would mean that nothing was looked at.
        Assert.InRange(worst, 0.2, 1);
    }

    private async Task<Opened> WatchAsync(string dance)
    {
        var opened = await studio.OpenAsync($"/dance/{dance}/watch");
        await opened.Page.WaitForSelectorAsync("html[data-watching=whole]", new() { State = Microsoft.Playwright.WaitForSelectorState.Attached });
        return opened;
    }
}

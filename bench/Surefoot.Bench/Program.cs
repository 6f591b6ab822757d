using BenchmarkDotNet.Running;
using Surefoot.Bench;

// "studio http://127.0.0.1:7350" measures an open studio, "watch …" its moving figures, "shelf …" its shelf, for which "fill FILE" makes a large
// library; "start PROGRAM" measures a published studio from its start, and its memory, on the demo notebook or on the
// library that is named after it; "like" looks for the dances most like one among very many; "term demo" plans the demo term; anything else goes to the benchmarks.
var chromium = Environment.GetEnvironmentVariable("SUREFOOT_CHROMIUM") ?? "/usr/bin/chromium";
if (args is ["studio", var address]) await StudioTimes.Run(address, chromium);
else if (args is ["watch", var watched]) await WatchTimes.Run(watched, chromium);
else if (args is ["fill", var file]) await ShelfTimes.Fill(file);
else if (args is ["shelf", var shelf]) await ShelfTimes.Run(shelf, chromium);
else if (args is ["start", var program, .. var library]) await StartTimes.Run(program, library is [var named, ..] ? named : null, chromium);
else if (args is ["like", .. var many]) LikenessTimes.Run(many is [var dances] ? int.Parse(dances) : LikenessTimes.UsualDances, LikenessTimes.UsualQueries);
else if (args is ["term", .. var where]) TermTimes.Run(where is [var demo] ? demo : "demo");
else BenchmarkSwitcher.FromAssembly(typeof(StudioTimes).Assembly).Run(args);

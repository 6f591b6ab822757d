using BenchmarkDotNet.Running;
using Surefoot.Bench;

// "studio http://127.0.0.1:7350" measures an open studio, "shelf …" its shelf, for which "fill FILE" makes a large
// library; anything else goes to the benchmarks.
var chromium = Environment.GetEnvironmentVariable("SUREFOOT_CHROMIUM") ?? "/usr/bin/chromium";
if (args is ["studio", var address]) await StudioTimes.Run(address, chromium);
else if (args is ["fill", var file]) await ShelfTimes.Fill(file);
else if (args is ["shelf", var shelf]) await ShelfTimes.Run(shelf, chromium);
else BenchmarkSwitcher.FromAssembly(typeof(StudioTimes).Assembly).Run(args);

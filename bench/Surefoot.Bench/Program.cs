using BenchmarkDotNet.Running;
using Surefoot.Bench;

// "studio http://127.0.0.1:7350" measures an open studio; anything else goes to the benchmarks.
if (args is ["studio", var address]) await StudioTimes.Run(address, Environment.GetEnvironmentVariable("SUREFOOT_CHROMIUM") ?? "/usr/bin/chromium");
else BenchmarkSwitcher.FromAssembly(typeof(StudioTimes).Assembly).Run(args);

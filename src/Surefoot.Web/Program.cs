using Surefoot.Web;

var app = Studio.Build(args);
await app.StartAsync();
Console.WriteLine($"Surefoot's studio is open at {Studio.Address(app)}");
await app.WaitForShutdownAsync();

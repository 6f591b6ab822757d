using Surefoot.Web;

var app = Studio.Build(args);
try
{
    await app.StartAsync();
}
catch (IOException)
{
    Console.Error.WriteLine("The studio could not open: its port is taken, perhaps by a studio that is open already. SUREFOOT_PORT says another port.");
    return 1;
}

Console.WriteLine($"Surefoot's studio is open at {Studio.Address(app)}");
await app.WaitForShutdownAsync();
return 0;

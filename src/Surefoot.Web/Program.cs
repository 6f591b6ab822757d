using Surefoot.Library;
using Surefoot.Solver;
using Surefoot.Web;
using Surefoot.Web.Keeping;
using Surefoot.Web.Network;

var asked = Asked.Of(args);
if (asked.Unknown is { } unknown)
{
    Console.Error.WriteLine($"The studio does not know “{unknown}”. It knows {Asked.Network} and {Asked.Passphrase}.");
    return 2;
}

OpenToNetwork? open = null;
try
{
    if (asked.NewPassphrase)
    {
        using var passphrase = new Passphrase(new(LibraryPlace.NetworkFolder()));
        return AtTheConsole.SetPassphrase(passphrase);
    }

    if (asked.OpenToNetwork) open = new(new(LibraryPlace.NetworkFolder()), TimeProvider.System);
}
catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine($"The folder {LibraryPlace.NetworkFolder()}, which keeps the passphrase and the certificate, could not be used. Is it yours to write in, and is there room on the disk?");
    return 1;
}

// The library is opened, and the demo's dances are read for the first time, on one processor while the other puts the studio
// together and makes its first page ready; whoever asks earlier waits.
var opening = Task.Run(() => DanceLibrary.OpenAsync(LibraryPlace.Store(), new() { Solver = new ProvenSolver() }));
using (open)
await using (var app = Studio.Build(() => opening.GetAwaiter().GetResult(), open))
{
    var starting = app.StartAsync();
    try
    {
        using var library = await opening;
        await FirstDances.TakeInAsync(library, Path.Combine(AppContext.BaseDirectory, "demo"), Path.Combine(AppContext.BaseDirectory, "demo-terms"));
        await starting;
        // The own address last: whoever waits for it has read the rest.
        if (open is not null) Console.Write(Announcement.Of(open, Studio.Address(app), Studio.NetworkPort(app.Services.GetRequiredService<Microsoft.AspNetCore.Hosting.Server.IServer>())!.Value));
        Console.WriteLine($"Surefoot's studio is open at {Studio.Address(app)}");
        await app.WaitForShutdownAsync();
        return 0;
    }
    catch (LibraryException fault)
    {
        Console.Error.WriteLine(fault.Message);
    }
    catch (IOException) when (starting.IsFaulted)
    {
        Console.Error.WriteLine("The studio could not open: its port is taken, perhaps by a studio that is open already. SUREFOOT_PORT says another port.");
    }

    await starting.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    return 1;
}

using Surefoot.Library;
using Surefoot.Solver;
using Surefoot.Web;
using Surefoot.Web.Keeping;

DanceLibrary library;
try
{
    library = await DanceLibrary.OpenAsync(LibraryPlace.Store(), new() { Solver = new GlopSolver() });
}
catch (LibraryException fault)
{
    Console.Error.WriteLine(fault.Message);
    return 1;
}

using (library)
{
    await FirstDances.TakeInAsync(library, Path.Combine(AppContext.BaseDirectory, "demo"));
    var app = Studio.Build(args, library);
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
}

return 0;

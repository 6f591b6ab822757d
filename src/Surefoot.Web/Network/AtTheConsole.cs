using System.Text;

namespace Surefoot.Web.Network;

/// <summary>Asks for a new passphrase at the console. Whoever sits there has the machine, so the old one is not asked for.</summary>
internal static class AtTheConsole
{
    /// <returns>0 when a new passphrase is kept.</returns>
    public static int SetPassphrase(Passphrase passphrase)
    {
        var chosen = Ask("The new passphrase (at least three or four words): ");
        // What comes from a file or another program was not typed and holds no slip.
        var again = Console.IsInputRedirected ? chosen : Ask("Once more: ");
        if (PassphraseRules.Fault(chosen, again) is { } fault)
        {
            Console.Error.WriteLine(fault);
            return 1;
        }

        passphrase.Set(chosen);
        Console.WriteLine($"It is kept. Everybody who was signed in is asked for it now. Open the studio with {Asked.Network}.");
        return 0;
    }

    private static string Ask(string question)
    {
        if (Console.IsInputRedirected) return Console.ReadLine() ?? "";
        Console.Write(question);
        var said = new StringBuilder();
        while (Console.ReadKey(intercept: true) is { Key: not ConsoleKey.Enter } key)
        {
            if (key.Key is ConsoleKey.Backspace) said.Length = Math.Max(0, said.Length - 1);
            else if (!char.IsControl(key.KeyChar)) said.Append(key.KeyChar);
        }

        Console.WriteLine();
        return said.ToString();
    }
}

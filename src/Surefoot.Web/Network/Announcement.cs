using System.Text;

namespace Surefoot.Web.Network;

/// <summary>What the console says when the studio is open to the network.</summary>
internal static class Announcement
{
    /// <param name="here">The address on the machine's own screen.</param>
    /// <param name="port">The network's line.</param>
    public static string Of(OpenToNetwork open, string here, int port)
    {
        var said = new StringBuilder();
        var addresses = Reach.WebAddresses(port).ToList();
        if (addresses.Count == 0)
        {
            said.AppendLine("This machine is in no network now. Once it is, others in the hall reach the studio at")
                .AppendLine($"  https://(this machine's address):{port}");
        }
        else
        {
            said.AppendLine("Others in the hall reach the studio at");
            foreach (var address in addresses) said.AppendLine($"  {address}");
            said.AppendLine($"or, where the network knows this machine by name, at https://{Reach.MachineName}.local:{port}");
        }

        said.AppendLine();
        if (open.Passphrase.IsMissing)
        {
            said.AppendLine("Nobody can come in yet. Choose a passphrase first, on this machine's own screen:")
                .AppendLine($"  {here}")
                .AppendLine($"or here, with {Asked.Passphrase} in place of {Asked.Network}.");
        }
        else if (open.Passphrase.IsDamaged)
        {
            said.AppendLine($"Nobody can come in: the file that keeps the passphrase is damaged. Set a new one with {Asked.Passphrase}.");
        }
        else
        {
            said.AppendLine($"Everybody is asked for the passphrase. If it is forgotten, {Asked.Passphrase} sets a new one.");
        }

        said.AppendLine()
            .AppendLine("At first a tablet or telephone will warn that the connection is not private or not trusted: the studio")
            .AppendLine("made its certificate itself, and no authority vouches for a machine in a hall. What is sent is encrypted")
            .AppendLine("all the same. Look at the certificate before going on; its SHA-256 fingerprint has to be");
        foreach (var half in OwnCertificate.Fingerprint(open.Certificate)) said.AppendLine($"  {half}");
        return said.AppendLine("Do this only in a network you trust.").AppendLine().ToString();
    }
}

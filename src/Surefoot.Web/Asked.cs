namespace Surefoot.Web;

/// <summary>What was asked for when the studio was started.</summary>
/// <param name="OpenToNetwork">Others in the hall may reach it, with the passphrase.</param>
/// <param name="NewPassphrase">No studio is opened: a new passphrase is asked for here, at the machine.</param>
/// <param name="Unknown">A word nobody knows; null when all are known.</param>
internal sealed record Asked(bool OpenToNetwork, bool NewPassphrase, string? Unknown)
{
    public const string Network = "--open-to-network";

    public const string Passphrase = "--new-passphrase";

    public static Asked Of(string[] words) =>
        new(words.Contains(Network), words.Contains(Passphrase), words.FirstOrDefault(w => w is not (Network or Passphrase)));
}

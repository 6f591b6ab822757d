using System.Security.Cryptography;

namespace Surefoot.Web.Safety;

/// <summary>A word made new for each answer; only style elements that carry it count (the editor makes its own).</summary>
internal sealed class Nonce
{
    // 128 bits cannot be guessed.
    public string Value { get; } = Convert.ToBase64String(RandomNumberGenerator.GetBytes(16));
}

using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace Surefoot.Web.Network;

/// <summary>
/// The one passphrase of a studio that is open to the network. Only a salted hash of it is kept, in a file, which
/// is looked at again whenever it changed: so a passphrase set at the console holds in the studio that runs.
/// </summary>
internal sealed class Passphrase : IDisposable
{
    /// <summary>Rounds of PBKDF2 with HMAC-SHA-512; what OWASP's cheat sheet for kept passwords asks for (2023). About a tenth of a second.</summary>
    private const int Rounds = 210_000;

    private readonly PasswordHasher<Passphrase> _hasher = new(Options.Create(new PasswordHasherOptions { IterationCount = Rounds }));
    private readonly string _file;
    private readonly Lock _gate = new();
    private CancellationTokenSource _changed = new();
    private (DateTime Written, long Length) _seen;
    private Kept _kept = Kept.Nothing;

    public Passphrase(NetworkFolder folder)
    {
        _file = folder.Passphrase;
        Look();
    }

    /// <summary>Nobody chose one yet.</summary>
    public bool IsMissing => Look().Stamp is null;

    /// <summary>There is one, but its file is damaged: nobody gets in until a new one is set at the console.</summary>
    public bool IsDamaged => Look().Stamp is "";

    /// <summary>A word that changes with the passphrase; whoever signed in under another one is signed out. Null while there is none.</summary>
    public string? Stamp => Look().Stamp;

    /// <summary>Cancelled when the passphrase changes, for what is open for longer than one answer.</summary>
    public CancellationToken Changed
    {
        get
        {
            lock (_gate) return _changed.Token;
        }
    }

    /// <summary>Whether this is the passphrase. Takes as long for a wrong one.</summary>
    public bool Is(string said) =>
        said.Length <= PassphraseRules.Most && Look() is { Hash: { } hash } && _hasher.VerifyHashedPassword(this, hash, said) is not PasswordVerificationResult.Failed;

    /// <summary>Takes a new passphrase in place of the old one, if there was one.</summary>
    public void Set(string chosen) => Write(_hasher.HashPassword(this, chosen), onlyFirst: false);

    /// <summary>Takes a passphrase where there is none yet; false when somebody was faster.</summary>
    public bool SetFirst(string chosen) => Write(_hasher.HashPassword(this, chosen), onlyFirst: true);

    private bool Write(string hash, bool onlyFirst)
    {
        lock (_gate)
        {
            if (onlyFirst && File.Exists(_file)) return false;
            var kept = new Kept(hash, Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)));
            NetworkFolder.Write(_file, JsonSerializer.SerializeToUtf8Bytes(kept));
            // Two in one tick of the disk's clock look alike.
            _seen = default;
        }

        Look();
        return true;
    }

    /// <summary>Looks whether the file changed, and says what is in it.</summary>
    public void LookAgain() => Look();

    private Kept Look()
    {
        CancellationTokenSource? before = null;
        Kept kept;
        lock (_gate)
        {
            var file = new FileInfo(_file);
            var now = file.Exists ? (file.LastWriteTimeUtc, file.Length) : default;
            if (now == _seen) return _kept;
            kept = file.Exists ? Read(_file) : Kept.Nothing;
            // Perhaps it is only being replaced at this moment.
            _seen = kept == Kept.Unreadable ? default : now;
            if (kept.Stamp != _kept.Stamp) (before, _changed) = (_changed, new());
            _kept = kept;
        }

        // Whoever hears it may ask here again, so not while holding the gate.
        before?.Cancel();
        before?.Dispose();
        return kept;
    }

    // What cannot be read lets nobody in, and must not look like a studio whose first passphrase is still to be chosen.
    private static Kept Read(string file)
    {
        try
        {
            return JsonSerializer.Deserialize<Kept>(File.ReadAllBytes(file)) is { Hash.Length: > 0, Stamp.Length: > 0 } kept ? kept : Kept.Unreadable;
        }
        catch (Exception fault) when (fault is JsonException or IOException or UnauthorizedAccessException)
        {
            return Kept.Unreadable;
        }
    }

    public void Dispose() => _changed.Dispose();

    private sealed record Kept(string? Hash, string? Stamp)
    {
        public static readonly Kept Nothing = new(null, null);

        public static readonly Kept Unreadable = new(null, "");
    }
}

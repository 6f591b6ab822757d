using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Surefoot.Web.Network;

/// <summary>
/// The certificate the studio makes for itself, so that what goes through the hall's air is encrypted. No authority
/// vouches for a machine in a hall, so each browser asks once; its fingerprint, compared with the one on the
/// console, says that it is this machine.
/// </summary>
internal static class OwnCertificate
{
    /// <summary>Days it holds: browsers refuse certificates of more than 825 days even where somebody trusts them.</summary>
    private const int Days = 730;

    /// <summary>Days before its end at which a new one is made, so that none ends in the middle of a lesson. Working value.</summary>
    private const int Early = 30;

    public static X509Certificate2 Of(NetworkFolder folder, TimeProvider clock)
    {
        var now = clock.GetUtcNow();
        if (Read(folder.Certificate) is { } kept)
        {
            if (kept.NotBefore.ToUniversalTime() <= now.UtcDateTime && kept.NotAfter.ToUniversalTime() > now.UtcDateTime.AddDays(Early)) return kept;
            kept.Dispose();
        }

        using (var made = Make(now)) NetworkFolder.Write(folder.Certificate, made.Export(X509ContentType.Pfx));
        return Read(folder.Certificate) ?? throw new IOException("The certificate that was just written could not be read.");
    }

    /// <summary>The SHA-256 fingerprint in pairs, two lines of sixteen, as browsers show it.</summary>
    public static IEnumerable<string> Fingerprint(X509Certificate2 certificate) =>
        certificate.GetCertHash(HashAlgorithmName.SHA256).Chunk(16).Select(half => string.Join(' ', half.Select(b => $"{b:X2}")));

    private static X509Certificate2? Read(string file)
    {
        try
        {
            return File.Exists(file) ? X509CertificateLoader.LoadPkcs12FromFile(file, password: null) : null;
        }
        catch (CryptographicException)
        {
            // Damaged: a new one is made, and its fingerprint is another, which the console says as always.
            return null;
        }
    }

    private static X509Certificate2 Make(DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest($"CN=Surefoot on {Reach.MachineName}", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: false, hasPathLengthConstraint: false, 0, critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new("1.3.6.1.5.5.7.3.1")], critical: false)); // for servers
        var names = new SubjectAlternativeNameBuilder();
        foreach (var name in Reach.Names) names.AddDnsName(name);
        names.AddDnsName("localhost");
        foreach (var address in Reach.Addresses().Append(IPAddress.Loopback).Append(IPAddress.IPv6Loopback)) names.AddIpAddress(address);
        request.CertificateExtensions.Add(names.Build());
        // From yesterday, because tablets' clocks differ.
        return request.CreateSelfSigned(now.AddDays(-1), now.AddDays(Days - 1));
    }
}

namespace Surefoot.Web.Deeds;

/// <summary>What a file is by its first bytes; what it or its sender says it is counts for nothing.</summary>
internal static class FileKinds
{
    public static string Of(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => "image/png",
        [0xFF, 0xD8, 0xFF, ..] => "image/jpeg",
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => "image/webp",
        [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] => "application/pdf",
        _ => "application/octet-stream",
    };

    public static bool IsPicture(string kind) => kind.StartsWith("image/", StringComparison.Ordinal);
}

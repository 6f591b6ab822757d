using System.Buffers.Binary;
using System.Text;
using Microsoft.Playwright;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web;

/// <summary>A dance with the captions of a film, and something a browser plays as a film, made here.</summary>
internal static class Films
{
    /// <summary>Seconds of <see cref="Sound"/>, a little longer than the captions.</summary>
    public const int Long = 70;

    /// <summary>Samples a second.</summary>
    private const int Rate = 8000;

    /// <summary>Captions of an invented film, with the mistakes their notes tell; it ends with the dance at 108 counts a minute.</summary>
    public static string Captions { get; } = File.ReadAllText(Root.At("corpus", "films", "buckets-run.srt"));

    /// <summary>
    /// Silence as a WAVE file (Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0, 1991):
    /// browsers play it as they play a film, and can go to any moment of it.
    /// </summary>
    public static byte[] Sound { get; } = Shortened(Long);

    public static FilePayload OnTheDevice => new() { Name = "run-through.wav", MimeType = "audio/wav", Buffer = Sound };

    /// <summary>A copy of the demo's dance, for one test alone.</summary>
    public static async Task<long> DanceAsync(Studio studio, string? captions = null, string address = "")
    {
        var page = await studio.AddAsync(await File.ReadAllTextAsync(Root.At("demo", "dances", "circle", "nine-buckets-cha-cha.dance")));
        using var library = await studio.LookAsync();
        if (captions is not null) Assert.Null(await library.Films.KeepCaptionsAsync(page, "buckets-run.srt", captions));
        if (address.Length > 0) Assert.Null(await library.Films.KeepAddressAsync(page, address));
        return page;
    }

    /// <summary>Chooses the film on the page as somebody would, and waits until it could play.</summary>
    public static async Task ChooseAsync(IPage page)
    {
        await page.SetInputFilesAsync("[data-part=film-file]", OnTheDevice);
        await page.WaitForSelectorAsync(".film-place[data-playing]");
    }

    /// <summary>Where the film stands, in seconds.</summary>
    public static Task<double> AtAsync(IPage page) => page.EvaluateAsync<double>("() => document.querySelector('video').currentTime");

    /// <summary>Takes the film to a moment without playing it.</summary>
    public static Task ToAsync(IPage page, double seconds) => page.EvaluateAsync("t => new Promise(done => { const film = document.querySelector('video'); film.pause(); film.addEventListener('seeked', done, { once: true }); film.currentTime = t; })", seconds);

    /// <summary>The same of another length, in seconds.</summary>
    public static byte[] Shortened(int seconds)
    {
        var samples = seconds * Rate;
        var file = new byte[44 + samples];
        var head = file.AsSpan();
        // Eight bits a sample have their middle at 128.
        head[44..].Fill(128);
        Encoding.ASCII.GetBytes("RIFF", head);
        BinaryPrimitives.WriteInt32LittleEndian(head[4..], 36 + samples);
        Encoding.ASCII.GetBytes("WAVEfmt ", head[8..]);
        BinaryPrimitives.WriteInt32LittleEndian(head[16..], 16);
        // Plain samples, one channel.
        BinaryPrimitives.WriteInt16LittleEndian(head[20..], 1);
        BinaryPrimitives.WriteInt16LittleEndian(head[22..], 1);
        BinaryPrimitives.WriteInt32LittleEndian(head[24..], Rate);
        BinaryPrimitives.WriteInt32LittleEndian(head[28..], Rate);
        BinaryPrimitives.WriteInt16LittleEndian(head[32..], 1);
        BinaryPrimitives.WriteInt16LittleEndian(head[34..], 8);
        Encoding.ASCII.GetBytes("data", head[36..]);
        BinaryPrimitives.WriteInt32LittleEndian(head[40..], samples);
        return file;
    }
}

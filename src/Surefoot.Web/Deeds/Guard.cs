using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.Features;

namespace Surefoot.Web.Deeds;

/// <summary>
/// Every form passes here: it is no larger than its page said, and comes from a page of this studio (it carries
/// the page's token). What does not pass leads back with a sentence, and nothing is done.
/// </summary>
internal static class Guard
{
    /// <summary>Bytes of a form without files: a pasted page of 1 MB, three times as large when all its letters are written as numbers.</summary>
    public const long FormBytes = 4 << 20;

    /// <summary>Bytes that the fields and heads around an upload's files may take.</summary>
    private const long Around = 1 << 20;

    /// <summary>Bytes beyond that are heard and forgotten, so that whoever sent a little too much is told so; more than these close the line. Working value.</summary>
    public const long Grace = 64 << 20;

    /// <summary>Fields of a form: the settings have some 15.</summary>
    private const int Values = 64;

    /// <param name="deeds">The group of forms.</param>
    /// <param name="home">The page to lead back to.</param>
    /// <param name="fileBytes">Bytes of all files together; 0 for forms without files.</param>
    /// <param name="files">How many files.</param>
    /// <param name="formBytes">Bytes of a form without files.</param>
    /// <param name="grace">Bytes beyond what it may be that are heard and forgotten: none from strangers.</param>
    /// <param name="values">How many fields.</param>
    public static RouteGroupBuilder Guarded(this RouteGroupBuilder deeds, Func<HttpContext, string> home, long fileBytes = 0, int files = 0, long formBytes = FormBytes, long grace = Grace, int values = Values)
    {
        var most = fileBytes == 0 ? formBytes : fileBytes + Around + (files * 1024L);
        var options = new FormOptions
        {
            MultipartBodyLengthLimit = most,
            ValueCountLimit = Math.Max(values, files),
            ValueLengthLimit = (int)FormBytes,
            BufferBodyLengthLimit = most,
        };
        deeds.AddEndpointFilter(async (call, next) =>
        {
            var context = call.HttpContext;
            var notes = context.RequestServices.GetRequiredService<Notes>();
            try
            {
                if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size) size.MaxRequestBodySize = most + grace;
                if (!context.Request.HasFormContentType) return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
                await context.Request.ReadFormAsync(options, context.RequestAborted);
            }
            catch (Exception fault) when (fault is InvalidDataException or BadHttpRequestException)
            {
                // A browser hears an answer only once it has sent everything.
                if (fault is InvalidDataException) await DrainAsync(context);
                return notes.Say(home(context), new(fileBytes == 0 ? "That was more than can be sent at once. Nothing was done." : $"That was more than can be sent at once (up to {files} files, {fileBytes >> 20} MB together). Nothing was taken.", Bad: true));
            }

            return await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context)
                ? await next(call)
                : notes.Say(home(context), new("The page was older than this studio, which was started again since. Nothing was done; please do it once more.", Bad: true));
        });
        return deeds;
    }

    private static async Task DrainAsync(HttpContext context)
    {
        try
        {
            await context.Request.Body.CopyToAsync(Stream.Null, context.RequestAborted);
        }
        catch (Exception fault) when (fault is IOException or BadHttpRequestException or OperationCanceledException)
        {
            // Far too much: the line is closed.
        }
    }

    /// <summary>Where a form wants to go back to: a list of the shelf, or the shelf.</summary>
    public static string Back(HttpContext context) =>
        context.Request.HasFormContentType && context.Features.Get<IFormFeature>()?.Form is { } form && form["back"].ToString() is { } back && back.StartsWith("/?", StringComparison.Ordinal) ? back : "/";
}

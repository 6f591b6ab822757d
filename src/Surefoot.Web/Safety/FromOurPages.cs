namespace Surefoot.Web.Safety;

/// <summary>
/// Lets only the studio's own pages write. A browser says with everything it sends by which page it was sent;
/// <see cref="OnlyHere"/> has refused other pages, and here silence is refused too.
/// </summary>
internal sealed class FromOurPages : IEndpointFilter
{
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var headers = context.HttpContext.Request.Headers;
        var elsewhere = headers["Sec-Fetch-Site"] is [{ } site] && site is not "same-origin";
        return headers.Origin.Count == 1 && !elsewhere ? await next(context) : Results.Text("Only the studio's own pages may write.", statusCode: StatusCodes.Status403Forbidden);
    }
}

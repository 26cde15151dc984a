namespace ShopClass.Web.Features.Shell;

/// <summary>
/// What a browser may do with our pages: fetch from us and nobody else, run no inline script, be framed by nobody.
/// Style attributes are allowed because the component library and the drawings set them.
/// </summary>
public static class SecurityHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
        + "font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'; "
        + "object-src 'none'; manifest-src 'self'";

    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) =>
        app.Use(
            (http, next) =>
            {
                http.Response.OnStarting(() =>
                {
                    Set(http.Response);
                    return Task.CompletedTask;
                });
                return next(http);
            }
        );

    private static void Set(HttpResponse response)
    {
        var headers = response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        if (response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) is true)
            headers.CacheControl = "no-store";
    }
}

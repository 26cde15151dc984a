using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Options;

namespace ShopClass.Web.Features.Shell;

/// <summary>
/// Compresses the bench's pages too, which a weak signal must carry. They can be: the only secret in them, the form's
/// token, is masked anew in every answer, so that the size of the compressed page tells nothing about it.
/// </summary>
public sealed class BenchCompression(
    IServiceProvider services,
    IOptions<ResponseCompressionOptions> options
) : ResponseCompressionProvider(services, options)
{
    public override bool ShouldCompressResponse(HttpContext context) =>
        base.ShouldCompressResponse(context)
        || (
            context.Response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) is true
            && context.GetEndpoint()?.Metadata.GetMetadata<BenchAttribute>() is not null
        );
}

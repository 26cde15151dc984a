using SkiaSharp;

namespace ShopClass.Web.Features.Logging;

/// <summary>Why a photo is not taken.</summary>
public enum PhotoFault
{
    /// <summary>Its file is over <see cref="PhotoReader.MostBytes"/>.</summary>
    TooLarge,

    /// <summary>It has too many points.</summary>
    TooManyPoints,

    /// <summary>It cannot be read as a picture.</summary>
    NoPhoto,

    /// <summary>Nothing was chosen.</summary>
    Nothing,
}

/// <summary>
/// Makes a photo fit to be kept: read as a picture and written anew as a small JPEG, so that nothing of the file but its
/// picture is left, neither place and time nor the phone it was taken with. It is turned the way it was held.
/// </summary>
public static class PhotoReader
{
    /// <summary>Most bytes a photo may have when it is sent.</summary>
    public const int MostBytes = 20 * 1024 * 1024;

    /// <summary>The longer side of a kept photo, in pixels.</summary>
    public const int LongestSide = 1280;

    /// <summary>What is wrong, and what to do.</summary>
    public static string Sentence(PhotoFault fault) =>
        fault switch
        {
            PhotoFault.TooLarge =>
                $"That file is larger than {MostBytes / (1024 * 1024)} MB, the most that is taken. Take the photo once more in a smaller size, or go on without one. Nothing else is lost.",
            PhotoFault.TooManyPoints =>
                "That picture has too many points to be read here. Take the photo once more in a smaller size, or go on without one. Nothing else is lost.",
            PhotoFault.NoPhoto =>
                "That file is no photo that can be read here. Choose a JPEG or PNG picture, or go on without one. Nothing else is lost.",
            _ => "No photo was chosen. Take or choose one, or go on without.",
        };

    private const int MostPixels = 100_000_000;
    private const int Quality = 75;

    /// <summary>The small JPEG, or why there is none.</summary>
    public static (byte[]? Jpeg, PhotoFault? Fault) Read(byte[] file)
    {
        if (file.Length > MostBytes)
            return (null, PhotoFault.TooLarge);
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.Info.Width <= 0 || codec.Info.Height <= 0)
            return (null, PhotoFault.NoPhoto);
        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
            return (null, PhotoFault.TooManyPoints);
        using var whole = Decoded(codec);
        if (whole is null)
            return (null, PhotoFault.NoPhoto);
        using var upright = Upright(whole, codec.EncodedOrigin);
        using var image = SKImage.FromBitmap(upright);
        using var jpeg = image.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return (jpeg.ToArray(), null);
    }

    // Some formats come out smaller by themselves, which spares the memory of the whole.
    private static SKBitmap? Decoded(SKCodec codec)
    {
        var near = Enumerable
            .Range(1, 8)
            .Select(eighths => codec.GetScaledDimensions(eighths / 8f))
            .FirstOrDefault(
                size => Math.Max(size.Width, size.Height) >= LongestSide,
                codec.Info.Size
            );
        var info = new SKImageInfo(
            near.Width,
            near.Height,
            SKColorType.Rgba8888,
            SKAlphaType.Premul
        );
        var bitmap = new SKBitmap(info);
        if (codec.GetPixels(info, bitmap.GetPixels()) is SKCodecResult.Success)
            return bitmap;
        bitmap.Dispose();
        return null;
    }

    private static SKBitmap Upright(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        var scale = Math.Min(1f, (float)LongestSide / Math.Max(bitmap.Width, bitmap.Height));
        var (width, height) = (
            Math.Max(1, (int)MathF.Round(bitmap.Width * scale)),
            Math.Max(1, (int)MathF.Round(bitmap.Height * scale))
        );
        var lies = origin >= SKEncodedOrigin.LeftTop;
        var turned = new SKBitmap(
            new SKImageInfo(lies ? height : width, lies ? width : height, SKColorType.Rgba8888)
        );
        using var canvas = new SKCanvas(turned);
        canvas.Clear(SKColors.White);
        canvas.Concat(Turn(origin, width, height));
        using var image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(
            image,
            SKRect.Create(width, height),
            new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear)
        );
        return turned;
    }

    // The eight ways a picture may lie in its file (TIFF 6.0, field 274, Orientation; Exif uses the same).
    private static SKMatrix Turn(SKEncodedOrigin origin, float w, float h) =>
        origin switch
        {
            SKEncodedOrigin.TopRight => new(-1, 0, w, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new(-1, 0, w, 0, -1, h, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, h, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new(0, -1, h, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new(0, -1, h, -1, 0, w, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, w, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
}

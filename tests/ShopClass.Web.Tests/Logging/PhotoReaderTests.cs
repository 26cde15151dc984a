using System.Buffers.Binary;
using ShopClass.Web.Features.Logging;
using SkiaSharp;

namespace ShopClass.Web.Tests.Logging;

public sealed class PhotoReaderTests
{
    [Fact]
    public void A_photo_is_made_small_and_nothing_but_its_picture_is_left()
    {
        var photo = Photos.Jpeg(3000, 1000, orientation: 1);
        Assert.True(Photos.Holds(photo, "Exif"));
        Assert.True(Photos.Holds(photo, "47.3769 N 8.5417 E"));

        var (jpeg, fault) = PhotoReader.Read(photo);

        Assert.Null(fault);
        Assert.False(Photos.Holds(jpeg!, "Exif"));
        Assert.False(Photos.Holds(jpeg!, "47.3769"));
        using var read = SKBitmap.Decode(jpeg);
        Assert.Equal(PhotoReader.LongestSide, Math.Max(read.Width, read.Height));
        Assert.Equal(3.0, (double)read.Width / read.Height, 1);
    }

    // Exif 2.3, tag 274 Orientation: which corner of the file's picture is the upper left one of what was seen.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 2)]
    [InlineData(6, 3)]
    [InlineData(8, 1)]
    public void It_is_turned_the_way_it_was_held(int orientation, int cornerUpperLeft)
    {
        var (jpeg, _) = PhotoReader.Read(Photos.Jpeg(400, 200, orientation));

        using var read = SKBitmap.Decode(jpeg);
        Assert.Equal(orientation >= 5, read.Height > read.Width);
        // Corners of the file, clockwise from its upper left: red, green, blue, white.
        SKColor[] corners = [SKColors.Red, SKColors.Lime, SKColors.Blue, SKColors.White];
        var upperLeft = read.GetPixel(10, 10);
        Assert.Equal(
            corners[cornerUpperLeft],
            corners.MinBy(c =>
                Math.Abs(c.Red - upperLeft.Red)
                + Math.Abs(c.Green - upperLeft.Green)
                + Math.Abs(c.Blue - upperLeft.Blue)
            )
        );
    }

    [Fact]
    public void What_is_no_photo_is_told_apart()
    {
        Assert.Equal(PhotoFault.NoPhoto, PhotoReader.Read([]).Fault);
        Assert.Equal(PhotoFault.NoPhoto, PhotoReader.Read([.. "MZ not a photo"u8]).Fault);
        Assert.Equal(PhotoFault.NoPhoto, PhotoReader.Read(Photos.Jpeg(300, 300)[..600]).Fault);
        Assert.Equal(
            PhotoFault.NoPhoto,
            PhotoReader.Read([.. "<svg xmlns='http://www.w3.org/2000/svg'/>"u8]).Fault
        );
        Assert.Equal(
            PhotoFault.TooLarge,
            PhotoReader.Read(new byte[PhotoReader.MostBytes + 1]).Fault
        );
    }

    [Fact]
    public void A_small_file_that_claims_a_giant_picture_is_refused_unread()
    {
        Assert.Equal(PhotoFault.TooManyPoints, PhotoReader.Read(Photos.GiantPng()).Fault);
    }
}

/// <summary>Photos made for tests.</summary>
internal static class Photos
{
    /// <summary>A JPEG with a colour in each quarter, and an Exif block with an orientation and a place.</summary>
    public static byte[] Jpeg(int width, int height, int orientation = 1)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            var (w, h) = (width / 2, height / 2);
            Fill(0, 0, SKColors.Red);
            Fill(w, 0, SKColors.Lime);
            Fill(w, h, SKColors.Blue);
            Fill(0, h, SKColors.White);

            void Fill(float x, float y, SKColor colour)
            {
                using var paint = new SKPaint { Color = colour };
                canvas.DrawRect(x, y, w, h, paint);
            }
        }

        using var image = SKImage.FromBitmap(bitmap);
        var plain = image.Encode(SKEncodedImageFormat.Jpeg, 90).ToArray();
        var exif = Exif((ushort)orientation);
        return [.. plain[..2], .. exif, .. plain[2..]];
    }

    /// <summary>A PNG of a few bytes whose head says 30,000 by 30,000 points.</summary>
    public static byte[] GiantPng()
    {
        using var bitmap = new SKBitmap(1, 1);
        using var image = SKImage.FromBitmap(bitmap);
        var png = image.Encode(SKEncodedImageFormat.Png, 100).ToArray();
        BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(16), 30_000);
        BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(20), 30_000);
        var crc = Crc32(png.AsSpan(12, 17));
        BinaryPrimitives.WriteUInt32BigEndian(png.AsSpan(29), crc);
        return png;
    }

    // PNG (ISO/IEC 15948), annex D.
    private static uint Crc32(ReadOnlySpan<byte> bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xEDB88320u : crc >> 1;
        }

        return ~crc;
    }

    public static bool Holds(byte[] bytes, string text) =>
        bytes.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(text)) >= 0;

    // APP1 "Exif" with one directory of two entries, little-endian (TIFF 6.0; Exif 2.3, 4.6.4).
    private static byte[] Exif(ushort orientation)
    {
        var place = System.Text.Encoding.ASCII.GetBytes("47.3769 N 8.5417 E\0");
        var tiff = new List<byte>();
        tiff.AddRange("II"u8);
        Short(42);
        Long(8);
        Short(2);
        Short(0x010E);
        Short(2);
        Long((uint)place.Length);
        Long(8 + 2 + 2 * 12 + 4);
        Short(0x0112);
        Short(3);
        Long(1);
        Short(orientation);
        Short(0);
        Long(0);
        tiff.AddRange(place);
        var body = (byte[])[.. "Exif\0\0"u8, .. tiff];
        var size = body.Length + 2;
        return [0xFF, 0xE1, (byte)(size >> 8), (byte)(size & 255), .. body];

        void Short(ushort value) => tiff.AddRange([(byte)(value & 255), (byte)(value >> 8)]);

        void Long(uint value) =>
            tiff.AddRange([
                (byte)(value & 255),
                (byte)((value >> 8) & 255),
                (byte)((value >> 16) & 255),
                (byte)(value >> 24),
            ]);
    }
}

using System.Text.Json;
using System.Text.Json.Serialization;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Boards;

/// <summary>Keeps a length in a draft as its exact whole number of ticks.</summary>
public sealed class LengthAsTicks : JsonConverter<Length>
{
    public override Length Read(
        ref Utf8JsonReader reader,
        Type typeToConvert,
        JsonSerializerOptions options
    ) => Length.FromTicks(reader.GetInt64());

    public override void Write(
        Utf8JsonWriter writer,
        Length value,
        JsonSerializerOptions options
    ) => writer.WriteNumberValue(value.Ticks);
}

using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using ShopClass.Core.Courses;
using ShopClass.Core.Lessons;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Paces;
using ShopClass.Core.Projects;

namespace ShopClass.Data.Store;

/// <summary>How Core's records are kept as JSON inside the store: lengths as ticks, areas as square ticks, choices by name.</summary>
public static class ShopJson
{
    private static readonly Dictionary<(Type, string), object?> Usual = new()
    {
        [(typeof(Board), nameof(Board.Cup))] = Length.Zero,
        [(typeof(Board), nameof(Board.Twist))] = Length.Zero,
        [(typeof(Lesson), nameof(Lesson.Start))] = null,
        [(typeof(LessonRequest), nameof(LessonRequest.Pace))] = null,
        [(typeof(StudentWork), nameof(StudentWork.Pace))] = null,
        [(typeof(Joint), nameof(Joint.FromEdge))] = null,
        [(typeof(PaceFactor), nameof(PaceFactor.Before))] = 0,
        [(typeof(OpenDimension), nameof(OpenDimension.Event))] = null,
        [(typeof(CourseRules), nameof(CourseRules.ShopHumidity))] = RuleBook.UsualShopHumidity,
        [(typeof(CourseRules), nameof(CourseRules.RoomHumidity))] = RuleBook.UsualRoomHumidity,
    };

    /// <summary>The settings for everything kept as JSON.</summary>
    public static JsonSerializerOptions Options { get; } = Make();

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions
        {
            TypeInfoResolver = new DefaultJsonTypeInfoResolver
            {
                Modifiers = { TheUsualIsNotSaid },
            },
            // What can be worked out again (an area, a smallest width) is not kept.
            IgnoreReadOnlyProperties = true,
            Converters =
            {
                new LengthJson(),
                new AreaJson(),
                new SortedCountsJson(),
                new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false),
            },
        };
        options.MakeReadOnly();
        return options;
    }

    /// <summary>
    /// What came later is left out where it is as usual: a plan stored before boards had a cup, or courses a humidity, keeps
    /// its fingerprint.
    /// </summary>
    private static void TheUsualIsNotSaid(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
        {
            if (Usual.TryGetValue((type.Type, property.Name), out var usual))
                property.ShouldSerialize = (_, value) => !Equals(usual, value);
        }
    }
}

/// <summary>Keeps a length as its exact whole number of ticks.</summary>
public sealed class LengthJson : JsonConverter<Length>
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

internal sealed class AreaJson : JsonConverter<Area>
{
    public override Area Read(
        ref Utf8JsonReader reader,
        Type type,
        JsonSerializerOptions options
    ) => Area.FromSquareTicks(Int128.Parse(reader.GetString() ?? "", CultureInfo.InvariantCulture));

    public override void Write(Utf8JsonWriter writer, Area value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.SquareTicks.ToString(CultureInfo.InvariantCulture));
}

/// <summary>Counts by letter come back in the order of the letters, whatever order they were in.</summary>
internal sealed class SortedCountsJson : JsonConverter<IReadOnlyDictionary<string, int>>
{
    public override IReadOnlyDictionary<string, int> Read(
        ref Utf8JsonReader reader,
        Type type,
        JsonSerializerOptions options
    ) =>
        new SortedDictionary<string, int>(
            JsonSerializer.Deserialize<Dictionary<string, int>>(ref reader, options) ?? [],
            StringComparer.Ordinal
        );

    public override void Write(
        Utf8JsonWriter writer,
        IReadOnlyDictionary<string, int> value,
        JsonSerializerOptions options
    )
    {
        writer.WriteStartObject();
        foreach (var (letter, count) in value.OrderBy(v => v.Key, StringComparer.Ordinal))
        {
            writer.WriteNumber(letter, count);
        }

        writer.WriteEndObject();
    }
}

using System.Text.Json;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using ShopClass.Core.Measure;

namespace ShopClass.Data.Store;

/// <summary>A length as a column: whole ticks of 1/1600 mm, so that the database can sort and add.</summary>
public sealed class LengthColumn()
    : ValueConverter<Length, long>(length => length.Ticks, ticks => Length.FromTicks(ticks));

/// <summary>A moment as a column. SQLite forgets the kind, so what is read is marked as UTC again.</summary>
public sealed class UtcColumn()
    : ValueConverter<DateTime, DateTime>(
        moment => moment.ToUniversalTime(),
        stored => DateTime.SpecifyKind(stored, DateTimeKind.Utc)
    );

/// <summary>A short list that is only ever read and written with its row, kept as JSON in one column.</summary>
/// <typeparam name="T">What the list holds.</typeparam>
public sealed class ListColumn<T>()
    : ValueConverter<IReadOnlyList<T>, string>(
        list => JsonSerializer.Serialize(list, ShopJson.Options),
        json =>
            JsonSerializer.Deserialize<IReadOnlyList<T>>(json, ShopJson.Options) ?? Array.Empty<T>()
    );

/// <summary>Two such lists are the same when they hold the same in the same order.</summary>
/// <typeparam name="T">What the list holds.</typeparam>
public sealed class ListComparer<T>()
    : ValueComparer<IReadOnlyList<T>>(
        (a, b) => (a ?? Array.Empty<T>()).SequenceEqual(b ?? Array.Empty<T>()),
        list => list.Aggregate(0, (hash, item) => HashCode.Combine(hash, item)),
        list => list.ToList()
    );

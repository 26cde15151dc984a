using System.Collections.Immutable;

namespace ShopClass.Data.Access;

/// <summary>What has just happened in a class.</summary>
public enum NewsKind
{
    /// <summary>Somebody asked to come in, came in, or the door changed.</summary>
    Joining,

    /// <summary>A student did something to a step, or it was checked off.</summary>
    Progress,

    /// <summary>A student was seen after being away, so that "here" changes.</summary>
    Presence,

    /// <summary>A student, one of their devices, a helper or a stand-in may not be here any longer.</summary>
    Ended,
}

/// <summary>One piece of news; it carries keys only, and whoever hears it reads the rest with their own rights.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="CourseId">In which course.</param>
/// <param name="StudentId">About which student; null when about none in particular.</param>
/// <param name="DeviceId">About which device; null for all of the student's.</param>
public sealed record News(
    NewsKind Kind,
    Guid CourseId,
    Guid? StudentId = null,
    Guid? DeviceId = null
)
{
    /// <summary>Which instructor's account; null when it is about none.</summary>
    public string? AccountId { get; init; }
}

/// <summary>Tells open pages of this process what has been stored. Told only after the write is durable.</summary>
public sealed class ClassNews
{
    private ImmutableList<Action<News>> listeners = [];

    /// <summary>Calls back for every piece of news until disposed. The call comes on the teller's thread: be quick.</summary>
    public IDisposable Listen(Action<News> listener)
    {
        ImmutableInterlocked.Update(ref listeners, static (all, one) => all.Add(one), listener);
        return new Listening(this, listener);
    }

    public void Tell(News news)
    {
        foreach (var listener in listeners)
            listener(news);
    }

    private sealed class Listening(ClassNews news, Action<News> listener) : IDisposable
    {
        public void Dispose() =>
            ImmutableInterlocked.Update(
                ref news.listeners,
                static (all, one) => all.Remove(one),
                listener
            );
    }
}

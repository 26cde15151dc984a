using Microsoft.JSInterop;

namespace ShopClass.Web.Features.Boards;

/// <summary>Keeps text in the browser tab, so that a lost connection, a reload or a restarted server loses nothing.</summary>
public sealed class KeptText(IJSRuntime js, string key) : IAsyncDisposable
{
    private IJSObjectReference? _module;

    public Task KeepAsync(string text) => TryAsync(m => m.InvokeVoidAsync("keep", key, text));

    public Task DropAsync() => TryAsync(m => m.InvokeVoidAsync("drop", key));

    public async Task<string?> ReadAsync()
    {
        string? text = null;
        await TryAsync(async m => text = await m.InvokeAsync<string?>("read", key));
        return text;
    }

    public async ValueTask DisposeAsync()
    {
        if (_module is not null)
            await TryAsync(m => m.DisposeAsync());
    }

    /// <summary>While the connection is down nothing can be kept; the page goes on.</summary>
    private async Task TryAsync(Func<IJSObjectReference, ValueTask> act)
    {
        try
        {
            _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./scripts/kept.js");
            await act(_module);
        }
        catch (JSDisconnectedException) { }
        catch (OperationCanceledException) { }
    }
}

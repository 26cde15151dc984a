using System.Net;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace ShopClass.Web.Tests.Access;

/// <summary>A browser without scripts: keeps its cookies, fills in forms as they stand on the page.</summary>
public sealed class Visitor(HttpClient client)
{
    private static readonly HtmlParser Parser = new();

    public Task<HttpResponseMessage> Get(string path) =>
        client.GetAsync(new Uri(path, UriKind.Relative));

    public async Task<IHtmlDocument> Read(string path)
    {
        var response = await Get(path);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return await Parse(response);
    }

    public static async Task<IHtmlDocument> Parse(HttpResponseMessage response) =>
        await Parser.ParseDocumentAsync(await response.Content.ReadAsStringAsync());

    /// <summary>Fills in and posts the page's form that has this button.</summary>
    public async Task<HttpResponseMessage> Submit(
        string page,
        string button,
        params (string Field, string Value)[] filled
    )
    {
        var document = await Read(page);
        var form = document
            .Forms.OfType<IHtmlFormElement>()
            .Single(f => f.QuerySelectorAll("button").Any(b => b.TextContent.Trim() == button));
        var fields = form.QuerySelectorAll("input[type=hidden]")
            .OfType<IHtmlInputElement>()
            .ToDictionary(i => i.Name!, i => i.Value);
        foreach (var (field, value) in filled)
        {
            var input = form.QuerySelector($"#{field}")!;
            fields[input.GetAttribute("name")!] = value;
        }
        var address = form.GetAttribute("action") is { Length: > 0 } action ? action : page;
        return await Post(address, fields);
    }

    /// <summary>The hidden fields of the page's form in its main part, as they would be sent.</summary>
    public static Dictionary<string, string> Hidden(IHtmlDocument page) =>
        page.QuerySelectorAll("main form input[type=hidden]")
            .OfType<IHtmlInputElement>()
            .ToDictionary(i => i.Name!, i => i.Value, StringComparer.Ordinal);

    public Task<HttpResponseMessage> Post(string path, IDictionary<string, string> fields) =>
        client.PostAsync(new Uri(path, UriKind.Relative), new FormUrlEncodedContent(fields));

    public async Task<Visitor> SignIn(string name, string password = OpenShop.Password)
    {
        var response = await TrySignIn(name, password);
        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        return this;
    }

    public Task<HttpResponseMessage> TrySignIn(string name, string password) =>
        Submit("/account/sign-in", "Sign in", ("name", name), ("password", password));

    public async Task<Visitor> OpenDemo()
    {
        var response = await Submit("/account/sign-in", "Open it as the instructor");
        Assert.Equal("/courses", response.Headers.Location?.OriginalString);
        return this;
    }

    public async Task<Visitor> OpenDemoAs(Guid student)
    {
        var response = await Submit(
            "/account/sign-in",
            "Open as this student",
            ("who", student.ToString())
        );
        Assert.Equal("/my", response.Headers.Location?.OriginalString);
        return this;
    }
}

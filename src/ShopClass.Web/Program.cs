using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using MudBlazor.Services;
using ShopClass.Web.Components;
using ShopClass.Web.Features.Shell;

var builder = WebApplication.CreateBuilder(args);
builder
    .Services.AddAuthentication(IdentityConstants.ApplicationScheme)
    .AddCookie(
        IdentityConstants.ApplicationScheme,
        cookie => cookie.LoginPath = "/account/sign-in"
    );
builder.Services.AddAuthorization();
builder.Services.AddCascadingAuthenticationState();
builder.Services.AddShopPages(builder.Environment);

var app = builder.Build();
app.UseShopPages();
app.Run();

using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using ShopClass.Core.Lumber;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Orders;

/// <summary>The tables of a class's materials.</summary>
internal static class OrderMaps
{
    public static void Map(ModelBuilder builder)
    {
        builder.Entity<SellerRow>(MapSeller);
        builder.Entity<RackRow>(MapRack);
        builder.Entity<OrderRow>(MapOrder);
        builder.Entity<KitsRow>(MapKits);
        builder.Entity<PrintDeskRow>(MapDesk);
    }

    private static void MapSeller(EntityTypeBuilder<SellerRow> seller)
    {
        seller.ToTable("Sellers");
        seller.Property(s => s.Id).ValueGeneratedNever();
        seller.Property(s => s.Name).HasMaxLength(StoreLimits.LongestName);
        seller.Property(s => s.Currency).HasMaxLength(3);
        seller.Property(s => s.Version).IsConcurrencyToken();
        seller
            .Property(s => s.Stock)
            .HasConversion<ListColumn<PricedStock>, ListComparer<PricedStock>>();
        seller
            .HasOne(s => s.Course)
            .WithMany(c => c.Sellers)
            .HasForeignKey(s => s.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapOrder(EntityTypeBuilder<OrderRow> order)
    {
        order.ToTable("ClassOrders");
        order.Property(o => o.Id).ValueGeneratedNever();
        order.Property(o => o.Version).IsConcurrencyToken();
        order.Property(o => o.Arrived).HasConversion<ListColumn<Arrived>, ListComparer<Arrived>>();
        order
            .HasOne(o => o.Project)
            .WithMany()
            .HasForeignKey(o => o.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
        order.HasIndex(o => new { o.ProjectId, o.Number }).IsUnique();
    }

    private static void MapKits(EntityTypeBuilder<KitsRow> kits)
    {
        kits.ToTable("ProjectKits");
        kits.HasKey(k => k.ProjectId);
        kits.Property(k => k.Version).IsConcurrencyToken();
        kits.Property(k => k.Supplies).HasConversion<ListColumn<Supply>, ListComparer<Supply>>();
        kits.Property(k => k.Marks).HasConversion<ListColumn<KitMark>, ListComparer<KitMark>>();
        kits.HasOne(k => k.Project)
            .WithOne(p => p.Kits)
            .HasForeignKey<KitsRow>(k => k.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapDesk(EntityTypeBuilder<PrintDeskRow> desk)
    {
        desk.ToTable("PrintDesks");
        desk.HasKey(d => d.CourseId);
        desk.Property(d => d.Address).HasMaxLength(120);
        desk.Property(d => d.Version).IsConcurrencyToken();
        desk.Property(d => d.Labels).HasConversion<JsonColumn<LabelSetting>>();
        desk.HasOne(d => d.Course)
            .WithOne(c => c.Desk)
            .HasForeignKey<PrintDeskRow>(d => d.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    private static void MapRack(EntityTypeBuilder<RackRow> rack)
    {
        rack.ToTable("RackPieces");
        rack.Property(r => r.Id).ValueGeneratedNever();
        rack.Property(r => r.Place).HasMaxLength(RackChecks.LongestPlace);
        rack.Property(r => r.State).HasConversion<string>().HasMaxLength(20);
        rack.Property(r => r.Version).IsConcurrencyToken();
        rack.Property(r => r.Board).HasConversion<JsonColumn<Board>>();
        rack.HasOne(r => r.Course)
            .WithMany(c => c.Rack)
            .HasForeignKey(r => r.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

/// <summary>A record that is only ever read and written whole, kept as JSON in one column.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class JsonColumn<T>()
    : ValueConverter<T, string>(
        value => JsonSerializer.Serialize(value, ShopJson.Options),
        json => JsonSerializer.Deserialize<T>(json, ShopJson.Options)!
    )
    where T : class;

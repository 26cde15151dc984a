using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Data.Access;

namespace ShopClass.Data.Joining;

/// <summary>The tables of doors, devices and one-time codes.</summary>
internal sealed class JoiningMap
    : IEntityTypeConfiguration<DoorRow>,
        IEntityTypeConfiguration<DeviceRow>,
        IEntityTypeConfiguration<StudentCodeRow>
{
    private const int HashLength = 64;

    public static void Apply(ModelBuilder builder)
    {
        var map = new JoiningMap();
        builder.ApplyConfiguration<DoorRow>(map);
        builder.ApplyConfiguration<DeviceRow>(map);
        builder.ApplyConfiguration<StudentCodeRow>(map);
    }

    public void Configure(EntityTypeBuilder<DoorRow> builder)
    {
        builder.ToTable("Doors");
        builder.HasKey(d => d.CourseId);
        builder.Property(d => d.Code).HasMaxLength(JoinCode.Length);
        builder.HasIndex(d => d.Code).IsUnique();
        builder
            .HasOne(d => d.Course)
            .WithOne()
            .HasForeignKey<DoorRow>(d => d.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    public void Configure(EntityTypeBuilder<DeviceRow> builder)
    {
        builder.ToTable("Devices");
        builder.Property(d => d.Id).ValueGeneratedNever();
        builder.Property(d => d.AskedName).HasMaxLength(StoreLimits.LongestName);
        builder.Property(d => d.TokenHash).HasMaxLength(HashLength);
        builder.Property(d => d.Kind).HasMaxLength(40);
        builder.HasIndex(d => d.TokenHash).IsUnique();
        builder
            .HasOne(d => d.Course)
            .WithMany()
            .HasForeignKey(d => d.CourseId)
            .OnDelete(DeleteBehavior.Cascade);
        builder
            .HasOne(d => d.Student)
            .WithMany()
            .HasForeignKey(d => d.StudentId)
            .OnDelete(DeleteBehavior.Cascade);
    }

    public void Configure(EntityTypeBuilder<StudentCodeRow> builder)
    {
        builder.ToTable("StudentCodes");
        builder.HasKey(c => c.StudentId);
        builder.Property(c => c.CodeHash).HasMaxLength(HashLength);
        builder.HasIndex(c => c.CodeHash).IsUnique();
        builder
            .HasOne(c => c.Student)
            .WithOne()
            .HasForeignKey<StudentCodeRow>(c => c.StudentId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

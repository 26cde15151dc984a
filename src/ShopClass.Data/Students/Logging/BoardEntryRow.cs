using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopClass.Data.Projects;

namespace ShopClass.Data.Students.Logging;

/// <summary>A board that is being logged: what was entered so far. One for a student and a project.</summary>
public sealed class BoardEntryRow
{
    /// <summary>Becomes the board's own when it is logged, so that a board sent twice is there once.</summary>
    public Guid Id { get; set; }

    public Guid StudentId { get; set; }

    public StudentRow? Student { get; set; }

    public Guid ProjectId { get; set; }

    public ProjectRow? Project { get; set; }

    /// <summary>What was entered, as whoever asks for it writes it.</summary>
    public string Draft { get; set; } = "";

    /// <summary>A small JPEG without anything but its picture; null while there is none.</summary>
    public byte[]? Photo { get; set; }

    public DateTime ChangedUtc { get; set; }
}

/// <summary>The photo of a logged board.</summary>
public sealed class BoardPhotoRow
{
    public Guid BoardId { get; set; }

    public BoardRow? Board { get; set; }

    /// <summary>A small JPEG without anything but its picture.</summary>
    public required byte[] Jpeg { get; set; }
}

/// <summary>The tables of boards being logged and of photos.</summary>
internal static class LoggingMap
{
    public static void Apply(ModelBuilder builder)
    {
        builder.Entity<BoardEntryRow>(MapEntry);
        builder.Entity<BoardPhotoRow>(MapPhoto);
    }

    private static void MapEntry(EntityTypeBuilder<BoardEntryRow> entry)
    {
        entry.ToTable("BoardEntries");
        entry.Property(e => e.Id).ValueGeneratedNever();
        entry.Property(e => e.Draft).HasMaxLength(BoardEntryStore.LongestDraft);
        entry
            .HasOne(e => e.Student)
            .WithMany()
            .HasForeignKey(e => e.StudentId)
            .OnDelete(DeleteBehavior.Cascade);
        entry
            .HasOne(e => e.Project)
            .WithMany()
            .HasForeignKey(e => e.ProjectId)
            .OnDelete(DeleteBehavior.Cascade);
        entry.HasIndex(e => new { e.StudentId, e.ProjectId }).IsUnique();
    }

    private static void MapPhoto(EntityTypeBuilder<BoardPhotoRow> photo)
    {
        photo.ToTable("BoardPhotos");
        photo.HasKey(p => p.BoardId);
        photo
            .HasOne(p => p.Board)
            .WithOne()
            .HasForeignKey<BoardPhotoRow>(p => p.BoardId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}

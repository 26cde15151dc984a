using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class BoardLogging : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "BoardsWaitForYes",
                table: "Courses",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<string>(
                name: "SentBack",
                table: "Boards",
                type: "TEXT",
                maxLength: 500,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<Guid>(
                name: "YesVersion",
                table: "Boards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "BoardEntries",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Draft = table.Column<string>(type: "TEXT", maxLength: 30000, nullable: false),
                    Photo = table.Column<byte[]>(type: "BLOB", nullable: true),
                    ChangedUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BoardEntries", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BoardEntries_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_BoardEntries_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "BoardPhotos",
                columns: table => new
                {
                    BoardId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Jpeg = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BoardPhotos", x => x.BoardId);
                    table.ForeignKey(
                        name: "FK_BoardPhotos_Boards_BoardId",
                        column: x => x.BoardId,
                        principalTable: "Boards",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_BoardEntries_ProjectId",
                table: "BoardEntries",
                column: "ProjectId");

            migrationBuilder.CreateIndex(
                name: "IX_BoardEntries_StudentId_ProjectId",
                table: "BoardEntries",
                columns: new[] { "StudentId", "ProjectId" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "BoardEntries");

            migrationBuilder.DropTable(
                name: "BoardPhotos");

            migrationBuilder.DropColumn(
                name: "BoardsWaitForYes",
                table: "Courses");

            migrationBuilder.DropColumn(
                name: "SentBack",
                table: "Boards");

            migrationBuilder.DropColumn(
                name: "YesVersion",
                table: "Boards");
        }
    }
}

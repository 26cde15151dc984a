using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class TechniqueNotes : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "TechniqueNotes",
                table: "Courses",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "TechniqueNotes",
                table: "Courses");
        }
    }
}

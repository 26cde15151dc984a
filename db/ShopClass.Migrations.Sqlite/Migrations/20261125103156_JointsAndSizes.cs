using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class JointsAndSizes : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Joints",
                table: "Projects",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "SizeChecks",
                table: "Projects",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "ReferenceFace",
                table: "Parts",
                type: "TEXT",
                maxLength: 20,
                nullable: false,
                defaultValue: "Truest");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Joints",
                table: "Projects");

            migrationBuilder.DropColumn(
                name: "SizeChecks",
                table: "Projects");

            migrationBuilder.DropColumn(
                name: "ReferenceFace",
                table: "Parts");
        }
    }
}

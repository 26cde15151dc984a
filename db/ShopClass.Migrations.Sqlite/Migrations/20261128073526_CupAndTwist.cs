using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class CupAndTwist : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "Rules_RoomHumidity",
                table: "Courses",
                type: "INTEGER",
                nullable: false,
                defaultValue: 35);

            migrationBuilder.AddColumn<int>(
                name: "Rules_ShopHumidity",
                table: "Courses",
                type: "INTEGER",
                nullable: false,
                defaultValue: 50);

            migrationBuilder.AddColumn<long>(
                name: "Cup",
                table: "Boards",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "Twist",
                table: "Boards",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Rules_RoomHumidity",
                table: "Courses");

            migrationBuilder.DropColumn(
                name: "Rules_ShopHumidity",
                table: "Courses");

            migrationBuilder.DropColumn(
                name: "Cup",
                table: "Boards");

            migrationBuilder.DropColumn(
                name: "Twist",
                table: "Boards");
        }
    }
}

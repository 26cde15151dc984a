using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class StepMinutes : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "Minutes",
                table: "StepActions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "PlannedMinutes",
                table: "StepActions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "SpeciesId",
                table: "StepActions",
                type: "TEXT",
                maxLength: 60,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "StepKind",
                table: "StepActions",
                type: "TEXT",
                maxLength: 30,
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Minutes",
                table: "StepActions");

            migrationBuilder.DropColumn(
                name: "PlannedMinutes",
                table: "StepActions");

            migrationBuilder.DropColumn(
                name: "SpeciesId",
                table: "StepActions");

            migrationBuilder.DropColumn(
                name: "StepKind",
                table: "StepActions");
        }
    }
}

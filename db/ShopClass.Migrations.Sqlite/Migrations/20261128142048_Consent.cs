using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Consent : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateOnly>(
                name: "ConsentOn",
                table: "Students",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "HasConsented",
                table: "Students",
                type: "INTEGER",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "ConsentOn",
                table: "Students");

            migrationBuilder.DropColumn(
                name: "HasConsented",
                table: "Students");
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopClass.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Remakes : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Remakes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    MadeUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Part = table.Column<string>(type: "TEXT", maxLength: 2, nullable: false),
                    Copy = table.Column<int>(type: "INTEGER", nullable: false),
                    Strip = table.Column<int>(type: "INTEGER", nullable: false),
                    CutsMade = table.Column<int>(type: "INTEGER", nullable: false),
                    Way = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Option = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Remakes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Remakes_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Remakes_PlanId_Number",
                table: "Remakes",
                columns: new[] { "PlanId", "Number" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Remakes");
        }
    }
}

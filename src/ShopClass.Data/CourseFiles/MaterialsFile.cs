using System.Globalization;
using System.Text.RegularExpressions;
using Newtonsoft.Json.Linq;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;

namespace ShopClass.Data.CourseFiles;

/// <summary>A course's sellers and rack as a file tells them.</summary>
internal sealed record MaterialsDraft(
    IReadOnlyList<SellerRow> Sellers,
    IReadOnlyList<RackPiece> Rack
)
{
    public static MaterialsDraft None { get; } = new([], []);
}

/// <summary>The sections “sellers” and “rack” of a course file.</summary>
internal static partial class MaterialsFile
{
    public static void Write(JObject course, CourseRow row)
    {
        var unit = row.Rules.Unit;
        CourseFileWriter.Add(
            course,
            "sellers",
            InOrder(row.Sellers, s => s.Name, s => Seller(s, unit))
        );
        CourseFileWriter.Add(
            course,
            "rack",
            InOrder(
                row.Rack.Select(r => r.ToView().Piece),
                r => $"{r.Place}\n{r.Board.Name}",
                r => Piece(r, unit)
            )
        );
    }

    public static MaterialsDraft Read(FileNode course, CourseRules rules, FileFindings findings) =>
        new(
            [
                .. course
                    .Items("sellers", SellerStore.MostSellers, "sellers")
                    .Select(s => ReadSeller(s, rules, findings))
                    .OfType<SellerRow>(),
            ],
            [
                .. course
                    .Items("rack", RackChecks.MostPieces, "pieces")
                    .TakeWhile(_ => !findings.IsFull)
                    .Select(r => ReadPiece(r, rules, findings))
                    .OfType<RackPiece>(),
            ]
        );

    public static void ToRows(MaterialsDraft draft, CourseRow course)
    {
        foreach (var seller in draft.Sellers)
        {
            seller.CourseId = course.Id;
            course.Sellers.Add(seller);
        }

        foreach (var piece in draft.Rack)
        {
            var row = new RackRow
            {
                Id = Guid.NewGuid(),
                CourseId = course.Id,
                Board = piece.Board,
            };
            row.Take(piece);
            course.Rack.Add(row);
        }
    }

    /// <summary>By name; where names are the same, by all that is written about them, since nothing else lasts.</summary>
    private static IEnumerable<JObject> InOrder<T>(
        IEnumerable<T> all,
        Func<T, string> name,
        Func<T, JObject> write
    ) =>
        all.Select(one => (Name: name(one), Written: write(one)))
            .OrderBy(o => o.Name, Access.Ordering.OfNames)
            .ThenBy(
                o => o.Written.ToString(Newtonsoft.Json.Formatting.None),
                StringComparer.Ordinal
            )
            .Select(o => o.Written);

    private static JObject Seller(SellerRow seller, UnitSystem unit)
    {
        var all = new JObject { ["name"] = seller.Name, ["currency"] = seller.Currency };
        CourseFileWriter.Add(all, "leftOut", seller.IsLeftOut);
        CourseFileWriter.Add(all, "stock", seller.Stock.Select(s => Stock(s, unit)));
        return all;
    }

    private static JObject Stock(PricedStock stock, UnitSystem unit)
    {
        string Write(Length length) => LengthWriter.WriteExactWithUnit(length, unit);
        var all = new JObject { ["name"] = stock.Name, ["species"] = stock.SpeciesId };
        CourseFileWriter.Add(all, "grade", stock.Grade);
        all["surfacing"] = FileWords.Surfacings.For(stock.Surfacing);
        if (stock.Nominal is { } nominal)
        {
            all["nominalThickness"] = Write(nominal.Thickness);
            all["nominalWidth"] = Write(nominal.Width);
        }

        all["thickness"] = Write(stock.Thickness);
        all["width"] = Write(stock.Width);
        all["length"] = Write(stock.Length);
        all["price"] = CourseFileWriter.Price(stock.Price);
        all["per"] = FileWords.Bases.For(stock.Basis);
        if (stock.PackSize > 1)
            all["pack"] = stock.PackSize;
        if (stock.Available is { } available)
            all["available"] = available;
        return all;
    }

    private static JObject Piece(RackPiece piece, UnitSystem unit)
    {
        var all = CourseFileWriter.Sizes(piece.Board, unit);
        CourseFileWriter.Add(all, "place", piece.Place);
        if (piece.Count > 1)
            all["count"] = piece.Count;
        if (piece.State is not RackState.Free)
            all["state"] = FileWords.RackStates.For(piece.State);
        return all;
    }

    private static SellerRow? ReadSeller(JToken token, CourseRules rules, FileFindings findings)
    {
        if (FileNode.Open(token, "a seller", findings, FileFields.Seller) is not { } node)
            return null;
        var seller = new SellerRow
        {
            Id = Guid.NewGuid(),
            Name = Wording.Tidy(node.Text("name")),
            Currency = node.Text("currency"),
            IsLeftOut = node.Flag("leftOut"),
            Version = Guid.NewGuid(),
            Course = new()
            {
                OwnerId = "",
                Name = "",
                Rules = rules,
            },
        };
        foreach (var (field, sentence) in SellerStore.ProblemsIn(seller.Name, seller.Currency))
            node.Problem(PartReader.FileFieldOf(field), sentence);
        ReadStock(node, seller, rules, findings);
        seller.Course = null;
        return seller;
    }

    private static void ReadStock(
        FileNode seller,
        SellerRow row,
        CourseRules rules,
        FileFindings findings
    )
    {
        var nodes = new List<FileNode>();
        var stock = new List<PricedStock>();
        foreach (
            var item in seller
                .Items("stock", StockChecks.MostLines, "lines")
                .TakeWhile(_ => !findings.IsFull)
        )
        {
            if (FileNode.Open(item, "a line of stock", findings, FileFields.Stock) is not { } node)
                continue;
            nodes.Add(node);
            stock.Add(SellerStore.WithKey(ReadLine(node, rules.Unit)));
        }

        foreach (var (field, sentence) in SellerStore.ProblemsIn(stock, row))
        {
            var match = StockField().Match(field);
            var name = match.Groups["field"].Value;
            var species = stock[
                int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture)
            ].SpeciesId;
            nodes[int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture)]
                .Problem(
                    FileFieldOf(name),
                    name is "Species" ? BoardReader.SpeciesSentence(species) : sentence
                );
        }

        row.Stock = stock;
    }

    private static string FileFieldOf(string field) =>
        field switch
        {
            "PackSize" => "pack",
            "Basis" => "per",
            "" => "name",
            _ => PartReader.FileFieldOf(field),
        };

    private static PricedStock ReadLine(FileNode node, UnitSystem unit)
    {
        var thickness = node.Has("nominalThickness") ? node.Length("nominalThickness", unit) : null;
        var width = node.Has("nominalWidth") ? node.Length("nominalWidth", unit) : null;
        if (!node.Has("price"))
            node.Problem("price", "The field “price” is missing in a line of stock.");
        return new()
        {
            Id = "",
            Name = node.Text("name"),
            SpeciesId = node.Text("species"),
            Grade = node.Text("grade", ""),
            Surfacing = node.Choice("surfacing", FileWords.Surfacings) ?? default,
            Nominal = thickness is { } t && width is { } w ? new(t, w) : null,
            Thickness = node.Length("thickness", unit) ?? Length.Zero,
            Width = node.Length("width", unit) ?? Length.Zero,
            Length = node.Length("length", unit) ?? Length.Zero,
            Price = BoardReader.ReadPrice(node) ?? Money.Zero(""),
            Basis = node.Choice("per", FileWords.Bases, PriceBasis.Each) ?? default,
            PackSize = node.Has("pack") ? (int)node.Whole("pack", 1, 1, StockChecks.MostBoards) : 1,
            Available = node.Has("available")
                ? (int)node.Whole("available", 0, 0, StockChecks.MostBoards)
                : null,
        };
    }

    private static RackPiece? ReadPiece(JToken token, CourseRules rules, FileFindings findings)
    {
        if (
            FileNode.Open(token, "a piece on the rack", findings, FileFields.RackPiece)
            is not { } node
        )
            return null;
        var piece = RackStore.Tidy(
            new()
            {
                Id = "",
                Board = BoardReader.ReadSizes(node, rules, findings),
                Place = node.Text("place", ""),
                Count = node.Has("count")
                    ? (int)node.Whole("count", 1, 1, StockChecks.MostBoards)
                    : 1,
                State = node.Choice("state", FileWords.RackStates, RackState.Free) ?? default,
            }
        );
        foreach (var (field, sentence) in RackChecks.ProblemsIn(piece, rules))
        {
            if (field is "Place" or "Count")
                node.Problem(PartReader.FileFieldOf(field), sentence);
        }

        return piece;
    }

    [GeneratedRegex(@"^Stock\[(?<index>[0-9]+)\]\.?(?<field>[A-Za-z]*)$")]
    private static partial Regex StockField();
}

namespace ShopClass.Core.Planning.Wishes;

/// <summary>The riskiest part's spare is reserved before what is left is called an offcut.</summary>
internal static class SpareOfTheRiskiest
{
    /// <summary>Parts riskier than the first, in their order of risk, that what is left over has room for one more of.</summary>
    public static long FallsShortBy(LaidOut laid)
    {
        for (var i = 0; i < laid.Risks.Count; i++)
        {
            if (HasRoom(laid, laid.Risks[i]))
                return i;
        }

        return laid.Risks.Count;
    }

    public static WishMet? Met(LaidOut laid)
    {
        if (laid.Risks.Count == 0)
            return null;
        var (riskiest, missed) = (laid.Risks[0], FallsShortBy(laid));
        var letter = riskiest.Part.Letter;
        if (missed == 0)
            return new(
                WishKind.SpareOfTheRiskiest,
                true,
                $"What is left over has room for one more {letter}, the riskiest part{Because(riskiest)}."
            );
        var instead =
            missed < laid.Risks.Count
                ? $"; there is room for one more {laid.Risks[(int)missed].Part.Letter}"
                : "";
        return new(
            WishKind.SpareOfTheRiskiest,
            false,
            $"What is left over has no room for one more {letter}, the riskiest part{Because(riskiest)}{instead}."
        );
    }

    /// <summary>Why a part is risky, in brackets.</summary>
    public static string Because(PartRisk risk) =>
        risk.Why.Count == 0 ? "" : $" ({string.Join(", ", risk.Why)})";

    private static bool HasRoom(LaidOut laid, PartRisk risk) =>
        laid.Boards.Any(b =>
            b.Leftovers.Any(left => SparePlace.In(left, b.Board, risk.Part, laid.Rules) is not null)
        );
}

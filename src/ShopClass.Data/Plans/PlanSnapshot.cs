using System.Security.Cryptography;
using System.Text.Json;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Store;

namespace ShopClass.Data.Plans;

/// <summary>A checked plan as bytes, and the fingerprints by which two are told apart.</summary>
public static class PlanSnapshot
{
    /// <summary>The whole plan as JSON, packed with gzip.</summary>
    public static byte[] Pack(CheckedPlan plan) => Packed.Pack(plan);

    /// <summary>The plan as it was packed.</summary>
    public static CheckedPlan Unpack(byte[] packed) => Packed.Unpack<CheckedPlan>(packed);

    /// <summary>The steps of a plan, packed the same way.</summary>
    public static byte[] Pack(WorkSequence work) => Packed.Pack(work);

    /// <summary>The steps as they were packed.</summary>
    public static WorkSequence UnpackWork(byte[] packed) => Packed.Unpack<WorkSequence>(packed);

    /// <summary>SHA-256 of the whole plan.</summary>
    public static string Fingerprint(CheckedPlan plan) => FingerprintOf(plan);

    /// <summary>
    /// SHA-256 of what a plan and its steps follow from: sizes, joints, boards and rules. When it changes, plans made
    /// before are out of date.
    /// </summary>
    /// <remarks>
    /// Left out is what neither changes: the order of goals (somebody's choice among plans for the same wood), names, the
    /// project's notes, and sums of sizes, which only check the parts list. Notes on joints stay: they are read in the steps.
    /// </remarks>
    public static string Fingerprint(PlanningRequest request) =>
        FingerprintOf(
            request with
            {
                Goals = PlanGoals.Usual,
                Project = Bare(request.Project),
                Boards = [.. request.Boards.Select(b => b with { Name = "" })],
            }
        );

    /// <summary>Whether a plan made for the one request stands for the other: as it is, or sawn straight to size by choice.</summary>
    /// <param name="made">Fingerprint of the request the plan was made for.</param>
    /// <param name="now">What is asked now.</param>
    public static bool Answers(string made, PlanningRequest now) =>
        made == Fingerprint(now) || made == Fingerprint(now.StraightToSize());

    private static Project Bare(Project project) =>
        new()
        {
            Name = "",
            Parts = [.. project.Parts.Select(p => p with { Name = "" })],
            Joints = project.Joints,
        };

    private static string FingerprintOf<T>(T value) =>
        Convert.ToHexStringLower(
            SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(value, ShopJson.Options))
        );
}

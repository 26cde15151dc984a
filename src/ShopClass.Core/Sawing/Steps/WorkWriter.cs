using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Steps.Writing;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>Writes the whole work down, from the board to the finished piece.</summary>
/// <remarks>
/// The usual order (common practice): boards are looked over, trimmed, marked and broken down; rough stock is trued and
/// narrow stock glued up; reference faces and edges are marked; pieces are brought to width, squared at one end, marked
/// together and cut to length; joints are cut and fitted; what stayed open is taken from its place and cut; all is put
/// together and finished. <see cref="WorkRules"/> are the rules that bend it.
/// </remarks>
public static class WorkWriter
{
    /// <summary>The steps of a plan for this hand. What the boards do not yield is left out, and so is putting together what is not whole.</summary>
    public static WorkSequence Write(CheckedPlan plan, Hand hand, WorkSettings? settings = null)
    {
        var job = new Job(plan, settings ?? WorkSettings.Usual);
        new BoardSteps(job).Write();
        new TruingSteps(job).Write();
        new WidthSteps(job).Write();
        new StripSteps(job).Write();
        new LengthSteps(job).Write();
        new JointSteps(job).Write();
        new AssemblySteps(job).Write();
        var written = new WorkSequence(job.Steps.All);
        return hand is Hand.Right ? written : Mirror.Of(written);
    }
}

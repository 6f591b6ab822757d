using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>
/// How far each of two straight arms reaches across the floor when the joined hands are at some height, in
/// metres from its shoulder: of a straight arm the height between shoulder and hand is lost.
/// </summary>
public readonly record struct ArmSpan(double Lead, double Follow)
{
    /// <summary>Between the two shoulders.</summary>
    public double Both => Lead + Follow;

    public static ArmSpan Of(HandHeight height, (double Lead, double Follow) statures, CoupleLimits limits)
    {
        var hand = HandAt(height, statures);
        return new(Across(statures.Lead, hand, limits.Arms), Across(statures.Follow, hand, limits.Arms));
    }

    /// <summary>Height of joined hands over the floor, in metres.</summary>
    private static double HandAt(HandHeight height, (double Lead, double Follow) statures) => height switch
    {
        // At the waist forearms lie level; between the two where they are not equally tall.
        HandHeight.Low => Body.ElbowHeight * (statures.Lead + statures.Follow) / 2,
        HandHeight.Shoulder => Body.ShoulderHeight * (statures.Lead + statures.Follow) / 2,
        // Just over the head of the shorter one: hands are carried no higher than they must be.
        _ => Math.Min(statures.Lead, statures.Follow) + OverTheHead,
    };

    /// <summary>Room above a head under raised hands, in metres. Working value.</summary>
    public const double OverTheHead = 0.02;

    private static double Across(double stature, double hand, double arms)
    {
        var (arm, lost) = (Body.ArmToGrip * stature * arms, hand - (Body.ShoulderHeight * stature));
        return lost * lost >= arm * arm ? 0 : Math.Sqrt((arm * arm) - (lost * lost));
    }
}

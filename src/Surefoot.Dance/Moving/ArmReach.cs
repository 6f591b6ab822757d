using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>How far a straight arm reaches across the floor when its hand is at a height.</summary>
public static class ArmReach
{
    /// <summary>Metres from below the shoulder joint to below the grip; a straight arm is the long side of the triangle.</summary>
    /// <param name="up">Height of the grip in metres.</param>
    /// <param name="stature">In metres.</param>
    public static double Across(double up, double stature)
    {
        var (arm, rise) = (Body.ArmToGrip * stature, up - (Body.ShoulderHeight * stature));
        return Math.Sqrt(Math.Max(0, (arm * arm) - (rise * rise)));
    }
}

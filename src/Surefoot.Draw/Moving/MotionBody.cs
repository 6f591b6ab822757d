using System.Text.Json;
using Surefoot.Dance.Motion;

namespace Surefoot.Draw;

/// <summary>The measures of a body that a motion file carries, so that whoever draws it has them from nowhere else. All / stature.</summary>
internal static class MotionBody
{
    public static void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject("body");
        Measure("shoulderHeight", Body.ShoulderHeight);
        Measure("halfShoulders", Body.HalfShoulders);
        Measure("halfBreadth", Body.HalfBreadth);
        Measure("halfDepth", Body.HalfDepth);
        Measure("headAside", Body.HeadAside);
        Measure("headAhead", Body.HeadAhead);
        // Hands at the waist are as high as the elbow, which hangs an upper arm below the shoulder.
        const double upperArm = Body.ShoulderHeight - Body.ElbowHeight;
        Measure("upperArm", upperArm);
        Measure("foreArm", Body.ArmToGrip - upperArm);
        Measure("foot", Body.FootLength);
        json.WriteEndObject();

        void Measure(string name, double value) => json.WriteNumber(name, Math.Round((decimal)value, 4));
    }
}

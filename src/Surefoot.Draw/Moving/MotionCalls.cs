using System.Text.Json;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>The calls of a motion file: what is called on which counts of the repeat, and before it begins.</summary>
internal static class MotionCalls
{
    public static void Write(Utf8JsonWriter json, CallSheet sheet, RoleNames names)
    {
        json.WriteStartArray("calls");
        foreach (var calls in (ValueList<Call>[])[sheet.Opening, sheet.Calls])
        {
            foreach (var (call, says) in CallVoice.Over(calls, names.Bare(Role.Lead), names.Bare(Role.Follow))) Write(json, call, says, names);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Call call, string says, RoleNames names)
    {
        json.WriteStartObject();
        json.WriteNumber("from", call.From);
        json.WriteNumber("counts", call.Counts);
        json.WriteNumber("step", call.Step.Value.ToDouble());
        if (call.Role is { } role) json.WriteString("role", role.Word());
        json.WriteString("words", CallWords.For(call.Words, names.Bare(Role.Lead), names.Bare(Role.Follow)));
        json.WriteString("says", says);
        json.WriteEndObject();
    }
}

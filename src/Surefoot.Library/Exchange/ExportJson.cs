using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Surefoot.Library.Exchange;

/// <summary>Reads and writes the export's own files.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    WriteIndented = true,
    UseStringEnumConverter = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    Converters = [typeof(MomentJson)])]
[JsonSerializable(typeof(LibraryFile))]
[JsonSerializable(typeof(PageFile))]
internal sealed partial class ExportJson : JsonSerializerContext
{
    private static ExportJson? _plain;

    /// <summary>Letters stand as themselves: these files are for people too.</summary>
    public static ExportJson Plain => _plain ??= new(new(Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
}

/// <summary>Moments in UTC to the millisecond, as the library keeps them.</summary>
internal sealed class MomentJson : JsonConverter<DateTimeOffset>
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    public override DateTimeOffset Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        DateTimeOffset.TryParseExact(reader.GetString(), Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment) ? moment : throw new JsonException();

    public override void Write(Utf8JsonWriter writer, DateTimeOffset value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.UtcDateTime.ToString(Form, CultureInfo.InvariantCulture));
}

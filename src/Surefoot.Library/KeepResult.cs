namespace Surefoot.Library;

/// <summary>What became of a text that was to be kept. It is never lost: either it stands in the library or the answer is <see cref="NotKept"/>.</summary>
public abstract record KeepResult;

/// <summary>It is the page now, as this version.</summary>
public sealed record Kept(int Number) : KeepResult;

/// <summary>
/// Somebody else kept the page in the meantime. Theirs stays the page, as version <paramref name="Theirs"/>;
/// yours is kept beside it as version <paramref name="Yours"/>, and both can be seen, compared and brought back.
/// </summary>
public sealed record KeptBeside(int Theirs, int Yours) : KeepResult;

/// <summary>The page says exactly this already, in this version.</summary>
/// <param name="Noted">True where a note came with it, which now stands with that version.</param>
public sealed record NothingNew(int Number, bool Noted = false) : KeepResult;

/// <summary>It could not be kept.</summary>
public sealed record NotKept(string Why) : KeepResult;

/// <summary>Who keeps a version and what they say of it.</summary>
public sealed record Signature(string By = "", string Device = "", string Note = "");

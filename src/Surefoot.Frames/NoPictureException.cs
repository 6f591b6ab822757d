namespace Surefoot.Frames;

/// <summary>Why no picture could be taken, in words for whoever asked for it.</summary>
public sealed class NoPictureException(string message, Exception why) : Exception(message, why);

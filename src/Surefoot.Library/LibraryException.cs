namespace Surefoot.Library;

/// <summary>A library that cannot be opened; the message is a sentence for the person who tried.</summary>
public sealed class LibraryException : Exception
{
    public LibraryException()
    {
    }

    public LibraryException(string message)
        : base(message)
    {
    }

    public LibraryException(string message, Exception inner)
        : base(message, inner)
    {
    }
}

namespace Surefoot.Dance.Text;

/// <summary>Names of the files that pages are kept in.</summary>
public static class PageNames
{
    public const string Ending = ".dance";

    /// <summary>True for a name that says it is a page. Names that begin with a dot are other programs' leavings.</summary>
    public static bool IsPage(string path) =>
        path.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) && !Path.GetFileName(path.AsSpan()).StartsWith('.');
}

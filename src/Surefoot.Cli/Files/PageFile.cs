using Surefoot.Dance.Text;

namespace Surefoot.Cli.Files;

/// <summary>A page as it lies on the disk.</summary>
/// <param name="Path">As it is shown: the way it was asked for.</param>
/// <param name="Text">Without the mark some programs put in front.</param>
/// <param name="Form">How its letters are stored, so that it can be written back the same way.</param>
public sealed record PageFile(string Path, string Text, TextForm Form)
{
    /// <summary>With slashes on every machine, as documents for other programs want it.</summary>
    public string PortablePath => Path.Replace('\\', '/');
}

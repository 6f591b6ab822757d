using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Surefoot.Web.Safety;

/// <summary>Keys that live as long as the program: nothing it protects outlives it, and no file is left behind.</summary>
internal sealed class NoKeys : IXmlRepository
{
    private readonly List<XElement> _keys = [];

    // Copies: an element makes its inner parts when it is first read, so two requests must not read the same one at once.
    public IReadOnlyCollection<XElement> GetAllElements()
    {
        lock (_keys) return [.. _keys.Select(key => new XElement(key))];
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        lock (_keys) _keys.Add(new(element));
    }
}

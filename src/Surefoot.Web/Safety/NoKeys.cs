using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Surefoot.Web.Safety;

/// <summary>Keys that live as long as the program: nothing it protects outlives it, and no file is left behind.</summary>
internal sealed class NoKeys : IXmlRepository
{
    private readonly List<XElement> _keys = [];

    public IReadOnlyCollection<XElement> GetAllElements()
    {
        lock (_keys) return [.. _keys];
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        lock (_keys) _keys.Add(element);
    }
}

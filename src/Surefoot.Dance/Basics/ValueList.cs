using System.Collections;
using System.Runtime.CompilerServices;

namespace Surefoot.Dance.Basics;

/// <summary>A list that never changes and is equal to another when its items are.</summary>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public readonly struct ValueList<T>(T[]? items) : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[]? _items = items;

    public static ValueList<T> Empty => default;

    public int Count => _items?.Length ?? 0;

    public T this[int index] => (_items ?? [])[index];

    public ReadOnlySpan<T> AsSpan() => _items;

    public bool Equals(ValueList<T> other)
    {
        if (Count != other.Count) return false;
        for (var i = 0; i < Count; i++)
        {
            if (!EqualityComparer<T>.Default.Equals(_items![i], other._items![i])) return false;
        }

        return true;
    }

    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var item in AsSpan()) hash.Add(item);
        return hash.ToHashCode();
    }

    public static bool operator ==(ValueList<T> a, ValueList<T> b) => a.Equals(b);

    public static bool operator !=(ValueList<T> a, ValueList<T> b) => !a.Equals(b);

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)(_items ?? [])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => (_items ?? []).GetEnumerator();

    public Enumerator GetEnumerator() => new(_items ?? []);

    public struct Enumerator(T[] items)
    {
        private int _next;

        public T Current => items[_next - 1];

        public bool MoveNext() => _next++ < items.Length;
    }
}

public static class ValueList
{
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new(items.ToArray());
}

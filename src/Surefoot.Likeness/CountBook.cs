namespace Surefoot.Likeness;

/// <summary>Every different count of a library once, by number: dances are rows of numbers, and each pair of counts is compared once.</summary>
internal sealed class CountBook
{
    private readonly Dictionary<CountOfTwo, int> _numbers = [];
    private readonly List<CountOfTwo> _counts = [];

    public int Size => _counts.Count;

    public CountOfTwo this[int number] => _counts[number];

    /// <summary>The dance of a row of numbers.</summary>
    public DanceSteps Dance(int[] numbers) => new([.. numbers.Select(n => _counts[n])]);

    public int[] Numbers(DanceSteps dance)
    {
        var numbers = new int[dance.Length];
        for (var i = 0; i < numbers.Length; i++)
        {
            if (!_numbers.TryGetValue(dance.Counts[i], out var number))
            {
                _numbers.Add(dance.Counts[i], number = _counts.Count);
                _counts.Add(dance.Counts[i]);
            }

            numbers[i] = number;
        }

        return numbers;
    }
}

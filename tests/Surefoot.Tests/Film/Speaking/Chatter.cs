namespace Surefoot.Tests.Film.Speaking;

/// <summary>What is said besides steps, with words of dancing in it that mean no step.</summary>
internal static class Chatter
{
    public static readonly string[] Openings =
    [
        "hi everybody and welcome back to the hall today we are going to go through {0} from the beginning",
        "hello this is {0} we danced it last week and a few of you asked for a film so here it is",
        "all right so this one is called {0} it is one of my favourites and once you have it in your feet you will never forget it",
        "good evening thank you for watching this is just a quick run through of {0} for everybody who could not come on tuesday",
        "okay this is {0} you will see there is not much to learn since most of it is danced again watch your step in those new boots",
    ];

    public static readonly string[] Sides =
    [
        "i will turn around so you can see it from the back",
        "let me turn my back to you so left is left",
        "now i am facing you so it is mirrored",
        "here it is from the side so you can see the size of the steps",
    ];

    public static readonly string[] Asides =
    [
        "keep it small", "do not rush this one", "big smile", "i always forget that bit", "make sure your weight is over your feet",
        "that is the one people get wrong", "nice and easy", "if the floor is full keep your elbows in", "you will feel it", "there is time for that",
        "and breathe", "look where you are going", "it helps to say the words out loud", "we will do that again later",
    ];

    public static readonly string[] Corrections = ["no sorry", "sorry i mean", "no wait", "excuse me", "i mean"];

    public static readonly string[] Hesitations = ["um", "uh", "so", "okay", "you know", "and then", "er", "then", "now", "right so"];

    public static readonly string[] RunStarts =
    [
        "okay let us put that all together", "now the whole thing at tempo", "here is the whole dance with the music", "let us dance it",
        "one time all the way through now", "all right from the top with counts",
    ];

    public static readonly string[] Closings =
    [
        "and that is the dance thank you for watching see you on the floor", "that is it practice the turns at home and see you on friday",
        "okay so that was {0} have fun with it and mind the floor", "and then it starts over again thank you and good night",
    ];
}

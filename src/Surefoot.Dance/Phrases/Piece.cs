using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Phrases;

/// <summary>What a stretch of a line turned out to be.</summary>
public abstract record Piece(TextSpan Span);

public sealed record MovePiece(Move Move) : Piece(Move.Span);

public sealed record HandsPiece(HandWords Words, TextSpan Span) : Piece(Span);

/// <summary>A stated fact; <paramref name="Role"/> when the words name whose.</summary>
public sealed record ClaimPiece(Claim Claim, Role? Role, TextSpan Span) : Piece(Span);

/// <summary>Kept with its count and printed, never interpreted.</summary>
public sealed record NotePiece(string Text, TextSpan Span) : Piece(Span);

/// <summary>A word that is not known.</summary>
public sealed record UnknownPiece(string Word, TextSpan Span) : Piece(Span);

/// <summary>A bracket that is never closed.</summary>
public sealed record OpenBracketPiece(TextSpan Span) : Piece(Span);

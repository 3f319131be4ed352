"""Looking ahead over the tokens of one message: signs, numbers, and the longest phrase of the lexicon."""

from __future__ import annotations

from dataclasses import dataclass, field

from engine.reading.kinds import K
from engine.reading.lexicon import Lexicon, Meaning, lexicon, plain_word
from engine.reading.tokens import Shape, Token

BEHIND_THE_END = (None,) * 8


@dataclass(slots=True)
class TokenWalk:
    """The tokens of a message, and what stands at a place of them."""

    tokens: list[Token]
    words: Lexicon = field(default_factory=lexicon, kw_only=True)
    ahead: list[Token | None] = field(init=False)
    """The tokens, and None behind them, as far as anything looks ahead."""

    def __post_init__(self) -> None:
        self.ahead = [*self.tokens, *BEHIND_THE_END]

    def _unit_of(self, token: Token) -> K | None:
        meaning = self.words.phrases.get(plain_word(token.text)) if token.shape is Shape.WORD else None
        return meaning.kind if meaning else None

    def _phrase_begins(self, at: int) -> bool:
        """A unit word that starts a longer phrase is no unit: "3 reps in reserve", "5 reps left"."""
        found = self._longest_phrase(at)
        return found is not None and found[1] - at > 1

    def _longest_phrase(self, at: int) -> tuple[Meaning, int] | None:
        phrase = plain_word(self.tokens[at].text)
        longest = self.words.longest.get(phrase, 0)
        if not longest:
            return None
        meaning, at = self.words.phrases.get(phrase), at + 1
        found = (meaning, at) if meaning is not None else None
        for _ in range(longest - 1):
            at = self._next_word(at)
            if at < 0:
                break
            phrase = f"{phrase} {plain_word(self.tokens[at].text)}"
            meaning, at = self.words.phrases.get(phrase), at + 1
            if meaning is not None:
                found = meaning, at
        return found

    def _next_word(self, at: int) -> int:
        """The place of the next word of a phrase: past a glued hyphen or slash; -1 where the phrase must end."""
        token = self._token(at)
        if token is not None and token.text in "-/" and token.glued and self._glued_word(at + 1):
            at, token = at + 1, self.tokens[at + 1]
        if token is None or token.shape in (Shape.SIGN, Shape.LINE, Shape.CLOCK, Shape.HOURS):
            return -1
        return at

    def _glued_word(self, at: int) -> bool:
        token = self._token(at)
        return token is not None and token.shape is Shape.WORD and token.glued

    def _token(self, at: int) -> Token | None:
        return self.ahead[at]

    def _sign_at(self, at: int, sign: str) -> int:
        token = self._token(at)
        return 1 if token is not None and token.text == sign and token.shape is Shape.SIGN else 0

    def _times_at(self, at: int) -> bool:
        return bool(self._sign_at(at, "x"))

    def _is_number(self, at: int) -> bool:
        token = self._token(at)
        return token is not None and token.shape is Shape.NUMBER

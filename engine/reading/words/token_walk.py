"""Looking ahead over the tokens of one message: signs, numbers, and the longest phrase of the lexicon."""

from __future__ import annotations

from typing import NamedTuple

from engine.catalogue.phrases import normalise
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import Meaning, lexicon, plain_word
from engine.reading.words.spelt_freely import as_meant
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import Token

BEHIND_THE_END = (None,) * 8


class KnownWord(NamedTuple):
    """A word as the lists have it.

    `plain`: as the lexicon keeps it; `meaning`: of the word alone; `begins`: whether longer phrases begin with it.
    `named`: as the catalogue keeps it; `first`: the first part of that, where it has several there.
    """

    plain: str
    meaning: Meaning | None
    begins: bool
    named: str
    first: str


def _known(text: str) -> KnownWord:
    plain, named = plain_word(text), normalise(text)
    words = lexicon()
    if plain not in words.phrases and plain not in words.begun:
        plain = as_meant(plain)
    meaning = words.spelled.get(text) or words.phrases.get(plain)
    return KnownWord(plain, meaning, plain in words.begun, named, named.partition(" ")[0])


KNOWN = Kept(_known)


class TokenWalk:
    """The tokens of a message, and what stands at a place of them.

    `ahead`: the tokens, and None behind them, as far as anything looks ahead.
    """

    def __init__(self, tokens: list[Token]) -> None:
        self.tokens = tokens
        self.ahead: list[Token | None] = [*tokens, *BEHIND_THE_END]

    def _unit_of(self, token: Token) -> K | None:
        meaning = KNOWN[token.text].meaning if token.shape is Shape.WORD else None
        return meaning.kind if meaning else None

    def _longest_phrase(self, at: int) -> tuple[Meaning, int] | None:
        phrase, meaning, begins, _, _ = KNOWN[self.tokens[at].text]
        found = (meaning, at + 1) if meaning is not None else None
        return self._longer_phrase(phrase, at + 1) or found if begins else found

    def _longer_phrase(self, phrase: str, at: int) -> tuple[Meaning, int] | None:
        """The longest of the phrases that go on from this one; `at` is the place behind it."""
        phrases, begun = lexicon().phrases, lexicon().begun
        found: tuple[Meaning, int] | None = None
        while phrase in begun and (at := self._next_word(at)) >= 0:
            phrase, at = f"{phrase} {KNOWN[self.tokens[at].text].plain}", at + 1
            if phrase in phrases:
                found = phrases[phrase], at
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

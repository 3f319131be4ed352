"""Sets of several people told in turn, of which those behind "me" are hers: "me: squat 3x5 80 / tove: squat 3x5 100".

turns = turn { turn }                    one of them is hers, or several people do the same lift
turn  = ME | SOMEBODY ...                at the head of a line or a clause        bench me 60x8, mia 70x8
Behind a name alone on its line all lines are of that turn up to the next one; else the line, or the clauses up to it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece, kinds_in_order, places_in, texts_in_order

ME = frozenset(("myturn",))
WORDS = frozenset((K.PLAIN, K.FILLER))
HEADS_A_CLAUSE = frozenset((K.COMMA, K.STOP, K.AND, K.SLASH, K.COLON, K.NAME, K.DASH))
"""What may stand in front of a turn in the midst of a line."""
LABELS = frozenset((K.COLON, K.STOP, K.DASH, K.EQUALS))
TOLD = frozenset((K.NUMBER, K.NAME, K.COUNT))
LEAST_LETTERS = 2
BULLETS = frozenset((K.DASH, K.STOP, K.OTHER_SIGN))


class Turn(NamedTuple):
    """Where a turn begins; what it is a label to: the rest of its clause, of its line, or the lines below it."""

    at: int
    mine: bool
    labelled: bool
    heads_line: bool
    heads_block: bool


def may_hold_turns(pieces: Sequence[Piece], kinds: set[K]) -> bool:
    """Whether a word for "me" stands in them, or labels of lines."""
    labelled = K.LINE in kinds and not LABELS.isdisjoint(kinds)
    return labelled or not phrasebook().cues["myturn"].isdisjoint(texts_in_order(pieces))


def with_turns(pieces: list[Piece], called: str) -> list[Piece]:
    """The pieces without the turns of other people; where nobody's turn is hers, those people as others."""
    kinds = kinds_in_order(pieces)
    if (shared := _shared(pieces, kinds)) > 0:
        return [*pieces[:shared], pieces[shared]._replace(kind=K.UNCLEAR), *pieces[shared + 1 :]]
    own = called.casefold().split()
    turns = [turn for at in places_in(WORDS, kinds) if (turn := _turn(pieces, kinds, at, own)) is not None]
    if len(turns) < LEAST_TURNS:
        return pieces
    theirs = [turn for turn in turns if not turn.mine]
    if len(theirs) < len(turns):
        hers = {turn.at for turn in turns if turn.mine}
        told = [piece._replace(kind=K.FILLER) if at in hers else piece for at, piece in enumerate(pieces)]
        return _without(theirs, turns, told, kinds) if theirs else pieces
    if not _do_the_same(turns, pieces, kinds):
        return pieces
    out = list(pieces)
    for turn in turns:
        out[turn.at] = pieces[turn.at]._replace(kind=K.OTHERS)
        out[turn.at + 1] = pieces[turn.at + 1]._replace(kind=K.COLON)
    return out


LEAST_TURNS = 2


def _shared(pieces: Sequence[Piece], kinds: Sequence[K]) -> int:
    """The place of the sign of "me/anna 100x5/60x5", behind which nobody can say whose is which; 0 for none."""
    for at in places_in(BOTH, kinds):
        sides = (pieces[at - 1], pieces[at + 1]) if 0 < at < len(pieces) - 1 else ()
        mine = [is_cued(word.text, ME) for word in sides]
        named = [word.kind in WHO and _may_be_a_name(word, True) for word in sides]
        if (mine in ([True, False], [False, True])) and named[mine.index(False)] and K.SLASH in kinds[at + 2 :]:
            return at
    return 0


BOTH = frozenset((K.SLASH, K.AND, K.PLUS))
WHO = frozenset((K.PLAIN, K.OTHERS))


def _turn(pieces: Sequence[Piece], kinds: Sequence[K], at: int, own: Sequence[str]) -> Turn | None:
    """The turn that the word there begins; None where it begins none."""
    word = pieces[at]
    before, after = kind_at(pieces, at - 1), kind_at(pieces, at + 1)
    first = before in (None, K.LINE) or (before in BULLETS and kind_at(pieces, at - 2) in (None, K.LINE))
    if not first and before not in HEADS_A_CLAUSE:
        return None
    mine = is_cued(word.text, ME) or word.text in own
    labelled = after in LABELS
    if not mine and not _may_be_a_name(word, labelled):
        return None
    behind = kind_at(pieces, at + 1 + labelled)
    if first and behind is K.LINE and (labelled or mine or word.kind is K.PLAIN):
        return Turn(at, mine, labelled, True, True)
    told = behind in TOLD if first or labelled else behind is K.NUMBER
    return Turn(at, mine, labelled, first, False) if told else None


def _may_be_a_name(word: Piece, labelled: bool) -> bool:
    """A word that no list knows; "mia", which is "my" in another language, is a name, too."""
    if not word.text.isalpha() or len(word.text) < LEAST_LETTERS:
        return False
    return word.kind is K.PLAIN or "my" in CUES_OF[word.text] or (labelled and not CUES_OF[word.text])


def _without(theirs: list[Turn], turns: list[Turn], pieces: list[Piece], kinds: Sequence[K]) -> list[Piece]:
    out: list[Piece] = []
    done = 0
    for turn in theirs:
        end = _end_of(turn, turns, pieces, kinds)
        start = turn.at - (not turn.heads_line and kind_at(pieces, turn.at - 1) in PARTING)
        out += pieces[done:start]
        done = max(end, done)
    return [*out, *pieces[done:]]


PARTING = frozenset((K.COMMA, K.STOP, K.AND, K.SLASH, K.DASH))


def _end_of(turn: Turn, turns: Sequence[Turn], pieces: Sequence[Piece], kinds: Sequence[K]) -> int:
    """The place behind the last piece of a turn."""
    block = turn.heads_block
    after = [one.at for one in turns if one.at > turn.at and (one.heads_line or not block)]
    line = kinds.index(K.LINE, turn.at) if not block and K.LINE in kinds[turn.at :] else len(pieces)
    return min([*after, line])


def _do_the_same(turns: Sequence[Turn], pieces: Sequence[Piece], kinds: Sequence[K]) -> bool:
    """ "ana: deadlift 110 3x5 / jo: deadlift 150 3x5": one lift under several names; labels head different lifts."""
    if not all(turn.heads_line and turn.labelled and kinds[turn.at + 2] is K.NAME for turn in turns):
        return False
    lifts = {pieces[turn.at + 2].names for turn in turns}
    return len(lifts) == 1 and len({pieces[turn.at].text for turn in turns}) == len(turns)

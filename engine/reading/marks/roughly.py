"""Numbers told roughly, which are asked: "around 7", "nearly 20 pull ups", "between 6 and 8", "ninety something".

rough = ( ROUGHLY | NEARLY ) NUMBER | BETWEEN NUMBER "and" NUMBER
      | NUMBER [ unit ] ( [ joint ] VAGUELY | joint VAGUELY-MORE ) ( end | unit | "for" | "x" )
joint = "and" | "-" | POINT
Words in capitals are cues of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in

OF_A_SET = frozenset((Role.BARE, Role.REPS, Role.LOAD, Role.SETS))
WORDS = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.REST, K.RESERVE_LEFT, K.NOT_DATE, K.WITH, K.OF, K.ADDED))


def with_rough_numbers(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with words that leave a number open made words that change the sets."""
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if piece.kind not in WORDS or not LEAVES_OPEN[piece.text]:
            continue
        if _is_vague(pieces, at):
            out[at] = piece._replace(kind=K.ALTERED)
            if pieces[at - 1].kind in JOINTS:
                out[at - 1] = pieces[at - 1]._replace(kind=K.FILLER)
            continue
        behind = pieces[at + 1 : at + 4]
        rough = _is_about(piece) and bool(behind) and behind[0].kind is K.NUMBER and behind[0].role in OF_A_SET
        ranged = is_between(piece) and [one.kind for one in behind] == [K.NUMBER, K.AND, K.NUMBER]
        stepped = piece.kind is K.ADDED and OPENING.issuperset([one.kind for one in pieces[:at]]) and _is_bare(behind)
        if rough or ranged or stepped:
            out[at] = piece._replace(kind=K.ALTERED)
    return out


def _is_about(piece: Piece) -> bool:
    word, cues = spoken(piece.text), phrasebook().cues
    return word in cues["roughly"] or word in cues["nearly"]


def is_between(piece: Piece) -> bool:
    """Whether the word says that something lies between two others."""
    return spoken(piece.text) in phrasebook().cues["between"]


def _is_bare(behind: list[Piece]) -> bool:
    """ "added 10, got 12": how much of what was added, and to which load, is not told."""
    kinds = [one.kind for one in behind[:2]]
    return kinds in ([K.NUMBER, K.COMMA], [K.NUMBER, K.AND], [K.NUMBER, K.THEN]) and behind[0].role is Role.BARE


OPENING = frozenset((K.FILLER, K.THEN, K.AND))


def may_be_rough(pieces: list[Piece], kinds: set[K]) -> bool:
    """Whether such a word stands among the pieces, which are of these kinds."""
    if kinds.isdisjoint(WORDS):
        return False
    if K.ADDED in kinds:
        return True
    return any([LEAVES_OPEN[pieces[at].text] for at in places_in(WORDS, kinds_in_order(pieces))])


def _is_vague(pieces: list[Piece], at: int) -> bool:
    """ "90 something", "80 y pico", "60-odd kg": a word behind the number that says it was somewhat more."""
    word = spoken(pieces[at].text)
    if word not in phrasebook().cues["vaguely"] and word not in phrasebook().cues["vaguelymore"]:
        return pieces[at].kind is K.PLAIN and bool(_number_ahead(word))
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    joined = at > 0 and (pieces[at - 1].kind in JOINTS or spoken(pieces[at - 1].text) in phrasebook().cues["point"])
    number = at - 1 - joined
    number -= number > 0 and pieces[number].kind in UNITS
    if number < 0 or pieces[number].kind is not K.NUMBER or pieces[number].role not in OF_A_SET:
        return False
    if behind is K.FOR and [piece.kind for piece in pieces[at + 2 : at + 3]] != [K.NUMBER]:
        return False  # "and something for abs"
    return behind in ENDS_OF_IT and (joined or word in phrasebook().cues["vaguely"])


def _number_ahead(word: str) -> str:
    """The number that a word like "ninetysomething" begins with; empty for any other."""
    for vague in phrasebook().cues["vaguely"]:
        number = word.removesuffix(vague)
        meaning = lexicon().phrases.get(number) if number != word else None
        if meaning is not None and meaning.kind is K.NUMBER_WORD:
            return number
    return ""


def tells_roughly(pieces: Sequence[Piece], cleaned: str = "") -> bool:
    """Whether a word beside a number leaves it open: such a number puts nothing right. `cleaned`: the whole text, where
    the pieces hold the first words of phrases alone.
    """
    for at, piece in enumerate(pieces):
        if piece.kind is not K.ALTERED or not is_rough(cleaned[piece.start : piece.end].lower() or piece.text):
            continue
        ahead = at - 1 - (at > 1 and pieces[at - 1].kind in UNITS)
        if K.NUMBER in (kind_at(pieces, ahead), kind_at(pieces, ahead - 1), kind_at(pieces, at + 1)):
            return True
    return False


def is_rough(words: str) -> bool:
    """Whether these words leave a number open: "ish", "or so", "something"."""
    return LEAVES_OPEN[words] or is_cued(words, ROUGH)


ROUGH = frozenset(("roughsaid",))
UNITS = (K.KG, K.LB)
JOINTS = frozenset((K.AND, K.DASH, K.STOP))
ENDS_OF_IT = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.KG, K.LB, K.FOR, K.TIMES, K.OTHER_SIGN, K.QUESTION))


def _leaves_open(text: str) -> bool:
    word, cues = spoken(text), phrasebook().cues
    return any(word in cues[name] for name in LEAVING_OPEN) or bool(_number_ahead(word))


LEAVING_OPEN = ("roughly", "nearly", "between", "vaguely", "vaguelymore")
LEAVES_OPEN = Kept(_leaves_open)
"""Whether a word may say that a number beside it is told roughly."""

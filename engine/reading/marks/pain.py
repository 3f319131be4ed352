"""Pain and warning signs in a message, and whether they are denied.

Joint pain, injury, dizziness, chest and breath signs count. Sore muscles from an earlier day do not; nor does "no
pain", nor a joint that is only tight or stiff where pain is denied beside it: "back tight but no pain".
"""

from __future__ import annotations

from itertools import pairwise

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.pieces import Piece, is_one_word

NEAR_DENIAL = 4
NEAR_JOINT = 4
LONGEST_REMARK = 8
SIGNS = frozenset((K.PAIN, K.SORE))
MAY_TELL_PAIN = SIGNS | {K.JOINT}
INJURED = 1
"""What a SORE piece tells whose word is of no sore muscle: said of a joint it is pain, however long ago it began."""
SENTENCE = frozenset((K.LINE, K.STOP, K.COMMA, K.QUESTION))
EARLIER = frozenset((K.NOT_DATE, K.LAST_TIME, K.SAYING, K.YESTERDAY, K.WEEKDAY))


def tells_pain(pieces: list[Piece]) -> bool:
    """Whether the message tells of pain now."""
    return any(
        _gave_way(pieces, at) if piece.kind is K.JOINT else _is_pain(pieces, at)
        for at, piece in enumerate(pieces)
        if piece.kind in MAY_TELL_PAIN
    )


def _gave_way(pieces: list[Piece], at: int) -> bool:
    """ "lower back went", "my back just went on the last rep", "back is out"; and not "back went up", "knee out"."""
    linked = kind_at(pieces, at + 1) in BEFORE_THE_VERB
    verb = at + 1 + linked
    telling = PUT_OUT if linked and pieces[at + 1].kind is K.ASKS else GAVE_WAY
    if verb >= len(pieces) or not is_cued(pieces[verb].text, telling) or not is_one_word(pieces[verb]):
        return False
    behind = pieces[verb + 1] if verb + 1 < len(pieces) else None
    return behind is None or behind.kind in BEHIND_THE_VERB or is_cued(behind.text, AMID)


BEHIND_THE_VERB = SENTENCE | {K.TODAY, K.DATE, K.NAME}
BEFORE_THE_VERB = frozenset((K.ONLY, K.NOTE, K.ASKS))
GAVE_WAY, PUT_OUT, AMID = frozenset(("gaveway",)), frozenset(("outofplace",)), frozenset(("amidit",))


def _is_pain(pieces: list[Piece], at: int) -> bool:
    before = _until_cut(pieces[max(0, at - NEAR_DENIAL) : at][::-1])
    after = _until_cut(pieces[at + 1 : at + 1 + NEAR_JOINT])
    if any(piece.kind in (K.DENY, K.NOT, K.OTHERS) for piece in before) or any(
        piece.text in ("free", "gone") for piece in after[:2]
    ):
        return False
    if any(is_cued(piece.text, OVER) for piece in _until_cut(pieces[at + 1 : at + 1 + LONGEST_REMARK])):
        return False  # "the pain in my lower back is gone"
    if pieces[at].kind is K.PAIN:
        said_of = next((piece.kind for piece in before if piece.kind is not K.NUMBER), None)
        of_kit = any(is_cued(piece.text, WORN) for piece in after[:1])  # "broke my knee sleeve"
        return said_of is not K.UNRELATED and not of_kit and not _is_soreness(pieces[at], before[::-1] + after)
    if _is_denied_of_it(pieces, at):
        return False
    worn = [near for near, behind in pairwise(after) if near.kind is K.JOINT and is_cued(behind.text, WORN)]
    near = (*before, *(piece for piece in after if piece not in worn))
    if not any(piece.kind is K.JOINT for piece in near):
        return False  # "broke my knee sleeve" among them
    if pieces[at].told == INJURED:  # "isn't bothering me", "blockiert nicht mehr"
        return not any(piece.kind is K.NEVER for piece in before) and kind_at(pieces, at + 1) not in DENYING
    return not _is_of_earlier(before[::-1] + after)


OVER, WORN = frozenset(("painover",)), frozenset(("worn",))


def _is_soreness(word: Piece, near: list[Piece]) -> bool:
    """ "legs still aching from monday": a muscle's, from an earlier day."""
    kinds = [piece.kind for piece in near]
    return is_cued(word.text, ACHING) and K.MUSCLE in kinds and K.JOINT not in kinds and _is_of_earlier(near)


ACHING = frozenset(("aches",))


def _is_of_earlier(pieces: list[Piece]) -> bool:
    """ "sore from monday"; and not "sore after squats", which it is now."""
    told = [piece for piece in pieces if piece.kind is not K.FILLER]
    for piece, behind in zip(told, [*told[1:], None], strict=False):
        of_a_lift = piece.kind is K.NOT_DATE and (behind is None or behind.kind is K.NAME)
        if piece.kind in EARLIER and not of_a_lift:
            return True
    return False


def _is_denied_of_it(pieces: list[Piece], at: int) -> bool:
    """ "knee tight, no pain though", "no pain, just a tight knee"; not "shoulder tight, no pain in the knee"."""
    before = _of_the_remark(pieces[max(0, at - LONGEST_REMARK) : at][::-1])[::-1]
    around = [*before, pieces[at], *_of_the_remark(pieces[at + 1 : at + 1 + LONGEST_REMARK])]
    several = len({piece.text for piece in around if piece.kind is K.JOINT}) > 1
    if several or any(piece.kind in EARLIER for piece in around):
        return False
    return any(
        piece.kind is K.DENIED or (piece.kind in DENYING and after.kind is K.PAIN)
        for piece, after in zip(around, [*around[1:], around[-1]], strict=True)
    )


REMARK_ENDS = frozenset((K.LINE, K.STOP, K.QUESTION, K.NAME))


def _of_the_remark(pieces: list[Piece]) -> list[Piece]:
    """Those pieces that come before the sentence ends or another lift is named."""
    return pieces[: next((at for at, piece in enumerate(pieces) if piece.kind in REMARK_ENDS), len(pieces))]


def _until_cut(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    for piece in pieces:
        if piece.kind in SENTENCE:
            break
        out.append(piece)
    return out

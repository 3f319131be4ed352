"""Numbers that stand beside the sets and are none: effort, rest, tempo, pauses, settings, scales.

rest    = NUMBER "rest" | "rest" NUMBER
setting = "seat" NUMBER | NUMBER "degrees"
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from itertools import chain

from engine.reading.ahead import aside, is_amount, kind_at, past_links
from engine.reading.clocks import HALVES_OF_THE_DAY, of_the_day, past_total
from engine.reading.efforts import EFFORT_WORDS, with_efforts
from engine.reading.kinds import K
from engine.reading.labels import SEPARATORS, may_hold_labels, without_labels
from engine.reading.parts_of_sets import part_of_the_sets
from engine.reading.pieces import LOAD_LABELS, MOST_LOADED_REPS, NOTHING, Piece, Role, kinds_of
from engine.reading.roughly import may_be_rough, with_rough_numbers
from engine.reading.scales import (
    RATED,
    TEMPO_DIGITS,
    behind_bare_tempo,
    behind_dashed_tempo,
    is_x_tempo,
    rates,
    tells_tempo,
    tempo,
)
from engine.reading.spans import may_hold_spans, past_a_span
from engine.values.load import Unit

NUMBERS_OF_SETS = 3
LEAST_BODY_WEIGHT = 35
"""Less than this is taken for a load, as a person seldom weighs it. Common practice, no source."""
I_AM = frozenset(("i'm", "im", "am"))
ENDS = SEPARATORS | {K.OPEN, K.CLOSE, K.TODAY, K.DATE}
END_OR_FILLER = ENDS | {None, K.FILLER}

TIMED = frozenset((Role.SECONDS, Role.PLURAL))


def without_marks(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with efforts gathered into one piece each, and with numbers that are no
    sets taken out.
    """
    left = without_asides(pieces, kinds)
    if K.SETS in kinds:
        left = _without_places(left)
    if left is not pieces:
        kinds = kinds_of(left)
    return without_labels(left) if left and may_hold_labels(left, kinds) else left


def without_asides(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The same, with the labels of lines and clauses left in: a correction points with "set 2"."""
    if K.SLASH in kinds and K.EACH in kinds:
        pieces = _without_slash_of_each(pieces)
    if not kinds.isdisjoint(EFFORT_WORDS):
        pieces = with_efforts(pieces)
    rough = may_be_rough(pieces, kinds)
    rated = not kinds.isdisjoint(RATING) and not kinds.isdisjoint(RATED)
    beside = rated or not kinds.isdisjoint(BESIDE_WORDS) or holds_odd_numbers(pieces, kinds)
    if beside or may_hold_spans(pieces, kinds):
        pieces = _beside(pieces)
    return with_rough_numbers(pieces) if rough else pieces


def holds_odd_numbers(pieces: list[Piece], kinds: set[K]) -> bool:
    """Whether a number here may tell a time, a tempo or a pair by its own spelling, or by an "am" behind it."""
    if [piece for piece in pieces if piece.kind is K.NUMBER and (piece.role in ODD_ROLES or _may_be_tempo(piece.text))]:
        return True
    return not kinds <= WORDLESS and not HALVES_OF_THE_DAY.isdisjoint([piece.text for piece in pieces])


def _may_be_tempo(digits: str) -> bool:
    return len(digits) == TEMPO_DIGITS and digits.isdigit()


def _without_slash_of_each(pieces: list[Piece]) -> list[Piece]:
    """ "8/side" is "8 a side"."""
    behind: list[Piece | None] = [*pieces[1:], None]
    return [
        piece
        for piece, after in zip(pieces, behind, strict=True)
        if piece.kind is not K.SLASH or after is None or after.kind is not K.EACH
    ]


# ---- rest, pauses, tempo, settings


def _beside(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    at = 0
    readers = BESIDE_TEMPOS if any([tells_tempo(piece) for piece in pieces]) else BESIDE
    while at < len(pieces):
        piece = pieces[at]
        gather = readers.get(piece.kind)
        if gather is None:
            out.append(piece)
            at += 1
        else:
            at = gather(pieces, at, out)
    return out


def _rest(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    after = past_links(pieces, at + 1)
    if is_amount(pieces, after) and _is_a_rest(pieces, after):
        end = after + 1
        while kind_at(pieces, end) in RANGED and is_amount(pieces, end + 1):
            end += 2  # "rest 2-3 min", "rest 90/120"
        out.append(aside(pieces[at]))
        return end
    _drop_timed(out, also_bare=True)
    others = pieces[at].text == "rest" and is_amount(pieces, at + 1) and out and out[-1].kind in AHEAD_OF_THE_OTHERS
    out.append(pieces[at]._replace(kind=K.ALTERED) if others else aside(pieces[at]))
    return at + 1


def _is_a_rest(pieces: list[Piece], at: int) -> bool:
    """ "rest 90", "rest 2 min"; and not "short rest 3x5 100", "short rest 5 5 5"."""
    if pieces[at].role in TIMED:
        return True
    behind = kind_at(pieces, at + 1)
    if behind is K.DASH and is_amount(pieces, at + 2) and pieces[at + 2].role in TIMED:
        return True  # "rested 2-3 min"
    if behind is K.SLASH and is_amount(pieces, at + 2) and pieces[at].value >= SHORTEST_TYPED:
        return True
    if behind is K.PLUS and pieces[at + 1].glued:
        return False  # "rest 12+4+3"
    return pieces[at].value >= SHORTEST_REST and behind not in (K.TIMES, K.NUMBER, K.AT, K.KG, K.LB, K.SLASH)


SHORTEST_TYPED = 45
"""Seconds; from here on two numbers with a slash behind "rest" are no reps. Common practice, no source."""
AHEAD_OF_THE_OTHERS = frozenset((K.FILLER, K.COMMA, K.AND, K.THEN, K.LINE))
"""Behind these "rest 80x7" tells of the other sets, and of no time between them."""
RANGED = frozenset((K.DASH, K.SLASH))
SHORTEST_REST = 10
"""Seconds; a smaller number behind "rest" may be reps. Common practice, no source."""


def _drop_timed(out: list[Piece], also_bare: bool) -> None:
    """Takes the time before "rest" or "pause" away: "90s rest", "2-3 min rest", and ", 90 rest"."""
    if not out or kind_at(out, len(out) - 1) is not K.NUMBER:
        return
    bare = also_bare and out[-1].role is Role.BARE and len(out) >= 2 and out[-2].kind is K.COMMA
    if out[-1].role in TIMED or bare:
        time = out.pop()
        if len(out) >= 2 and out[-1].kind is K.DASH and out[-2].kind is K.NUMBER:
            if _is_span(out, time):
                del out[-2:]
            elif _ends_a_list(out) and not out[-2].glued and _rises_to(out[-2], time):
                out.append(time._replace(kind=K.UNCLEAR))  # "8, 8, 2 - 3 min rest": reps, or minutes


def _rises_to(first: Piece, time: Piece) -> bool:
    """Whether "2 - 3 min" may be a span of minutes."""
    most = Decimal(time.text) if time.text.isdigit() else time.value
    return most <= LONGEST_REST_IN_MINUTES and first.value < most <= first.value * WIDEST_SPAN


def _ends_a_list(out: list[Piece]) -> bool:
    """Whether "8, 8, 2" stands before the dash."""
    return [piece.kind for piece in out[-5:-2]] == [K.COMMA, K.NUMBER, K.COMMA]


LONGEST_REST_IN_MINUTES = 10
WIDEST_SPAN = 4
"""How many times the shorter rest of a span the longer one may be. Common practice, no source."""


def _is_span(out: list[Piece], time: Piece) -> bool:
    """ "2-3 min rest", "2 - 3 min rest" on its own; in "3x8 @ 85 - 90s rest" the dash parts the load from the rest."""
    if out[-1].glued and time.glued:
        return True
    if len(out) > 2 and out[-3].kind is K.COMMA and (out[-2].glued or _ends_a_list(out)):
        return False  # "4,3,2,1 - 2 min pause": the last of the reps
    apart = len(out) == 2 or out[-3].kind in (K.COMMA, K.OPEN, K.STOP, K.LINE)
    return apart and _rises_to(out[-2], time)


def _pause(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    after = at + 1
    if after < len(pieces) and pieces[after].kind is K.NUMBER and pieces[after].role in TIMED:
        after += 1
    else:
        _drop_timed(out, also_bare=False)
    out.append(aside(pieces[at]))
    return after


def _setting(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "seat 5", "30 degrees"."""
    if pieces[at].text == "no" and out and out[-1].kind in BEFORE_A_NO and is_amount(pieces, at + 1):
        out.append(pieces[at]._replace(kind=K.NOT))  # "3x8 80, no 85"; "machine no 4" is a setting
        return at + 1
    measure = pieces[at].text.startswith(("deg", "inch", "cm"))
    if measure and out and out[-1].kind is K.NUMBER and out[-1].role is Role.BARE:
        out[-1] = aside(out[-1])
        return at + 1
    after = past_links(pieces, at + 1)
    out.append(aside(pieces[at]))
    roles = (Role.BARE, Role.LOAD) if pieces[at].text in SUMS else (Role.BARE,)
    numbered = is_amount(pieces, after) and pieces[after].role in roles
    return after + 1 if numbered and kind_at(pieces, after + 1) is not K.TIMES else at + 1


BEFORE_A_NO = frozenset((K.NUMBER, K.COMMA, K.KG, K.LB, K.DASH, K.OPEN))
SUMS = frozenset(
    ("total", "e1rm", "est", "estimated", "calculated", "projected", "tonnage", "volume", "gesamtvolumen", "volumen",
     "tonelaje", "tonnellaggio")
)  # fmt: skip


def _body_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "bw 77.2" tells what she weighs; "bw 12 10 8" and "bw x 12" are sets."""
    after = past_links(pieces, at + 1)
    end = after + 1
    told = (
        is_amount(pieces, after)
        and pieces[after].value >= LEAST_BODY_WEIGHT
        and (end >= len(pieces) or pieces[end].kind in ENDS or pieces[after].role is Role.LOAD)
        and (pieces[after].value % 1 != 0 or pieces[after].role is Role.LOAD or _stands_apart(pieces[after], out))
    )
    if told:
        heads = not out or out[-1].kind in ENDS  # in "8, 8, 7 bodyweight 79" the clause tells of a set, too
        out.append(pieces[at]._replace(kind=K.UNRELATED) if heads else aside(pieces[at]))
        return _behind_a_change(pieces, end)
    if out and _weighs(out, pieces, at):
        if out[-1].kind is K.OF:
            out.pop()
        out[-1] = aside(out[-1])
        if len(out) > 1 and out[-2].kind in (K.AT, K.WITH):
            del out[-2]
        return at + 1
    out.append(pieces[at])
    return at + 1


def _stands_apart(weight: Piece, out: list[Piece]) -> bool:
    """Whether nothing, or only counts of reps, stands before it: "pull ups 8 8 8 bodyweight 79"."""
    if not out or out[-1].kind in ENDS:
        return True
    told = [piece for piece in out if piece.kind is K.NUMBER and piece.role not in TIMED]
    if out[-1].kind is not K.NUMBER or Role.CHANGE in [piece.role for piece in told]:
        return False
    loaded = Role.LOAD in [piece.role for piece in told]  # "squat 100kg 3x5 bw 82"
    loaded = loaded or (len(told) >= NUMBERS_OF_SETS and any(piece.kind is K.TIMES for piece in out))
    return loaded or max([piece.value for piece in told], default=NOTHING) * 2 < weight.value


def _weighs(out: list[Piece], pieces: list[Piece], at: int) -> bool:
    """ "dips 8 8 8 at 79kg bodyweight": what she weighs; and not "push ups 40 bodyweight", "79kg bodyweight squats"."""
    weight = out[-2] if out[-1].kind is K.OF and len(out) > 1 else out[-1]
    if weight.kind is not K.NUMBER or weight.value < LEAST_BODY_WEIGHT or kind_at(pieces, at + 1) is K.TIMES:
        return False
    linked = len(out) > 1 and out[out.index(weight) - 1].kind in (K.AT, K.WITH)
    told = weight.role is Role.LOAD or (weight.role is Role.BARE and linked)
    return told and kind_at(pieces, at + 1) in END_OR_FILLER


def _behind_a_change(pieces: list[Piece], end: int) -> int:
    """ "bw 82.6 this morning, down 0.4": the change belongs to the weight."""
    at = end
    while kind_at(pieces, at) in (K.TODAY, K.DATE, K.COMMA, K.FILLER):
        at += 1
    changed = at < len(pieces) and pieces[at].text in ("down", "up") and is_amount(pieces, at + 1)
    return at + 2 if changed and kind_at(pieces, at + 2) is not K.TIMES else end


def _field(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "sets: 3, reps: 10, weight: 60": the label in front says what the number counts."""
    piece = pieces[at]
    if _is_a_place(pieces, at, out):
        out.append(aside(piece))
        return at + 2
    after = at + 1 + (kind_at(pieces, at + 1) in (K.COLON, K.EQUALS))
    if piece.kind is K.SETS and _names_several(pieces, at, out):
        out.append(pieces[at + 1]._replace(role=Role.SETS, told=FIRST_OF_SEVERAL))
        return at + 2
    if piece.kind is K.SETS and out and (out[-1].kind is K.ORDINAL or out[-1].text in POINTED):
        out.append(piece)  # "2nd set: 9 reps"
        return at + 1
    plural = piece.kind in (K.REPS, K.FILLER) or piece.text.endswith("s") or after > at + 1
    if (
        plural
        and is_amount(pieces, after)
        and pieces[after].role is Role.BARE
        and kind_at(pieces, after + 1) is not K.TIMES
    ):
        out.append(pieces[after]._replace(role=FIELDS.get(piece.kind, Role.LOAD)))
        return after + 1
    out.append(piece)
    return at + 1


POINTED = frozenset(("that", "this", "der", "dieser", "esta", "essa", "cette", "questa", "deze", "ta", "этот"))
""" "that set: 6": one that is pointed at, and no count."""


def _names_several(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "sets 2 & 3 10 reps", "sets 1-3: 80x8": which sets they were, and no counts."""
    behind = [piece.kind for piece in pieces[at + 1 : at + 5]]
    counted = bool(out) and out[-1].kind is K.NUMBER  # "3 sets 8-10"
    if counted or behind[:3] not in SEVERAL or len(behind) < len(SEVERAL[0]) + 1:
        return False
    first, last = pieces[at + 1], pieces[at + 3]
    bare = first.role is last.role is Role.BARE
    return bare and first.value < last.value <= MOST_PLACES_NAMED and behind[3] not in (K.TIMES, K.REPS, K.AT, K.SLASH)


def _without_places(pieces: list[Piece]) -> list[Piece]:
    """The pieces with a sign of doubt for "sets 2 and 3": whether there was a first one is not told."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        named = pieces[at].kind is K.NUMBER and pieces[at].told == FIRST_OF_SEVERAL
        out.append(pieces[at]._replace(kind=K.UNCLEAR) if named else pieces[at])
        at += 3 if named else 1
    return out


FIRST_OF_SEVERAL = 1
SEVERAL = ([K.NUMBER, K.AND, K.NUMBER], [K.NUMBER, K.DASH, K.NUMBER], [K.NUMBER, K.FILLER, K.NUMBER])
MOST_PLACES_NAMED = 6
"""Nobody tells of a seventh set by its place. Common practice, no source."""


def _is_a_place(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "cramped on set 2", "knees caved on rep 5", "filmed set 2": which set or rep a remark speaks of."""
    single = pieces[at].kind in FIELDS and not pieces[at].text.endswith("s") and is_amount(pieces, at + 1)
    if not single or not out or kind_at(pieces, at + 2) not in BEHIND_A_PLACE or pieces[at + 1].role is not Role.BARE:
        return False
    if out[-1].text not in ("on", "in", "during", "after", "before", "from", "around", "by", "since"):
        return out[-1].kind in RATED and any(piece.kind is K.TIMES for piece in out)
    noted = len(out) > 1 and out[-2].kind in REMARKED
    return noted and (out[-2].kind in RATED or any(piece.kind is K.TIMES for piece in out))


BEHIND_A_PLACE = frozenset((None, K.COMMA, K.LINE, K.STOP, K.AND, K.CLOSE))
REMARKED = RATED | {K.PLAIN, K.FILLER, K.JOINT, K.MUSCLE, K.PAIN, K.SORE}


FIELDS = {K.SETS: Role.SETS, K.REPS: Role.REPS}


def _weight_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "weight 77.2 this morning", "i'm 79kg now" tell what she weighs; "reps 8 weight 55" is a load."""
    piece, end = pieces[at], at + 2
    if piece.text in I_AM and is_amount(pieces, at + 1) and kind_at(pieces, end) in END_OR_FILLER:
        weight = pieces[at + 1]
        if weight.role is Role.LOAD and weight.value >= LEAST_BODY_WEIGHT:
            out.append(piece._replace(kind=K.UNRELATED))
            return end
    starts = not out or out[-1].kind in SEPARATORS or out[-1].kind is K.FILLER
    weighed = piece.text in ("weight", "gewicht", "peso", "poids") and starts and is_amount(pieces, at + 1)
    if weighed and (kind_at(pieces, end) is K.TODAY or (pieces[at + 1].value * 4) % 1 != 0):
        out.append(piece._replace(kind=K.UNRELATED))
        return end
    if piece.text in LOAD_LABELS:
        return _field(pieces, at, out)
    out.append(piece)
    return at + 1


def _pin(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "pin 5", "plate 9": a place in the stack, no load."""
    piece, after = pieces[at], pieces[at + 1] if at + 1 < len(pieces) else None
    numbered = after is not None and after.kind is K.NUMBER and after.role is Role.BARE
    behind_number = bool(out) and out[-1].kind is K.NUMBER and not _is_a_place_in_the_stack(pieces, at, out)
    if piece.text == STACK and _is_weight_of_stack(out):
        out.append(aside(piece))
        return at + 1
    if numbered and not behind_number:
        out.append(piece._replace(kind=K.PIN))
        return at + 2
    out.append(piece)
    return at + 1


def _is_a_place_in_the_stack(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "47kg pin 9", "3x12 pin 6, 25kg"; in "12 pin 6 10" nobody knows."""
    return out[-1].unit is not None or (pieces[at].kind is K.PIN and kind_at(pieces, at + 2) in ENDS | {None})


def _is_weight_of_stack(out: list[Piece]) -> bool:
    """ "with 60 on the stack": no stack has sixty places."""
    at = len(out) - 1
    while at >= 0 and out[at].kind is K.FILLER:
        at -= 1
    number = out[at] if 0 <= at < len(out) - 1 and out[at].kind is K.NUMBER else None
    return number is not None and (number.role is Role.LOAD or number.value > MOST_PLACES_OF_A_STACK)


STACK = "stack"
MOST_PLACES_OF_A_STACK = 25
"""Common practice, no source."""


def _shared_reps(piece: Piece, pieces: list[Piece], at: int) -> Piece:
    """ "6s: 60 70 80": reps of each of the loads behind the colon; "14s: 11 10 8" are dumbbells."""
    headed = piece.role is Role.PLURAL and kind_at(pieces, at + 1) is K.COLON and is_amount(pieces, at + 2)
    headed = headed and pieces[at + 2].value > MOST_LOADED_REPS
    return piece._replace(kind=K.COUNT, told=int(piece.value)) if headed else piece


def _unit_label(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "sets=3 reps=7 kg=77.5": the unit in front says what the number counts."""
    labels = kind_at(pieces, at + 1) in (K.EQUALS, K.COLON) and is_amount(pieces, at + 2)
    if not labels or pieces[at + 2].role is not Role.BARE or kind_at(pieces, at + 3) in (K.TIMES, K.NUMBER):
        out.append(pieces[at])
        return at + 1
    out.append(pieces[at + 2]._replace(role=Role.LOAD, unit=Unit.KG if pieces[at].kind is K.KG else Unit.LB))
    return at + 3


def _bar(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "bar speed ok", "bar felt heavy": said of the bar, and no empty bar lifted."""
    if any(piece.kind is K.ASKS for piece in out[-REACH_OF_A_QUESTION:]):
        out.append(aside(pieces[at]))  # "no idea what was on the bar"
        return at + 1
    said = kind_at(pieces, at + 1) in SAID_OF_A_BAR and kind_at(pieces, at + 2) not in (K.TIMES, K.NUMBER)
    out.append(aside(pieces[at]) if said else pieces[at])
    return at + 1


REACH_OF_A_QUESTION = 3
SAID_OF_A_BAR = frozenset((K.PLAIN, K.NOTE, K.GOT))


def _x_tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "31x1" or "3-1-1", in a message that speaks of tempo."""
    linked = bool(out) and out[-1].kind in (K.TIMES, K.AT, K.WITH, K.SLASH, K.DASH, K.COLON)
    behind = at if linked or pieces[at].role is not Role.BARE else behind_dashed_tempo(pieces, at)
    if behind > at:
        out.append(aside(pieces[at]))
        return behind
    beside = [*out[-2:], *pieces[at + 3 : at + 4]]
    told = is_x_tempo(pieces, at) and any([tells_tempo(piece) for piece in beside])
    if not told or not any(piece.kind is K.NUMBER for piece in chain(pieces[at + 3 :], out)):
        return _no_set(pieces, at, out)
    out.append(aside(pieces[at]))
    return at + 3


def _of_the_day(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    behind = of_the_day(pieces, at, out)
    if behind > at:
        out.append(aside(pieces[at]))
    return behind if behind > at else 0


def _no_set(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """A number that may be a scale, a time, a tempo or a pair."""
    after = kind_at(pieces, at + 1)
    if after in (K.SLASH, K.OF, K.OUT_OF) and not _in_a_list(pieces, at) and rates(pieces, at, out):
        return at + 3
    behind = part_of_the_sets(pieces, at, out) or _of_the_day(pieces, at, out)
    if behind:
        return behind
    return _by_role(pieces, at, out)


def _by_role(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a number that may be a tempo, a time or shared reps by how it is written."""
    piece = pieces[at]
    if piece.role is Role.SECONDS and piece.value >= LONGEST_HOLD and _tells_how_long(pieces, at + 1, out):
        out.append(aside(piece))
        return at + 1
    if piece.role is Role.BARE and (behind_span := past_a_span(pieces, at, out)):
        out.append(aside(piece))
        return behind_span
    if piece.role is Role.BARE:
        behind_tempo = behind_bare_tempo(pieces, at, out)
        if behind_tempo > at:
            piece, at = aside(piece), behind_tempo - 1
    elif piece.role is Role.NOT_A_SET:
        piece, at = aside(piece), past_total(pieces, at + 1) - 1
    elif piece.role is Role.PLURAL:
        piece = _shared_reps(piece, pieces, at)
    out.append(piece)
    return at + 1


def _tells_how_long(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "10 min of cycling", "15 min on the bike"; "after waiting 15 minutes"."""
    if kind_at(pieces, at) in ENDING_A_TIME and any(piece.kind is K.NOT_DATE for piece in out[-REACH_OF_AFTER:]):
        return True
    while at < len(pieces) and pieces[at].kind in (K.OF, K.FILLER, K.WITH):
        at += 1
    return kind_at(pieces, at) is K.UNRELATED


ENDING_A_TIME = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.FOR))
REACH_OF_AFTER = 3
LONGEST_HOLD = 300
"""Seconds; from here on a time is no hold. Common practice, no source."""


def _plain_or_no_set(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The same; most numbers stand where nothing can make anything of them but what they are."""
    piece = pieces[at]
    plain = piece.role is Role.BARE and len(piece.text) != TEMPO_DIGITS
    if not plain or kind_at(pieces, at + 1) not in LEAVING_A_NUMBER:
        return _no_set(pieces, at, out)
    out.append(piece)
    return at + 1


def _in_a_list(pieces: list[Piece], at: int) -> bool:
    """ "12/10/10/10": more than two numbers with slashes between them are no scale."""
    before = at > 0 and pieces[at - 1].kind is K.SLASH and pieces[at].glued
    return before or (kind_at(pieces, at + 3) is K.SLASH and is_amount(pieces, at + 4))


BESIDE: dict[K, Callable[[list[Piece], int, list[Piece]], int]] = {
    K.REST: _rest,
    K.PAUSE: _pause,
    K.TEMPO: tempo,
    K.SETTING: _setting,
    K.BAR: _bar,
    K.KG: _unit_label,
    K.LB: _unit_label,
    K.BODY: _body_told,
    K.FILLER: _weight_told,
    K.SETS: _field,
    K.REPS: _field,
    K.PIN: _pin,
    K.PLATE: _pin,
    K.NUMBER: _plain_or_no_set,
}


BESIDE_TEMPOS = {**BESIDE, K.NUMBER: _x_tempo}
BESIDE_WORDS = (frozenset(BESIDE) - {K.NUMBER}) | {K.DASH}
RATING = frozenset((K.SLASH, K.OF, K.OUT_OF))
LEAVING_A_NUMBER = frozenset((None, K.TIMES, K.NUMBER, K.COMMA, K.AT, K.LINE, K.COLON, K.OPEN, K.CLOSE, K.NAME))
"""Behind a plain number these make nothing of it but what it is."""
WORDLESS = frozenset(
    (K.NAME, K.NUMBER, K.TIMES, K.COMMA, K.AT, K.LINE, K.COLON, K.OPEN, K.CLOSE, K.SLASH, K.DASH, K.PLUS)
)
ODD_ROLES = frozenset((Role.NOT_A_SET, Role.PLURAL, Role.SECONDS, Role.SETS))

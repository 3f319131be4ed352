"""Efforts told beside sets, each gathered into one piece.

effort = ( "rpe" | "rir" ) NUMBER+ | NUMBER ( "rpe" | "rir" | "in the tank" | "left" | "more" )
       | ( "could have done" | "left" ) NUMBER [ "more" | "in" | "in reserve" ]
A scale with a number that it does not have is unclear, and asked about; so are more reps left than anyone can tell.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.marks.all_that_was_possible import LONGEST_AHEAD, is_all, may_be_all
from engine.reading.marks.effort_lists import listed_ahead
from engine.reading.marks.effort_spans import with_effort_spans
from engine.reading.words.ahead import aside, is_amount, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, is_one_word
from engine.values.effort import TOP_OF_SCALE, Effort

MOST_LEFT_IN_RESERVE = 5
NOT_LAST_EFFORT = frozenset(
    (K.TIMES, K.AT, K.RPE, K.RIR, K.RESERVE, K.SLASH, K.DASH, K.PLUS, K.REPS, K.PLAIN, K.OTHERS, K.UNRELATED)
)
NUMBER_BEHIND, ONLY_POSSIBLE, WITH_ITS_NUMBER, POSSIBLE, POSSIBLE_BEHIND = 1, 2, 3, 4, 5
"""What a RESERVE piece tells where its number stands behind it; of the second kind are reps that were not done, and of
the third, too, where a number follows, and nothing else: "dava 8", "мог 8". The last two and the third may tell all
reps that were possible and not those that were left: "could have done 8", "8 in me".
"""
AHEAD_OF_A_NUMBER = frozenset((NUMBER_BEHIND, ONLY_POSSIBLE, WITH_ITS_NUMBER, POSSIBLE))
MAY_TELL_ALL = frozenset((WITH_ITS_NUMBER, POSSIBLE, POSSIBLE_BEHIND))
HAD = frozenset(("had",))
TELLS_ITSELF = 10
"""From here on it tells how many were left beside this: 11 for "left a rep in the tank"."""
LEADING_UP = frozenset((K.RESERVE_LEFT, K.LEFT, K.WITH, K.ANOTHER, K.MORE, K.EXTRA))
AHEAD_OF_WHAT_IS_LEFT = frozenset((K.RESERVE_LEFT, K.WITH, K.COMMA, K.OPEN, K.STOP, K.DASH))
AHEAD_OF_ALL = frozenset((K.RESERVE_LEFT, K.FILLER, K.PLAIN))
LEFT_UNCLEAR = frozenset((K.COMMA, K.OPEN, K.STOP, K.DASH, K.NUMBER))
COUNTING_ON = frozenset(
    (K.TIMES, K.SLASH, K.NUMBER, K.AT, K.KG, K.LB, K.SETS, K.OF, K.BY, K.PLUS, K.COLON, K.COUNT, K.EACH)
)
"""Behind a number that these follow, it counts sets, reps or a load, and not what was left."""
REACH_OF_BRACKETS = 20
ENDS_OF_A_LIST = frozenset((K.COMMA, K.STOP, K.LINE, K.CLOSE))
SCALE_LINKS = frozenset((K.COLON, K.EQUALS, K.OF, K.AT))
SAID_OF_AN_EFFORT = frozenset(("perhaps", "likely", "like", "roughly"))
""" "rpe maybe 8", as "rpe around 8": close enough to be kept."""
REMAINING = frozenset(("yetleft",))
EFFORT_WORDS = frozenset((K.RPE, K.RIR, K.RESERVE, K.MORE, K.LEFT))


def with_efforts(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each effort and its numbers made one piece."""
    pieces = with_effort_spans(pieces)
    out: list[Piece] = []
    at = 0
    sided = any(piece.kind is K.RIGHT for piece in pieces)
    while at < len(pieces):
        piece = pieces[at]
        if piece.kind in EFFORT_WORDS and out and out[-1].text == "one" and out[-1].kind is K.FILLER:
            out[-1] = out[-1]._replace(kind=K.NUMBER, value=Decimal(1), spelled=True)  # "one left on the last"
        if piece.kind is K.RESERVE and out and out[-1].kind is K.ANOTHER and out[-1].text == "one":
            out[-1] = out[-1]._replace(kind=K.NUMBER, value=Decimal(1), spelled=True)  # "one more in me"
        if piece.kind in (K.RPE, K.RIR):
            at = _scaled(pieces, at, out)
        elif piece.kind is K.RESERVE and piece.told >= TELLS_ITSELF:
            left = Effort(Decimal(piece.told - TELLS_ITSELF))
            out.append(piece._replace(kind=K.EFFORT, efforts=(left,), told=0))
            at += 1
        elif piece.kind is K.RESERVE and (piece.told in AHEAD_OF_A_NUMBER or _is_told_behind(pieces, at, out)):
            at = _reserve_ahead(pieces, at, out)
        elif piece.kind is K.RESERVE or (_may_be_left(piece) and _left_over(pieces, at, out, sided)):
            at = _reserve(pieces, at, out)
        else:
            out.append(piece)
            at += 1
    return out


def _may_be_left(piece: Piece) -> bool:
    """ "2 more", "2 left"; the word for a left side of most languages says nothing of what remains."""
    return piece.kind is K.MORE or (piece.kind is K.LEFT and is_cued(piece.text, REMAINING))


def _scaled(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    scale = pieces[at]
    after = at + 1
    while after < len(pieces) and (pieces[after].kind in SCALE_LINKS or _is_said_of_it(pieces[after])):
        after = _past_hedges(pieces, after + 1)
    if out and out[-1].kind is K.AT:
        out.pop()
    values, end = _effort_list(pieces, after)
    told = pieces[after].told if values else 0
    if not values and out and (listed := listed_ahead(out, scale.kind)) is not None:
        if not listed.plain:
            out.append(scale._replace(kind=K.UNCLEAR))
            return at + 1
        values, end, scale = listed.values, at + 1, scale._replace(start=out[listed.start].start)
        del out[listed.start :]
    elif not values and out and _is_small(out[-1]) and not _counts_reps(out):
        told = out[-1].told
        scale = scale._replace(start=out[-1].start)
        values, end = [out.pop().value], at + 1
        if out and out[-1].kind is K.AT:
            out.pop()
    efforts = tuple(effort for value in values if (effort := _effort(scale.kind, value)) is not None)
    if not efforts or len(efforts) < len(values):
        unclear = bool(values) or (is_amount(pieces, after) and pieces[after].role is Role.BARE)
        out.append(scale._replace(kind=K.UNCLEAR) if unclear else aside(scale))
        return max(end, at + 1)
    out.append(scale._replace(kind=K.EFFORT, efforts=efforts, end=pieces[end - 1].end, told=told))
    return end


def _counts_reps(out: list[Piece]) -> bool:
    """ "80x8 rpe easy": the number in front is the reps of a pair, and no effort."""
    return len(out) > 1 and out[-2].kind is K.TIMES


def _past_hedges(pieces: list[Piece], at: int) -> int:
    """The place behind the words of "rpe was more like 9", "rpe was closer to 9"; the same where no number follows."""
    end = at
    while end < len(pieces) and is_cued(pieces[end].text, RATED_AS):
        end += 1
    return end if is_amount(pieces, end) else at


RATED_AS = frozenset(("ratedas",))


def _is_said_of_it(piece: Piece) -> bool:
    return is_cued(piece.text, SAID_OF_AN_EFFORT) or spoken(piece.text) in phrasebook().copulas


def _effort_list(pieces: list[Piece], at: int) -> tuple[list[Decimal], int]:
    values: list[Decimal] = []
    end, first, scaled = at, 0, max(0, at - 1)
    while at < len(pieces) and _is_small(pieces[at]):
        after = pieces[at + 1].kind if at + 1 < len(pieces) else None
        if values and after is K.CLOSE and not _opened_before(pieces, at):
            break  # "rpe 9, 2) 80x5": the number of the next set
        if values and after in ENDS_OF_REPS and pieces[at].value < values[0]:
            return values[:1], first  # "8 rpe 9, 7 missed, 6 missed"
        if (after is K.TIMES and (values or pieces[at + 1].glued or not is_amount(pieces, at + 2))) or (
            values and after in NOT_LAST_EFFORT and not (after is K.SLASH and pieces[at + 1].glued)
        ):
            break
        values.append(pieces[at].value)
        at = end = at + 1
        first = first or end
        if at < len(pieces) and (pieces[at].kind in (K.COMMA, K.SLASH) or _goes_on(pieces, at)):
            at += 1
    many_left = bool(values) and pieces[scaled].kind is K.RIR and max(values) > MOST_LEFT
    if len(values) > 1 and (values[-1] < values[0] or many_left) and _goes_on_to_a_load(pieces, end):
        return values[:1], first
    return values, end


def _goes_on_to_a_load(pieces: list[Piece], at: int) -> bool:
    """ "7, 6 rpe 9, 5, 4 at 62.5": what falls to the reps of a load are reps."""
    if kind_at(pieces, at) is K.COMMA and at + 1 < len(pieces) and _is_small(pieces[at + 1]):
        at += 2
    return kind_at(pieces, at) in AHEAD_OF_A_LOAD and is_amount(pieces, at + 1)


MOST_LEFT = 5
"""More reps in reserve than anybody rates one set after another. Common practice, no source."""
ENDS_OF_REPS = frozenset((K.FAILURE, K.MISS))
AHEAD_OF_A_LOAD = frozenset((K.AT, K.WITH))


def _opened_before(pieces: list[Piece], at: int) -> bool:
    """Whether the effort stands in brackets: "(rpe 8, 9)"."""
    brackets = [piece.kind for piece in pieces[max(0, at - REACH_OF_BRACKETS) : at] if piece.kind in (K.OPEN, K.CLOSE)]
    return brackets[-1:] == [K.OPEN]


def _goes_on(pieces: list[Piece], at: int) -> bool:
    """ "rpe 8 and 9": one more effort, where nothing behind it makes it anything else."""
    if pieces[at].kind is not K.AND or at + 1 >= len(pieces) or not _is_small(pieces[at + 1]):
        return False
    return at + 2 >= len(pieces) or pieces[at + 2].kind in ENDS_OF_A_LIST


def _is_small(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and piece.role is Role.BARE and 0 <= piece.value <= TOP_OF_SCALE


def _effort(scale: K, value: Decimal) -> Effort | None:
    if scale is K.RIR:
        return Effort(value) if value <= TOP_OF_SCALE else None
    return Effort.from_rpe(value) if 1 <= value <= TOP_OF_SCALE else None


def _left_over(pieces: list[Piece], at: int, out: list[Piece], sided: bool) -> bool:
    """ "had 3 left", "left one in", "2 more": reps in reserve, where it is not a side and not a request for sets."""
    if pieces[at].kind is K.LEFT and _says_left_in(pieces, at):
        return True
    if pieces[at].kind is K.LEFT and out and _is_small(out[-1]) and _on_the_last(pieces, at + 1):
        return True
    if len(out) < 2 or not _is_small(out[-1]) or (out[-1].glued and out[-2].kind is not K.OPEN):
        return False
    if pieces[at].kind is K.MORE:
        return out[-2].kind is K.RESERVE_LEFT and pieces[at].told != OF_SETS
    return out[-2].kind in AHEAD_OF_WHAT_IS_LEFT and not sided


def _on_the_last(pieces: list[Piece], at: int) -> bool:
    """ "8 8 7 1 left on the last"."""
    while at < len(pieces) and pieces[at].kind is K.FILLER:
        at += 1
    return at < len(pieces) and pieces[at].kind is K.LAST


def _says_left_in(pieces: list[Piece], at: int) -> bool:
    """ "left one in", "left 2 in the tank"."""
    return at + 2 < len(pieces) and pieces[at + 2].text == "in" and _is_small(pieces[at + 1])


def _reserve_ahead(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "could have done 2 more", "me quedaban 2", "dejé 2 en reserva"; and not "hade 3x8"."""
    lead = at + 1 + (kind_at(pieces, at + 1) in FURTHER and is_amount(pieces, at + 2))  # "aguentava mais 2"
    number, end = pieces[lead] if lead < len(pieces) else None, lead + 1
    if number is None and _counts_reps_left(out):
        return _reserve(pieces, at, out)  # "2 reps sobrando"
    if number is not None and number.kind is K.ANOTHER and number.text == "one":
        number = number._replace(kind=K.NUMBER, value=Decimal(1))  # "could have done one more"
    with_a_load = [piece.kind for piece in pieces[end : end + 2]] == [K.WITH, K.NUMBER]
    more = number is not None and number.value > MOST_LEFT_IN_RESERVE and not with_a_load
    more = more or (number is not None and lead == at + 1 and _tells_all(pieces, at, out, number))
    if number is not None and more and kind_at(pieces, end) not in COUNTING_ON and may_be_all(out, number):
        end += kind_at(pieces, end) is K.GOT  # "hätte 8 geschafft"
        out.append(aside(pieces[at])._replace(end=pieces[end - 1].end))
        return end
    ended = end >= len(pieces) or (pieces[end].kind not in COUNTING_ON and not with_a_load)
    ended = ended and not (kind_at(pieces, end) is K.MORE and pieces[end].told == OF_SETS)
    if number is None or not _is_small(number) or number.value > MOST_LEFT_IN_RESERVE or not ended:
        out.append(pieces[at]._replace(kind=BY_ITSELF.get(pieces[at].told, K.FILLER)))
        if number is None or not _is_small(number) or not ended or is_one_word(pieces[at]):
            return at + 1
        out.append(aside(number) if pieces[at].told == NUMBER_BEHIND else number)  # "ne avevo ancora 8"
        return end
    while end < len(pieces) and pieces[end].kind in EFFORT_WORDS:
        end += 1
    _drop_words_ahead(out)
    out.append(
        pieces[at]._replace(kind=K.EFFORT, efforts=(Effort(number.value),), end=pieces[end - 1].end, told=number.told)
    )
    return end


def _tells_all(pieces: list[Piece], at: int, out: list[Piece], number: Piece) -> bool:
    """ "100x3 could have done 5", "capable of 5": all reps that were possible, where no word says so many more."""
    had = pieces[at].told == NUMBER_BEHIND and is_cued(pieces[at].text, HAD)
    left = kind_at(pieces, at + 2) in MORE_BEHIND and pieces[at + 2].told != POSSIBLE_BEHIND
    return (had or pieces[at].told in MAY_TELL_ALL) and not left and is_all(out, number)


MORE_BEHIND = frozenset((K.MORE, K.RESERVE, K.LEFT))


LEADING_ON = AHEAD_OF_ALL | {K.OF, K.COMMA, K.DASH, K.OPEN}
BY_ITSELF = {ONLY_POSSIBLE: K.NEVER, POSSIBLE: K.NEVER, WITH_ITS_NUMBER: K.PLAIN}


FURTHER = frozenset((K.MORE, K.ANOTHER, K.EXTRA))


def _is_told_behind(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "80x5 da gingen noch 2": behind the reps of a set the number of what was left stands behind its word."""
    if len(out) < 2 or kind_at(pieces, at + 2) in COUNTING_ON or not is_amount(pieces, at + 1):
        return False
    last = next((place for place in range(len(out) - 1, 0, -1) if out[place].kind not in LEADING_ON), 0)
    told = out[last].kind is K.NUMBER and out[last - 1].kind is K.TIMES
    return told and _is_small(pieces[at + 1]) and pieces[at + 1].value <= MOST_LEFT_IN_RESERVE


def _drop_words_ahead(out: list[Piece]) -> None:
    """ "with", "noch", "miałem jeszcze": words that only lead up to what was left."""
    while out and out[-1].kind in LEADING_UP:
        out.pop()


def _reserve(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    piece, end, told = pieces[at], at + 1, 0
    if piece.kind is K.LEFT and _says_left_in(pieces, at):
        value, end = pieces[end].value, end + 2
    elif _stands_behind(pieces, end, out):
        value, end = pieces[end].value, end + 1  # "for 5, reps in reserve 2"
    elif piece.told == POSSIBLE_BEHIND and out and is_all(out[-LONGEST_AHEAD:-1], out[-1]):
        out += [aside(out.pop()), aside(piece)]  # "100x3 had 5 in me"
        return end
    elif (out and _is_small(out[-1]) and out[-1].value <= MOST_LEFT_IN_RESERVE) or _counts_reps_left(out):
        told, value = out[-1].told, out.pop().value
    else:
        led = len(out) > 1 and _is_small(out[-1]) and out[-2].kind in AHEAD_OF_ALL
        if led or (out and may_be_all(out[-LONGEST_AHEAD:-1], out[-1])):
            out.append(aside(out.pop()))  # "had 10 in me", "80x5, 8 wären drin gewesen": all that could have been done
        unclear = len(out) > 1 and _is_small(out[-1]) and out[-2].kind in LEFT_UNCLEAR
        out.append(piece._replace(kind=K.UNCLEAR) if unclear else aside(piece))
        return end
    _drop_words_ahead(out)
    out.append(piece._replace(kind=K.EFFORT, efforts=(Effort(value),), told=told))
    return end


def _stands_behind(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "60 for 5, reps in reserve 2", "60x5 reps in reserve 2": the number is behind the words."""
    if at >= len(pieces) or not _is_small(pieces[at]) or kind_at(pieces, at + 1) not in ENDS_OF_A_LIST | {None}:
        return False
    return not out or out[-1].kind in LEFT_UNCLEAR or kind_at(out, len(out) - 2) in AHEAD_OF_REPS


def _counts_reps_left(out: list[Piece]) -> bool:
    """ "2 reps in me", "2 wdh noch drin" behind sets that stand; "3 sets of 5 reps in the tank" counts those done."""
    told = out[-1] if out and out[-1].kind is K.NUMBER else None
    ahead = out[-2].kind if len(out) > 1 else None
    few = told is not None and told.role is Role.REPS and told.value <= MOST_LEFT_IN_RESERVE
    return few and (ahead is None or ahead in AHEAD_OF_REPS_LEFT)


OF_SETS = 1
"""What the languages' files label words for more sets with: "2 more sets in me" are no reps."""
AHEAD_OF_REPS = frozenset((K.FOR, K.TIMES))
AHEAD_OF_REPS_LEFT = LEADING_UP | LEFT_UNCLEAR - {K.NUMBER}

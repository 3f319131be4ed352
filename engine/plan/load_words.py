"""How a line says the load.

at 42.5 kg   @ 52,5kg   8 kg per hand   +10 kg added   20 kg help   body weight   find the load   no load
80 kg x 5 x 3     3x5x100 kg     3x12 55     2x22.5 kg (one in each hand)

A small bare number behind @ or at may be load or effort; what else the line says decides, later.
Each reader looks at one place of the line and answers with its parts, or with none. A line comes here with single
spaces.
"""

from __future__ import annotations

import re
from decimal import Decimal

from engine.plan.amounts import NUMBER, TIMES, UNIT, number, unit_of
from engine.plan.cursor import Cursor
from engine.plan.parts import Aim, LoadOrEffort, Mass, NoLoad, Part, Sets, Slip, ToFind, Weight
from engine.values.effort import TOP_OF_SCALE
from engine.values.load import Basis
from engine.values.plan import Reps

Parts = tuple[Part, ...]
NOTHING: Parts = ()


def _token(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern, re.IGNORECASE)


LEAD = r"(?:(?:at|with|using|load|weight|from|start(?: at| with)?)(?= |:|\d|\+|-)|@)? ?:? ?"
SIGN = r"([+\-−–]?) ?"
PER_HAND = (
    r"(?:per|each|in each|a) (?:hand|dumbbell|db)(?!\w)|/ ?(?:hand|dumbbell|db)(?!\w)|(?:dbs?|dumbbells?)(?!\w)"
    r"|each(?! (?:side|week|time|set|session))(?!\w)"
)
BASIS = (
    rf"(?: ?(?P<hand>{PER_HAND})"
    r"| ?(?P<all>(?:in all|in total|total|altogether|on the bar)(?!\w))"
    r"| (?:kettlebell|kb|vest|plate)(?!\w)"
    r"| ?(?P<stack>(?:on the )?stack(?!\w))"
    r"| ?(?P<added>(?:added|extra|on top|on a belt|plus body ?weight)(?!\w))"
    r"| ?(?P<help>(?:of )?(?:help|assistance|assist(?:ed)?)(?!\w)))?"
)
MASS = _token(rf"{LEAD}{SIGN}(?P<amount>{NUMBER}) ?(?P<unit>{UNIT}){BASIS}")
MASS_NO_UNIT = _token(rf"(?:(?:at|load|weight) ?:? ?|@ ?){SIGN}(?P<amount>{NUMBER})(?P<unit>)(?![\w%]|[.,:/]\d){BASIS}")
BARE_NUMBER = _token(
    rf" ?{TIMES}? ?({NUMBER})(?! ?{UNIT}| ?{TIMES} ?\d|[\w%]|[.,:/-]\d)"
    r"(?=$|[,;)]| [@(+,;]| (?:rest|rpe|rir|then|for|with)(?!\w))"
)
PAIR = _token(rf"2 ?{TIMES} ?(?P<amount>{NUMBER}) ?(?P<unit>{UNIT})(?: ?(?:dumbbells?|dbs?|each)(?!\w))?")
PER_SIDE = _token(r" ?(?:per|each|a|/) ?side(?!\w)")
FACTOR_MASS = _token(rf" ?{TIMES} ?(?P<amount>{NUMBER}) ?(?P<unit>{UNIT})?(?!\w){BASIS}")
FACTOR_REPS = _token(rf" ?{TIMES} ?(\d{{1,3}})(?: ?{TIMES} ?(\d{{1,2}}))?(?!\w)")
BODY_WEIGHT = _token(
    r"(?:(?:at|with) )?(?:body ?-?weight|bw)(?!\w)"
    rf"(?: ?(?P<sign>\+|-|−|plus|minus|less) ?(?P<amount>{NUMBER}) ?(?P<unit>{UNIT})?)?"
)
TO_FIND = _token(
    r"(?:(?:at|with) )?(?:find (?:it|(?:the |a |your )?(?:load|weight))"
    r"|(?:load|weight) ?:? ?(?:to be found|tbd|open)|tbd|work up(?: to it)?)(?!\w)|(?:(?:load|weight) ?:? ?|@ ?)\?"
)
NO_LOAD = _token(r"(?:(?:no|without(?: a)?) (?:load|weight)|unloaded)(?!\w)")


def read_pair(cursor: Cursor) -> Parts:
    """Two implements of so much: 2x22.5 kg."""
    match = cursor.take(PAIR)
    return (Weight(Mass(number(match["amount"]), unit_of(match["unit"]), Basis.PER_HAND)),) if match else NOTHING


def read_load(cursor: Cursor) -> Parts:
    """A load at the cursor, with the reps and sets of `80 kg x 5 x 3` behind it."""
    if cursor.take(TO_FIND):
        return (ToFind(),)
    if cursor.take(NO_LOAD):
        return (NoLoad(),)
    if match := cursor.take(BODY_WEIGHT):
        return _on_body(match)
    if match := cursor.take(MASS):
        return (*_weight(match, match[1], cursor), *_behind_load(cursor))
    match = cursor.take(MASS_NO_UNIT)
    if match is None:
        return NOTHING
    if match[1] or _basis(match):
        return _weight(match, match[1], cursor)
    return _undecided(number(match["amount"]))


def _on_body(match: re.Match[str]) -> Parts:
    if match["amount"] is None:
        return (NoLoad(),)
    amount = number(match["amount"])
    signed = amount if match["sign"] in ("+", "plus") else -amount
    return (Weight(Mass(signed, unit_of(match["unit"]), Basis.BODY)),)


def _weight(match: re.Match[str], sign: str, cursor: Cursor) -> Parts:
    if per_side := cursor.take(PER_SIDE):
        read = (match[0] + per_side[0]).strip()
        return (Slip(read, "the load in all, bar included, or per hand", "at 60 kg"),)
    amount, basis = number(match["amount"]), _basis(match)
    if match["help"] or sign in ("-", "−", "–"):
        return (Weight(Mass(-amount, unit_of(match["unit"]), Basis.BODY)),)
    if sign == "+" and basis is None:
        basis = Basis.BODY
    return (Weight(Mass(amount, unit_of(match["unit"]), basis)),)


def _basis(match: re.Match[str]) -> Basis | None:
    for group, basis in (
        ("hand", Basis.PER_HAND),
        ("all", Basis.TOTAL),
        ("stack", Basis.STACK),
        ("added", Basis.BODY),
        ("help", Basis.BODY),
    ):
        if match[group]:
            return basis
    return None


def _behind_load(cursor: Cursor) -> Parts:
    match = cursor.take(FACTOR_REPS)
    if match is None:
        return NOTHING
    aim = Aim(Reps(int(match[1])))
    return (aim, Sets(int(match[2]))) if match[2] else (aim,)


def read_third_factor(cursor: Cursor) -> Parts:
    """A load written as a third factor, or bare behind the reps."""
    start = cursor.at
    match = cursor.take(FACTOR_MASS)
    if match:
        return _weight(match, "", cursor)
    match = cursor.take(BARE_NUMBER)
    if match is None:
        cursor.at = start
        return NOTHING
    return _undecided(number(match[1]))


def _undecided(amount: Decimal) -> Parts:
    return (LoadOrEffort(amount),) if amount <= TOP_OF_SCALE else (Weight(Mass(amount)),)

"""Words of the coach's own in a line: cue, form standard, swap, superset.

cue: elbows under the bar          cues: brace; slow down          standard: chest touches the floor
3x5 at 80 kg, paused               tempo 3-1-1                     3 warm-up sets, 5x5 (kept as cues)
swap cable lateral raise or machine lateral raise                  superset with face pull      superset with the above

Such words run to the next comma behind which something else of a line begins, so a cue may hold commas. In double
quotes they are taken as they stand; a double quote inside is written twice.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from engine.plan.cursor import Cursor
from engine.plan.parts import Cue, Part, Partner, Slip, Standard, Swap

CUE = re.compile(r"(?:cues?|notes?|technique)(?!\w) ?[:=]? ?|tempo(?!\w)(?= ?:? ?\d)", re.IGNORECASE)
OWN_CUE = re.compile(
    r"(?:(?:\d{1,2} )?warm-? ?ups?(?: sets?)?|paused?|squeeze|slow(?:ly)?|controlled|explosive|full range)(?!\w)",
    re.IGNORECASE,
)
CLAUSE_STARTS = frozenset(",;:(")
STANDARD = re.compile(r"(?:(?:form )?standard(?!\w) ?[:=]? ?|form ?: ?)", re.IGNORECASE)
SWAP = re.compile(
    r"(?:swaps?|alternatives?|alternatively|substitutes?|or else|alt)(?!\w)(?: (?:for|with|to|by)(?!\w))? ?:? ?",
    re.IGNORECASE,
)
SUPERSET = re.compile(r"(?:superset|ss)(?:ted)?(?!\w)(?: (?:with|and|of|w/))? ?:? ?", re.IGNORECASE)
QUOTED = re.compile(r'"(?P<straight>(?:[^"]|"")*)"|[“„](?P<curled>[^“”„]*)[”“]')
UP_TO_SEPARATOR = re.compile(r"[^,;]+")
SEPARATOR = re.compile(r"[,;] ?")
NEIGHBOUR = re.compile(r"(?:the )?(?:(?:one |exercise |lift )?(?:above|before)|previous(?: one)?|last(?: one)?)$", re.I)
SAFE = re.compile(r"[^\W_](?:[^,;\"“”„]*[^\W_)!?%])?")


def quoted(text: str) -> str:
    """The text as it can stand in a line: in quotes where it would not be read back without."""
    return text if SAFE.fullmatch(text) else '"' + text.replace('"', '""') + '"'


def read_free(cursor: Cursor, begins_a_part: Callable[[Cursor], bool]) -> tuple[Part, ...]:
    """The part in the coach's own words at the cursor, or none.

    `begins_a_part` says whether another part fills the clause at a cursor; that is where free words end.
    """
    start = cursor.at
    if lead := cursor.take(CUE):
        spoken = _free_text(cursor, begins_a_part, over=",")
        prefix = "tempo" if lead[0].lower().startswith("tempo") else ""
        cues = [f"{prefix} {spoken}".strip(), *_more(cursor, begins_a_part)]
        return tuple(Cue(cue) for cue in cues if cue) or _empty(cursor, start, "the cue", "cue: elbows under the bar")
    if cursor.text[:start].rstrip()[-1:] in CLAUSE_STARTS and (lead := cursor.take(OWN_CUE)):
        return (Cue(f"{lead[0]} {_free_text(cursor, begins_a_part, over='')}".strip()),)
    if cursor.take(STANDARD):
        text = _free_text(cursor, begins_a_part, over=",;")
        return (Standard(text),) if text else _empty(cursor, start, "the standard", "standard: chest touches the floor")
    if cursor.take(SWAP):
        text = _free_text(cursor, begins_a_part, over=",")
        return (Swap(text),) if text else _empty(cursor, start, "an exercise", "swap dumbbell row")
    if cursor.take(SUPERSET):
        text = _free_text(cursor, begins_a_part, over="")
        return (Partner("" if NEIGHBOUR.match(text) else text),)
    return ()


def _empty(cursor: Cursor, start: int, expected: str, example: str) -> tuple[Part, ...]:
    return (Slip(cursor.text[start : cursor.at].strip(), f"{expected} behind it", example),)


def _more(cursor: Cursor, begins_a_part: Callable[[Cursor], bool]) -> list[str]:
    """Further cues behind semicolons."""
    cues = []
    while cursor.text[cursor.at : cursor.at + 1] == ";":
        ahead = Cursor(cursor.text, cursor.at)
        ahead.take(SEPARATOR)
        if ahead.done or begins_a_part(Cursor(ahead.text, ahead.at)):
            break
        cursor.at = ahead.at
        cues.append(_free_text(cursor, begins_a_part, over=","))
    return cues


def _free_text(cursor: Cursor, begins_a_part: Callable[[Cursor], bool], over: str) -> str:
    """The words from the cursor on; separators in `over` belong to them unless a part begins behind."""
    if match := cursor.take(QUOTED):
        return _inside_quotes(match)
    start = cursor.at
    while True:
        cursor.take(UP_TO_SEPARATOR)
        if cursor.done or cursor.text[cursor.at] not in over:
            break
        ahead = Cursor(cursor.text, cursor.at)
        ahead.take(SEPARATOR)
        if ahead.done or begins_a_part(Cursor(ahead.text, ahead.at)):
            break
        cursor.at = ahead.at
    return cursor.text[start : cursor.at].strip(" .,;")


def unquoted(text: str) -> str:
    """The words of a label, without the quotes that it may stand in."""
    stripped = text.strip()
    match = QUOTED.fullmatch(stripped)
    return _inside_quotes(match) if match else stripped


def _inside_quotes(match: re.Match[str]) -> str:
    straight = match["straight"]
    return match["curled"] if straight is None else straight.replace('""', '"')

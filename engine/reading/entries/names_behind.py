"""Lines whose only name stands behind their sets, "14, 12 @ 20 pushdowns": the numbers ahead of it are that lift's.

A line of the message is one by itself. What stands behind "then", a full stop or a semicolon is one where all its parts
are told alike, "dips 15, 12, then 25, 20 sit ups", or where the part before it was told with its name last, too.
Behind a mere "and" a list may go on or begin: in doubt, as are whole sets between "then" and those of the lift named
last at another load, "squat 140x1, then 115x4, 142.5x3 deadlift".
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from engine.reading.words.clauses import Clause, clause_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import LIST_IN_DOUBT, kinds_in_order

PARTED = frozenset((K.LINE, K.STOP, K.THEN))
PAIRING = frozenset((K.TIMES, K.FOR, K.OF))
LOADING = frozenset((K.AT, K.WITH))
BEHIND_AND = 2
"""As many numbers behind "and" and ahead of the one with the name are no end of the list before."""


def with_names_behind(clauses: list[Clause]) -> list[Clause]:
    """The clauses, those of one line in one where its only name stands last."""
    if not any([_name_last(clause) for clause in clauses if clause.names]):
        return clauses
    return list(_with_lines_joined(clauses))


def _with_lines_joined(clauses: list[Clause]) -> Iterator[Clause]:
    behind = opened = False
    for line in _lines(clauses):
        named = [clause for clause in line if clause.names]
        ends = next(
            (clause for clause in reversed(line) if clause.pieces), line[-1]
        )  # a comma ahead of "then" is empty
        last = len(named) == 1 and named[0] is ends and _name_last(named[0])
        cut = line[0].cut
        whole = behind or (cut is not None and (cut.kind is K.LINE or _told_alike(line)))
        if whole and last and len(line) > 1 and all(clause.counts for clause in line):
            if opened and not behind and _may_go_on(line):
                yield from _in_doubt(line)
            else:
                yield _joined(line)
        else:
            yield from _in_doubt(line) if _begins_behind_and(line) else line
        behind = last if named else behind
        opened = opened or any(clause.counts for clause in named)


def _lines(clauses: Iterable[Clause]) -> Iterator[list[Clause]]:
    line: list[Clause] = []
    for clause in clauses:
        if line and clause.cut is not None and (clause.cut.kind in PARTED or clause.cut.text == ";"):
            yield line
            line = []
        line.append(clause)
    if line:
        yield line


def _told_alike(line: list[Clause]) -> bool:
    """Whether all are pairs, or all bare numbers."""
    return len({PAIRING.isdisjoint(kinds_in_order(clause.pieces)) for clause in line if clause.counts}) == 1


def _may_go_on(line: list[Clause]) -> bool:
    """Whether the sets behind "then" may still be of the lift before: whole ones, at loads of their own."""
    then = line[0].cut is not None and line[0].cut.kind is K.THEN
    paired = not any(PAIRING.isdisjoint(kinds_in_order(clause.pieces)) for clause in line)
    return then and paired and len({clause.pieces[clause.counts[0]].value for clause in line}) > 1


def _begins_behind_and(line: list[Clause]) -> bool:
    """ "dips 15, 12, 12 and 25, 25, 20 sit ups"."""
    ands = [at for at, clause in enumerate(line) if clause.cut is not None and clause.cut.kind is K.AND]
    behind = line[ands[-1] :] if ands and ands[-1] else []
    counted = all(clause.counts for clause in behind) and all(not clause.names for clause in behind[:-1])
    return counted and len(behind) > BEHIND_AND and _name_last(behind[-1]) and _told_alike(behind)


def _in_doubt(line: list[Clause]) -> list[Clause]:
    named = line[-1]
    cut = named.cut._replace(told=LIST_IN_DOUBT) if named.cut is not None else None
    return [*line[:-1], named._replace(cut=cut)]


def _name_last(clause: Clause) -> bool:
    return len(clause.names) == 1 and (clause.name_last or _loaded_behind(clause))


def _loaded_behind(clause: Clause) -> bool:
    """ "10 hammer curls at 15": behind the name stands nothing but its load."""
    at = clause.names[0]
    behind = kinds_in_order(clause.pieces[at + 1 :])
    ahead = bool(clause.counts) and clause.counts[0] < at
    return ahead and len(behind) == 2 and behind[0] in LOADING and behind[1] is K.NUMBER


def _joined(line: list[Clause]) -> Clause:
    held = list(line[0].pieces)
    for clause in line[1:]:
        held += [*([clause.cut] if clause.cut is not None else []), *clause.pieces]
    return clause_of(line[0].cut, held)

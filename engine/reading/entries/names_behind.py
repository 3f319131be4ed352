"""Lines whose only name stands behind their sets, "14, 12 @ 20 pushdowns": the numbers ahead of it are that lift's.

A line of the message is one by itself; behind a full stop or a semicolon only where the part before was told so, too.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from engine.reading.words.clauses import Clause, clause_of
from engine.reading.words.kinds import K


def with_names_behind(clauses: list[Clause]) -> list[Clause]:
    """The clauses, those of one line in one where its only name stands last."""
    if not any([_name_last(clause) for clause in clauses if clause.names]):
        return clauses
    return list(_with_lines_joined(clauses))


def _with_lines_joined(clauses: list[Clause]) -> Iterator[Clause]:
    behind = False
    for line in _lines(clauses):
        named = [clause for clause in line if clause.names]
        last = len(named) == 1 and named[0] is line[-1] and _name_last(named[0])
        cut = line[0].cut
        whole = behind or (cut is not None and cut.kind is K.LINE)
        if whole and last and len(line) > 1 and all(clause.counts for clause in line):
            yield _joined(line)
        else:
            yield from line
        behind = last if named else behind


def _lines(clauses: Iterable[Clause]) -> Iterator[list[Clause]]:
    line: list[Clause] = []
    for clause in clauses:
        if line and clause.cut is not None and (clause.cut.kind in (K.LINE, K.STOP) or clause.cut.text == ";"):
            yield line
            line = []
        line.append(clause)
    if line:
        yield line


def _name_last(clause: Clause) -> bool:
    return len(clause.names) == 1 and clause.name_last


def _joined(line: list[Clause]) -> Clause:
    held = list(line[0].pieces)
    for clause in line[1:]:
        held += [*([clause.cut] if clause.cut is not None else []), *clause.pieces]
    return clause_of(line[0].cut, held)

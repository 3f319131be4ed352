"""What one instruction of Python hides: slices and looks through lists that grow faster than the message does.

usage: hidden_work.py [--seconds N] [--seed N] [FRAGMENT ...]

A reading is linear where twice the text takes twice the work. Instructions are counted by a test; but `pieces[:at]`
in a loop over the places is one instruction each time, and copies ever more. So the modules of the reader are loaded
here with each slice, each starred list and each `in` counted by the length it handles, and fragments (random ones,
where none is given) are read repeated to 4,096 characters and to half of that. Lines of the source whose work is more
than 2.7 times as much are printed; the exit status is 1 where there was one.
"""

from __future__ import annotations

import argparse
import ast
import builtins
import importlib.abc
import importlib.machinery
import sys
import time
import types
from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path
from random import Random
from typing import Any

TOP = Path(__file__).parents[2]
sys.path.insert(0, str(TOP))

COUNTED_MODULES = "engine.reading"
LONGEST = 4_096
FASTER = 2.7
"""Of twice the text, linear work takes 2 times as much, and work by the square 4 times."""
OF_NOTE = 60_000
"""Fewer things more than twice those of half the text take no time that matters, and a second reading of the whole,
which a long text may come to and half of it not, handles so many.
"""
HANDLED: Counter[str] = Counter()


def counted_slice(held: Any, low: Any, high: Any, step: Any, where: str) -> Any:
    """The slice, which is counted."""
    taken = held[low:high:step]
    HANDLED[where] += len(taken)
    return taken


def counted_whole(held: Any, where: str) -> Any:
    """What is handed on, which is counted where it is looked through from its start."""
    HANDLED[where] += len(held) if isinstance(held, (list, tuple, str)) else 0
    return held


class Counting(ast.NodeTransformer):
    """Puts a call around whatever handles a list in one instruction."""

    def __init__(self, module: str) -> None:
        self.module = module

    def visit_Subscript(self, node: ast.Subscript) -> ast.AST:
        self.generic_visit(node)
        if not isinstance(node.slice, ast.Slice) or not isinstance(node.ctx, ast.Load):
            return node
        ends = [end or ast.Constant(None) for end in (node.slice.lower, node.slice.upper, node.slice.step)]
        return self._call(counted_slice.__name__, node, [node.value, *ends])

    def visit_Starred(self, node: ast.Starred) -> ast.AST:
        self.generic_visit(node)
        if isinstance(node.ctx, ast.Load):
            node.value = self._call(counted_whole.__name__, node.value, [node.value])
        return node

    def visit_Compare(self, node: ast.Compare) -> ast.AST:
        self.generic_visit(node)
        for at, (link, held) in enumerate(zip(node.ops, node.comparators, strict=True)):
            if isinstance(link, (ast.In, ast.NotIn)) and isinstance(held, (ast.Name, ast.Attribute)):
                node.comparators[at] = self._call(counted_whole.__name__, held, [held])
        return node

    def _call(self, name: str, node: ast.expr, given: Sequence[ast.expr]) -> ast.expr:
        where = ast.Constant(f"{self.module}:{node.lineno}")
        return ast.copy_location(ast.Call(ast.Name(name, ast.Load()), [*given, where], []), node)


class CountingLoader(importlib.machinery.SourceFileLoader):
    """Loads a module from its source alone, with its work counted."""

    def get_code(self, fullname: str) -> types.CodeType:
        tree = Counting(fullname).visit(ast.parse(self.get_data(self.path)))
        code: types.CodeType = compile(ast.fix_missing_locations(tree), self.path, "exec", dont_inherit=True)
        return code


class CountingFinder(importlib.abc.MetaPathFinder):
    """Finds the modules whose work is counted."""

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: types.ModuleType | None = None
    ) -> importlib.machinery.ModuleSpec | None:
        if not fullname.startswith(COUNTED_MODULES):
            return None
        found = importlib.machinery.PathFinder.find_spec(fullname, path, target)
        if found is not None and found.origin is not None and found.origin.endswith(".py"):
            found.loader = CountingLoader(fullname, found.origin)
        return found


def fragments(given: Sequence[str], seconds: float, seed: int) -> Iterator[str]:
    """Those given; else random ones, for so long."""
    from tests.bench.reading_fuzz import FRAGMENTS, MOST_FRAGMENTS

    yield from given
    dice, end = Random(seed), time.monotonic() + seconds
    while not given and time.monotonic() < end:
        some = dice.choices(FRAGMENTS, k=dice.randint(1, MOST_FRAGMENTS))
        yield dice.choice(("", " ")).join(some) + dice.choice(("", " ", "\n", ", "))


def growing(given: Sequence[str], seconds: float, seed: int) -> dict[str, tuple[int, str]]:
    """By the line of the source: how many things more than twice as many it handled at most, and in which text."""
    from engine.catalogue.catalogue import catalogue
    from engine.reading import read
    from engine.reading.values import Context

    found: dict[str, tuple[int, str]] = {}
    for fragment in fragments(given, seconds, seed):
        whole = (fragment * LONGEST)[:LONGEST]
        read(whole, Context(), catalogue())  # the words are known now
        handled = []
        for text in (whole, whole[: LONGEST // 2]):
            HANDLED.clear()
            read(text, Context(), catalogue())
            handled.append(dict(HANDLED))
        for where, of_all in handled[0].items():
            of_half = handled[1].get(where, 0)
            more = of_all - 2 * of_half
            if of_half and of_all > FASTER * of_half and more > max(OF_NOTE, found.get(where, (0, ""))[0]):
                found[where] = more, fragment
    return found


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("fragment", nargs="*")
    options.add_argument("--seconds", type=float, default=60)
    options.add_argument("--seed", type=int, default=1)
    chosen = options.parse_args()
    vars(builtins).update({one.__name__: one for one in (counted_slice, counted_whole)})
    sys.meta_path.insert(0, CountingFinder())
    found = growing(chosen.fragment, chosen.seconds, chosen.seed)
    for where, (more, fragment) in sorted(found.items()):
        print(f"{where}: {more} more than twice as many for {fragment!r}")
    print(f"{len(found)} lines of the reader handle more than they should")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())

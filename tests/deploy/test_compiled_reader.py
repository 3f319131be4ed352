"""The reader can be compiled: mypyc takes each of its modules. What the compiled one comes to is compared with the
plain one by `tests/bench/compiled_reader.py`, as the C takes minutes.
"""

from __future__ import annotations

import runpy
import subprocess
import sys
from pathlib import Path

TOP = Path(__file__).parents[2]
COMPILE = runpy.run_path(str(TOP / "deploy" / "compile.py"))

SOURCE = """\
from engine.reading.kinds import K
from somewhere import Else

SIGNS = (K.AT, Else.AT)


def told(kind: K) -> int:
    match kind:
        case K.NUMBER:
            return 1
    if kind in (*SIGNS, K.TIMES):
        return 3
    return 2 if kind is K.AT or kind is K.TIMES else len("é") + (kind is K.AT)
"""
WORDED = """\
from engine.reading.kinds import K
from somewhere import Else
from typing import Final
_K_AT: Final = K.AT
_K_TIMES: Final = K.TIMES

SIGNS = (_K_AT, Else.AT)


def told(kind: K) -> int:
    match kind:
        case K.NUMBER:
            return 1
    if kind in tuple([*SIGNS, _K_TIMES]):
        return 3
    return 2 if kind is _K_AT or kind is _K_TIMES else len("é") + (kind is _K_AT)
"""


def test_constants_of_our_own_classes_are_looked_up_once_but_in_patterns() -> None:
    assert COMPILE["worded_for_mypyc"](SOURCE) == WORDED


def test_every_module_left_as_it_is_is_one_of_the_reader() -> None:
    modules = {path.stem for path in (TOP / COMPILE["COMPILED"]).glob("*.py")}

    assert set(COMPILE["INTERPRETED"]) <= modules


def test_each_module_can_be_compiled(tmp_path: Path) -> None:
    """A failure here: the output names a module and a line that mypyc does not take. Word it otherwise, or name the
    module in `INTERPRETED`.
    """
    command = [sys.executable, str(TOP / "deploy" / "compile.py"), str(tmp_path / "compiled"), "--translate"]
    done = subprocess.run(command, cwd=TOP, capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stdout[-2_000:] + done.stderr[-2_000:]

"""The reader can be compiled: mypyc takes each of its modules. What the compiled one comes to is compared with the
plain one by `tests/bench/compiled_reader.py`, as the C takes minutes.
"""

from __future__ import annotations

import runpy
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

TOP = Path(__file__).parents[2]
COMPILE = runpy.run_path(str(TOP / "deploy" / "compile.py"))

SOURCE = """\
from engine.reading.words.kinds import K
from somewhere import Else

T = TypeVar("T")
SIGNS = (K.AT, Else.AT)
MOST: int = 3


@dataclass(slots=True)
class Told:
    kind: K
    sets: list[int] = field(default_factory=list)
    sign: K = K.AT


def told(kind: K) -> int:
    match kind:
        case K.NUMBER:
            return 1
    if kind in (*SIGNS, K.TIMES):
        return 3
    return 2 if kind is K.AT or kind is K.TIMES else len("é") + (kind is K.AT)
"""
WORDED = """\
from engine.reading.words.kinds import K
from somewhere import Else
from typing import Final
_K_AT: Final = K.AT
_K_TIMES: Final = K.TIMES

T = TypeVar("T")
SIGNS: Final = (_K_AT, Else.AT)
MOST: Final[int] = 3


@dataclass(slots=True)
class Told:
    kind: K
    sets: list[int] = field(default_factory=list)
    sign: K = _K_AT

    def __init__(self, kind: K, sets: list[int] | None = None, sign: K = K.AT) -> None:
        self.kind = kind
        self.sets = list() if sets is None else sets
        self.sign = sign


def told(kind: K) -> int:
    match kind:
        case K.NUMBER:
            return 1
    if kind in tuple([*SIGNS, _K_TIMES]):
        return 3
    return 2 if kind is _K_AT or kind is _K_TIMES else len("é") + (kind is _K_AT)
"""


TUPLES = """\
from typing import NamedTuple


class Set(NamedTuple):
    reps: int
    load: float

    def volume(self) -> float:
        return self.reps * self.load


def told(one: Set, other: Set | None, name: str) -> float:
    load = (one or other).load
    most = divmod(int(one.load), 60)
    return load + most[0] + one.volume() + len(name.title()) + (other.reps if other else one._replace(reps=3).reps)
"""
BY_PLACE = """\
    def volume(self) -> float:
        return self[0] * self[1]


def told(one: Set, other: Set | None, name: str) -> float:
    load = (one or other)[1]
    most = divmod(int(one[1]), 60)
    return load + most[0] + one.volume() + len(name.title()) + (other[0] if other else one._replace(reps=3)[0])
"""


FIELDS = """\
class Chunk:
    factors: list[int]
    joiner: str | None = None
    told: bool = False

    def marks(self) -> Set[str]:
        return self.__dict__.keys()

    def copy(self) -> Chunk:
        other = Chunk()
        other.__dict__.update(self.__dict__)
        return other
"""
BY_FIELD = """
    def marks(self) -> Set[str]:
        told: set[str] = set()
        if self.joiner is not None: told.add("joiner")
        if self.told: told.add("told")
        return told

    def copy(self) -> Chunk:
        other = Chunk()
        other.factors = self.factors
        other.joiner = self.joiner
        other.told = self.told
        return other
"""


def test_fields_are_asked_one_by_one_for_what_a_class_asks_of_the_dictionaries_of_its_objects() -> None:
    assert COMPILE["worded_for_mypyc"](FIELDS).endswith(BY_FIELD)


def test_constants_are_looked_up_once_but_in_patterns_and_constructors_written_out() -> None:
    assert COMPILE["worded_for_mypyc"](SOURCE) == WORDED


def test_fields_of_named_tuples_are_asked_for_by_their_place(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    path = Path("tuples.py")
    path.write_text(TUPLES, encoding="utf-8")
    fields = COMPILE["fields_by_place"]([path])[path]

    assert COMPILE["worded_for_mypyc"](TUPLES, fields).endswith(BY_PLACE)


TAKERS = """\
from operator import itemgetter
from somewhere import TEXT, TOLD


class Piece(NamedTuple):
    kind: K
    text: str


KIND: Callable[[Piece], K] = itemgetter(Piece._fields.index("kind"))


def told(pieces: list[Piece]) -> bool:
    kinds = list(map(KIND, pieces[1:]))
    if K.AT in set(map(KIND, pieces)) or "x" not in map(TEXT, pieces):
        return sorted(map(TOLD, pieces)) == list(map(len, kinds))
    return sum(map(KIND, pieces), *kinds) in FEW
"""
TAKEN = """\
def told(pieces: list[Piece]) -> bool:
    kinds = [its_piece[0] for its_piece in pieces[1:]]
    if K.AT in {its_piece[0] for its_piece in pieces} or "x" not in [its_piece[1] for its_piece in pieces]:
        return sorted(map(TOLD, pieces)) == list(map(len, kinds))
    return sum([its_piece[0] for its_piece in pieces], *kinds) in FEW
"""


def test_fields_taken_of_all_pieces_are_taken_in_a_loop(tmp_path: Path) -> None:
    path = tmp_path / "takers.py"
    path.write_text(TAKERS + 'TEXT: Callable[[Piece], str] = itemgetter(Piece._fields.index("text"))\n')
    takers = COMPILE["field_takers"]([path])
    assert takers == {"KIND": 0, "TEXT": 1}

    assert COMPILE["worded_for_mypyc"](TAKERS, (), takers).endswith(TAKEN)

    other = tmp_path / "other.py"
    other.write_text('KIND: Callable[[Piece], str] = itemgetter(Piece._fields.index("text"))\n')
    with pytest.raises(ValueError, match="KIND"):
        COMPILE["field_takers"]([path, other])


def test_loops_take_the_place_of_functions_of_the_same_name() -> None:
    loops = COMPILE["loops_for"]("words/cues")
    source = "def other() -> int:\n    return 1\n\n\ndef cues_told(words):\n    return NONE\n\n\nLAST = 1\n"

    worded = COMPILE["worded_for_mypyc"](source, loops=loops)

    assert loops["cues_told"] in worded
    assert "return NONE" not in worded
    assert worded.endswith("LAST: Final = 1\n")
    assert COMPILE["loops_for"]("read") == {}


def test_a_copy_is_fresh_as_long_as_the_sources_are_those_it_was_made_of(tmp_path: Path) -> None:
    COMPILE["copy_to"](tmp_path)
    mark = tmp_path / COMPILE["MARK"]
    assert not COMPILE["is_fresh"](tmp_path)

    mark.write_text(COMPILE["digest_of"](tmp_path), encoding="utf-8")
    assert COMPILE["is_fresh"](tmp_path)

    (tmp_path / "engine" / "reading" / "read.cpython.so").write_bytes(b"compiled")
    assert COMPILE["digest_of"](tmp_path) == mark.read_text(encoding="utf-8")
    (tmp_path / "engine" / "reading" / "languages" / "en.txt").write_text("other words", encoding="utf-8")
    mark.write_text(COMPILE["digest_of"](tmp_path), encoding="utf-8")
    assert not COMPILE["is_fresh"](tmp_path)


@pytest.mark.parametrize(("is_fresh", "runs_in"), [(True, "build/compiled"), (False, ".")])
def test_the_service_runs_the_compiled_copy_only_while_it_is_fresh(
    tmp_path: Path, is_fresh: bool, runs_in: str
) -> None:
    for folder in ("deploy", ".venv/bin", "build/compiled"):
        (tmp_path / folder).mkdir(parents=True)
    shutil.copy(TOP / "deploy" / "serve.sh", tmp_path / "deploy")
    python = tmp_path / ".venv" / "bin" / "python"
    told = 'pwd; echo "$PYTHONPATH"; echo "$@"'
    python.write_text(f'#!/bin/sh\ncase "$*" in *--is-fresh) exit {int(not is_fresh)};; esac\n{told}\n')
    python.chmod(0o755)

    command = ["sh", str(tmp_path / "deploy" / "serve.sh")]
    done = subprocess.run(command, cwd="/", capture_output=True, text=True, check=True)

    # The folder it is started from stays: a path of the database may be told from there.
    assert done.stdout.splitlines() == ["/", str((tmp_path / runs_in).resolve()), "-P -m bot serve"]


def test_every_module_left_as_it_is_is_one_of_the_reader() -> None:
    modules = {COMPILE["module_name"](path, TOP) for path in (TOP / COMPILE["COMPILED"]).rglob("*.py")}

    assert set(COMPILE["INTERPRETED"]) <= modules


def test_each_module_can_be_compiled(tmp_path: Path) -> None:
    """A failure here: the output names a module and a line that mypyc does not take. Word it otherwise, or name the
    module in `INTERPRETED`.
    """
    command = [sys.executable, str(TOP / "deploy" / "compile.py"), str(tmp_path / "compiled"), "--translate"]
    done = subprocess.run(command, cwd=TOP, capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stdout[-2_000:] + done.stderr[-2_000:]

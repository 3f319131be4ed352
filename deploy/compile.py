"""A copy of the product whose reader is compiled to C: the same outcomes in half the time.

usage: compile.py [FOLDER] [--translate | --is-fresh]

Nobody needs it: without it the reader is plain Python, as it stands. FOLDER (default `build/compiled`) gets a whole
copy of bot, engine and storage, made anew each time, so that source and compiled code can never be of two minds: what
runs in FOLDER runs compiled (`cd build/compiled && ../../.venv/bin/python -m bot serve`), what runs elsewhere does not.
`deploy/serve.sh` runs it there as long as `--is-fresh` says that FOLDER was made of the sources as they stand.

The compiler is mypyc, which is part of mypy; it needs the test packages and a C compiler. With `--translate` the C is
written and not compiled, which shows in less than a minute whether mypyc takes each module.
"""

from __future__ import annotations

import argparse
import ast
import hashlib
import os
import shutil
import sys
from collections.abc import Collection, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import chdir
from pathlib import Path
from types import MappingProxyType
from typing import Any

TOP = Path(__file__).resolve().parents[1]
PACKAGES = ("bot", "engine", "storage")
COMPILED = "engine/reading"
BUILT = frozenset((".pyc", ".so", ".pyd"))
"""What is made of sources, and none itself."""
MARK = "made_from.txt"
"""Says from which sources a copy was made; it is written last."""
INTERPRETED = {
    "words/members": "makes a class while it runs",
    "words/kinds": "its names are an enum to the type checker, and a plain object to Python",
    "words/roles": "as kinds, of what numbers count",
    "words/token_shapes": "as kinds, of the shapes of tokens",
    "words/kept": "a dictionary that answers what it lacks",
    "values": "values that bot and storage take apart as dataclasses",
}
"""Modules of the reader that stay as they are, and why. All others are compiled."""

Change = tuple[int, int, int, str]
"""A line of a source, the bytes from one place of it to another, and what is to stand there."""


def sources(folder: Path) -> list[Path]:
    """The modules below `folder` that are compiled: all that hold code, but those named above."""
    modules = {path: module_name(path, folder) for path in (folder / COMPILED).rglob("*.py")}
    return sorted(path for path, name in modules.items() if path.stem != "__init__" and name not in INTERPRETED)


def module_name(path: Path, folder: Path) -> str:
    """The name by which `INTERPRETED` knows a module of this copy of the product."""
    return path.relative_to(folder / COMPILED).with_suffix("").as_posix()


def worded_for_mypyc(
    source: str,
    fields: Collection[Change] = (),
    takers: Mapping[str, int] = MappingProxyType({}),
    loops: Mapping[str, str] = MappingProxyType({}),
) -> str:
    """The source with the same meaning, as compiled code wants it: what it asks of an interpreted object, and of the
    dictionary of a module, takes as long as ever.

    Each constant of an imported class (`K.NUMBER`) is looked up once, as it is imported, and a name in capitals is
    told to be final: such a name of the module is found at once. A starred tuple behind `in`, which mypyc 2.4 does not
    take, is made of a list. The constructor of a dataclass is written out, which else stays Python, and so is what a
    class asks of its objects' own dictionaries. `fields`: what `fields_by_place` says; `takers`: what `field_takers`
    says; `loops`: functions that take the place of those of the same name.
    """
    tree = ast.parse(source)
    imports = [node for node in tree.body if isinstance(node, ast.ImportFrom)]
    classes = {name.name for node in imports if (node.module or "").startswith("engine.") for name in node.names}
    found = [one for one in _constants(tree) if isinstance(one.value, ast.Name) and one.value.id in classes]
    lines = [line.encode() for line in source.splitlines()]
    changes = [(one.lineno, one.col_offset, one.end_col_offset or 0, _alias(one)) for one in found]
    changes += [*_starred(tree), *_finals(tree), *_constructors(tree), *_fields_told(tree), *fields]
    changes += _taken(tree, takers)
    written = [node for node in tree.body if isinstance(node, ast.FunctionDef) and node.name in loops]
    for line, start, end, new in sorted(changes, reverse=True):
        lines[line - 1] = lines[line - 1][:start] + new.encode() + lines[line - 1][end:]
    for node in written:
        rest = (node.end_lineno or node.lineno) - node.lineno
        lines[node.lineno - 1 : node.end_lineno] = [loops[node.name].encode(), *[b""] * rest]
    aliases = sorted({f"{_alias(one)}: Final = {ast.unparse(one)}" for one in found})
    behind = max((node.end_lineno or 0 for node in imports), default=0)
    told = [line.decode() for line in lines]
    return "\n".join([*told[:behind], "from typing import Final", *aliases, *told[behind:], ""])


def _constants(node: ast.AST) -> Iterator[ast.Attribute]:
    """The attributes in capitals, but those of patterns, where a bare name would catch anything."""
    if isinstance(node, ast.Attribute) and node.attr.isupper():
        yield node
    for child in ast.iter_child_nodes(node):
        if not isinstance(child, ast.pattern):
            yield from _constants(child)


def _alias(constant: ast.Attribute) -> str:
    return f"_{ast.unparse(constant).replace('.', '_')}"


def _starred(tree: ast.AST) -> Iterator[Change]:
    """What turns "in (*SIGNS, sign)" into "in tuple([*SIGNS, sign])"."""
    for node in ast.walk(tree):
        for other in node.comparators if isinstance(node, ast.Compare) else ():
            if isinstance(other, ast.Tuple) and any(isinstance(one, ast.Starred) for one in other.elts):
                yield other.lineno, other.col_offset, other.col_offset + 1, "tuple(["
                yield other.end_lineno or 0, (other.end_col_offset or 0) - 1, other.end_col_offset or 0, "])"


def _finals(tree: ast.Module) -> Iterator[Change]:
    """What turns "FEW = 5" into "FEW: Final = 5", and "FEW: int = 5" into "FEW: Final[int] = 5"."""
    for node in tree.body:
        match node:
            case ast.Assign(targets=[ast.Name(id=name) as told]) if name.isupper() and not _makes_a_type(node.value):
                yield told.lineno, told.end_col_offset or 0, told.end_col_offset or 0, ": Final"
            case ast.AnnAssign(target=ast.Name(id=name), annotation=kind) if name.isupper():
                yield kind.lineno, kind.col_offset, kind.col_offset, "Final["
                yield kind.end_lineno or 0, kind.end_col_offset or 0, kind.end_col_offset or 0, "]"


def _makes_a_type(value: ast.expr) -> bool:
    """ "T = TypeVar(...)"."""
    return isinstance(value, ast.Call) and isinstance(value.func, ast.Name) and value.func.id == "TypeVar"


def _constructors(tree: ast.Module) -> Iterator[Change]:
    """What writes out the constructors of dataclasses."""
    for node in tree.body:
        if isinstance(node, ast.ClassDef) and [ast.unparse(one) for one in node.decorator_list] == [DATACLASS]:
            last = node.body[-1]
            made = _constructor([one for one in node.body if isinstance(one, ast.AnnAssign)])
            yield last.end_lineno or 0, last.end_col_offset or 0, last.end_col_offset or 0, made


DATACLASS = "dataclass(slots=True)"


def _constructor(fields: Sequence[ast.AnnAssign]) -> str:
    """ "def __init__(self, reps: int, sets: list[int] | None = None) -> None: ..."."""
    told, kept = ["self"], []
    for field in fields:
        name, kind = ast.unparse(field.target), ast.unparse(field.annotation)
        match field.value:
            case None:
                told.append(f"{name}: {kind}")
                kept.append(f"self.{name} = {name}")
            case ast.Call(func=ast.Name(id="field"), keywords=[ast.keyword(arg="default_factory", value=make)]):
                told.append(f"{name}: {kind} | None = None")
                kept.append(f"self.{name} = {ast.unparse(make)}() if {name} is None else {name}")
            case value:
                told.append(f"{name}: {kind} = {ast.unparse(value)}")
                kept.append(f"self.{name} = {name}")
    return "\n        ".join([f"\n\n    def __init__({', '.join(told)}) -> None:", *kept])


def _fields_told(tree: ast.Module) -> Iterator[Change]:
    """What asks each field for what a class asks of the dictionaries of its objects, which compiled ones have not.

    "other.__dict__.update(self.__dict__)" becomes an assignment for each field, and "return self.__dict__.keys()" the
    names of the fields that are not as the class has them.
    """
    for owner in tree.body:
        fields = [one for one in getattr(owner, "body", ()) if isinstance(one, ast.AnnAssign)]
        statements = [one for one in ast.walk(owner) if isinstance(one, ast.stmt)]
        for node in statements if isinstance(owner, ast.ClassDef) else ():
            told: list[str] = []
            match node:
                case ast.Expr(
                    ast.Call(
                        func=ast.Attribute(ast.Attribute(ast.Name(to), "__dict__"), "update"),
                        args=[ast.Attribute(ast.Name(of), "__dict__")],
                    )
                ):
                    names = [ast.unparse(field.target) for field in fields]
                    told = [f"{to}.{name} = {of}.{name}" for name in names]
                case ast.Return(ast.Call(func=ast.Attribute(ast.Attribute(ast.Name(of), "__dict__"), "keys"))):
                    told = ["told: set[str] = set()", *_named_where_told(of, fields), "return told"]
            if told:
                yield node.lineno, node.col_offset, node.end_col_offset or 0, f"\n{' ' * node.col_offset}".join(told)


def _named_where_told(of: str, fields: Sequence[ast.AnnAssign]) -> Iterator[str]:
    for field in fields:
        name, untold = ast.unparse(field.target), field.value
        if untold is not None:
            asked = f"{of}.{name} is not None" if ast.unparse(untold) == "None" else f"{of}.{name}"
            yield f'if {asked}: told.add("{name}")'


def field_takers(paths: Sequence[Path]) -> dict[str, int]:
    """The constants of these modules that take a field of a named tuple ("KIND"), each with the place of its field.

    Errors: ValueError where two modules have one of the same name for different places.
    """
    fields: dict[str, list[str]] = {}
    takers: dict[str, tuple[str, str]] = {}
    for node in [node for path in paths for node in ast.parse(path.read_bytes()).body]:
        match node:
            case ast.ClassDef(name=owner, bases=[ast.Name("NamedTuple")]):
                told = [one for one in node.body if isinstance(one, ast.AnnAssign)]
                fields[owner] = [ast.unparse(one.target) for one in told]
            case ast.AnnAssign(target=ast.Name(name), value=ast.expr() as value) if taken := _field_taken(value):
                if takers.setdefault(name, taken) != taken:
                    raise ValueError(f"two constants of the name {name} take different fields")
    return {name: fields[owner].index(field) for name, (owner, field) in takers.items()}


def _field_taken(value: ast.expr) -> tuple[str, str] | None:
    """The class and the field of "itemgetter(Piece._fields.index("kind"))"."""
    match value:
        case ast.Call(
            ast.Name("itemgetter"),
            [ast.Call(ast.Attribute(ast.Attribute(ast.Name(owner), "_fields"), "index"), [ast.Constant(str(field))])],
        ):
            return owner, field
    return None


def _taken(tree: ast.Module, takers: Mapping[str, int]) -> Iterator[Change]:
    """What turns "map(KIND, pieces)", with the list or the set that is made of it, into a list or a set that one loop
    makes: "[one[0] for one in pieces]".
    """
    imported = {name.name for node in tree.body if isinstance(node, ast.ImportFrom) for name in node.names}
    made = {
        node.target.id for node in tree.body if isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name)
    }
    known = {name: place for name, place in takers.items() if name in imported | made}
    around = {id(node.args[0]): node for node in ast.walk(tree) if isinstance(node, ast.Call) and len(node.args) == 1}
    for node in ast.walk(tree):
        match node:
            case ast.Call(ast.Name("map"), [ast.Name(name), pieces]) if name in known:
                whole, (opens, closes) = node, LIST
                match around.get(id(node)):
                    case ast.Call(ast.Name(kind)) as outer if kind in MADE_OF_A_MAP:
                        whole, (opens, closes) = outer, MADE_OF_A_MAP[kind]
                told = f"{opens}{ITS}[{known[name]}] for {ITS} in "
                if whole.lineno == pieces.lineno and pieces.end_lineno == whole.end_lineno:
                    yield whole.lineno, whole.col_offset, pieces.col_offset, told
                    yield whole.end_lineno or 0, pieces.end_col_offset or 0, whole.end_col_offset or 0, closes


ITS = "its_piece"
LIST = ("[", "]")
MADE_OF_A_MAP = {"list": LIST, "set": ("{", "}")}


LOOPS = TOP / "deploy" / "loops_for_c.py"


def loops_for(module: str) -> dict[str, str]:
    """The functions that take the place of this module's own, by name, as source."""
    source = LOOPS.read_text(encoding="utf-8")
    tree = ast.parse(source)
    [in_place_of] = [node.value for node in tree.body if isinstance(node, ast.Assign)][-1:]
    names: Collection[str] = ast.literal_eval(in_place_of).get(module, ())
    functions = {node.name: node for node in tree.body if isinstance(node, ast.FunctionDef)}
    return {name: ast.get_source_segment(source, functions[name]) or "" for name in names}


def fields_by_place(paths: Sequence[Path]) -> dict[Path, set[Change]]:
    """What turns "piece.kind" into "piece[0]" in these modules, where mypy says that it asks a named tuple for a field.

    Compiled code takes what stands at a place of a tuple at once; for a name it asks the class, as plain Python does.
    """
    from mypy.build import BuildSource, build
    from mypy.options import Options
    from mypy.traverser import NameAndMemberCollector
    from mypy.types import TupleType, get_proper_type

    options = Options()
    options.explicit_package_bases = options.export_types = options.preserve_asts = True
    options.incremental = False
    modules = {path: ".".join(path.with_suffix("").parts) for path in paths}
    told = build([BuildSource(str(path), module) for path, module in modules.items()], options)
    found: dict[Path, set[Change]] = {path: set() for path in paths}
    for path, module in modules.items():
        lines = path.read_bytes().splitlines()
        asked = NameAndMemberCollector()
        told.files[module].accept(asked)
        for one in asked.member_exprs:
            owner = get_proper_type(told.types.get(one.expr))
            if isinstance(owner, TupleType) and owner.partial_fallback.type.is_named_tuple:
                named = owner.partial_fallback.type.metadata["namedtuple"]["fields"]
                line, end = one.end_line or 0, one.end_column or 0
                start = end - len(f".{one.name}")
                # Behind other letters than ASCII mypy counts columns otherwise: there the name stays as it is.
                if one.name in named and lines[line - 1][start:end] == f".{one.name}".encode():
                    found[path].add((line, start, end, f"[{named.index(one.name)}]"))
    return found


def digest_of(folder: Path) -> str:
    """What the sources of this copy of the product, and the Python that runs here, come to in one word."""
    told = hashlib.sha256((sys.implementation.cache_tag or sys.version).encode())
    files = [path for package in PACKAGES for path in (folder / package).rglob("*") if path.is_file()]
    for path in sorted(path for path in files if path.suffix not in BUILT):
        told.update(path.relative_to(folder).as_posix().encode() + b"\0" + path.read_bytes() + b"\0")
    return told.hexdigest()


def is_fresh(folder: Path) -> bool:
    """Whether the copy in this folder was compiled, by this Python, from the sources as they stand."""
    mark = folder / MARK
    return mark.is_file() and mark.read_text(encoding="utf-8") == digest_of(TOP)


def copy_to(folder: Path) -> None:
    """A whole copy of the product in a new folder."""
    shutil.rmtree(folder, ignore_errors=True)
    for package in PACKAGES:
        shutil.copytree(TOP / package, folder / package, ignore=shutil.ignore_patterns("__pycache__"))


def translate(folder: Path, by_place: bool = True) -> list[Any]:
    """The reader in this copy of the product as C, in `build` below the current folder: what a C compiler is to do.
    `by_place`: fields of named tuples are asked for by their place, for which mypy looks through the reader once more.

    Errors: SystemExit where mypyc cannot take a module; it has said why.
    """
    from mypyc.build import mypycify

    paths = [path.relative_to(folder) for path in sources(folder)]
    fields = fields_by_place(paths) if by_place else {}
    takers = field_takers(paths)
    for path in paths:
        loops = loops_for(module_name(path, Path()))
        source = worded_for_mypyc(path.read_text(encoding="utf-8"), fields.get(path, ()), takers, loops)
        path.write_text(source, encoding="utf-8")
    Path("mypy.ini").write_text("[mypy]\nexplicit_package_bases = True\n", encoding="utf-8")
    options = ["--config-file", "mypy.ini", *map(str, paths)]
    found: list[Any] = mypycify(options, opt_level="2", debug_level="0", multi_file=True, target_dir="build")
    return found


def build(extensions: Sequence[Any]) -> None:
    """The C compiled, and what comes of it put beside the modules, as many files at once as there are cores."""
    from setuptools import Distribution
    from setuptools.command.build_ext import build_ext

    class SideBySide(build_ext):  # type: ignore[misc]
        def build_extensions(self) -> None:
            one_by_one = self.compiler.compile

            def side_by_side(files: Sequence[str], *others: Any, **named: Any) -> list[str]:
                with ThreadPoolExecutor(os.cpu_count()) as cores:
                    made = cores.map(lambda file: one_by_one([file], *others, **named), files)
                    return [path for paths in made for path in paths]

            self.compiler.compile = side_by_side
            super().build_extensions()

    command = SideBySide(Distribution({"name": "chalkwire-reader", "ext_modules": list(extensions)}))
    command.inplace = True
    command.ensure_finalized()
    command.run()


def compile_in(folder: Path, translate_only: bool = False) -> None:
    """The reader in this copy of the product compiled, beside its source."""
    plain = {path: path.read_bytes() for path in sources(folder)}
    with chdir(folder):
        extensions = translate(folder, by_place=not translate_only)
        if not translate_only:
            build(extensions)
    for path, source in plain.items():
        path.write_bytes(source)
    for left in (folder / "build", folder / ".mypy_cache"):
        shutil.rmtree(left, ignore_errors=True)
    if not translate_only:
        (folder / MARK).write_text(digest_of(folder), encoding="utf-8")


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("folder", nargs="?", default=str(TOP / "build" / "compiled"))
    options.add_argument("--translate", action="store_true")
    options.add_argument("--is-fresh", action="store_true", help="say by the exit status whether FOLDER is up to date")
    chosen = options.parse_args()
    folder = Path(chosen.folder).resolve()
    if chosen.is_fresh:
        return 0 if is_fresh(folder) else 1
    copy_to(folder)
    compile_in(folder, chosen.translate)
    if not chosen.translate:
        made = len(sources(folder))
        print(f"{made} modules compiled. To run with them: cd {folder} && {sys.executable} -m bot serve")
    return 0


if __name__ == "__main__":
    sys.exit(main())

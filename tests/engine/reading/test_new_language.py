"""A language more is three files of words and no code: here Danish, from memory, beside a copy of the engine."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).parents[3]
WORDS = """# Danish
sets: sæt
reps: gentagelser, gentagelse
of: af
with: med, på
each: hver hånd, pr hånd
warmup: opvarmning
failure: til failure, til udmattelse
today: i dag
yesterday: i går
weekday 0: mandag, i mandags
weekday 1: tirsdag
"""
NAMES = """# Danish
bænkpres: barbell bench press
dødløft: conventional deadlift
armbøjninger: push-up
"""
HEADERS = """# Danish
date: dato
exercise: øvelse
sets: antal sæt
reps: gentagelser
load: vægt
"""
TRIED = """
import json
import sys
from datetime import date, datetime
from decimal import Decimal
from engine.catalogue.catalogue import catalogue
from engine.imports.document import read_log
from engine.imports.values import Habits
from engine.reading import read
from engine.reading.values import Context, Logged
from engine.reading.wording import describe
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit

WORDED = json.loads(sys.argv[1])
NOW = datetime(2026, 3, 4, 18)
said = {}
for text in ("bænkpres 3 sæt af 8 gentagelser med 60", "i går dødløft 3x5 140", "mandag: dødløft 140x5 opvarmning"):
    told = read(text, Context(now=NOW), catalogue())
    said[text] = [describe(told.sets), str(told.on)] if isinstance(told, Logged) else [type(told).__name__, ""]
bench, load = ExerciseName("barbell bench press"), Load(Decimal(60), Unit.KG)
worded = {}
for text in WORDED:
    told = read(text, Context(now=NOW, last={bench: load}), catalogue())
    came = describe(told.sets) if isinstance(told, Logged) else getattr(told, "typed", "") or getattr(told, "text", "")
    worded[text] = [type(told).__name__, getattr(told, "question", came)]
table = "dato;øvelse;antal sæt;gentagelser;vægt\\n05.03.2024;bænkpres;3;8;60\\n".encode()
log = read_log("log.csv", table, Habits(Unit.KG, date(2026, 3, 4)), catalogue())
print(json.dumps([said, worded, describe([one.done for one in log.sets]) if log else None]))
"""
LITTLE_WORDS = """# No language: words that no other file has, so that only this one can tell what they mean
cue perhaps: zperv
cue was: zwarv
cue more: zmerv
cue heavier: zterv
cue fewer: zferv
cue after: zafterv
cue all: zalv
cue is: zistv
cue means: zmeenv
"""
WORDED = {
    "zperv bench 60x8": ["NoSets", ""],
    "bench 60x8 (zwarv 55x8)": ["Logged", "barbell bench press 8 at 60 kg"],
    "bench 2.5 zterv: 9 8": ["Logged", "barbell bench press 9 at 62.5 kg, 8 at 62.5 kg"],
    "bench 2.5 zferv: 9 8": ["Logged", "barbell bench press 9 at 57.5 kg, 8 at 57.5 kg"],
    "zafterv warm up bench 3x5 60": ["Logged", "barbell bench press 3×5 at 60 kg"],
    "bp zmeenv bench": ["Act", "bp"],
}
"""Messages that go by the little words: perhaps, was, heavier, fewer, after, means."""
FILES = {
    "engine/reading/languages/xx.txt": LITTLE_WORDS,
    "engine/reading/languages/da.txt": WORDS,
    "engine/catalogue/names/danish.txt": NAMES,
    "engine/imports/headers/da.txt": HEADERS,
}


def tried(folder: Path) -> list[Any]:
    run = subprocess.run(
        [sys.executable, "-c", TRIED, json.dumps(list(WORDED))],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(folder)},
        capture_output=True,
        text=True,
        check=True,
    )
    return json.loads(run.stdout)


@pytest.fixture
def copied(tmp_path: Path) -> Path:
    shutil.copytree(ROOT / "engine", tmp_path / "engine")  # with what Python keeps compiled of the same sources
    return tmp_path


def test_a_language_is_three_files_of_words(copied: Path):
    before = tried(copied)
    for name, text in FILES.items():
        (copied / name).write_text(text, encoding="utf-8")
    said, worded, table = tried(copied)

    assert before[2] is None
    assert not [text for text, came in before[1].items() if came == WORDED[text]]
    assert worded == WORDED
    assert said == {
        "bænkpres 3 sæt af 8 gentagelser med 60": ["barbell bench press 3×8 at 60 kg", "None"],
        "i går dødløft 3x5 140": ["conventional deadlift 3×5 at 140 kg", "2026-03-03"],
        "mandag: dødløft 140x5 opvarmning": ["conventional deadlift 5 at 140 kg warmup", "2026-03-02"],
    }
    assert table == "barbell bench press 3×8 at 60 kg"


@pytest.mark.parametrize("name", sorted(FILES))
def test_a_line_that_cannot_be_used_is_named(copied: Path, name: str):
    (copied / name).write_text("# Danish\nno such thing, at all\n", encoding="utf-8")

    with pytest.raises(subprocess.CalledProcessError) as failed:
        tried(copied)

    assert Path(name).name in failed.value.stderr
    assert "line 2" in failed.value.stderr

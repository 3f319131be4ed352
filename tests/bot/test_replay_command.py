"""The replay command: what it prints, what it writes, how it ends, as its contract has it."""

from __future__ import annotations

import json

import pytest

from bot.cli import main
from tests.bot.chatting import PLAN

HEAD = "2026-03-02 "


@pytest.fixture
def replay(tmp_path, capsys):
    """Plays lines of a story; hands back the exit status, what was printed, and what was complained of."""

    def run(*lines, options=(), files=None):
        for name, content in (files or {}).items():
            (tmp_path / name).write_bytes(content)
        story = tmp_path / "story.txt"
        story.write_text("\n".join(lines), encoding="utf-8")
        status = main(["replay", str(story), *options])
        out = capsys.readouterr()
        return status, out.out, out.err

    return run


def objects(printed):
    return [json.loads(line) for line in printed.splitlines()]


def test_each_outgoing_message_is_one_json_object_with_its_keys(replay):
    status, out, err = replay(HEAD + "18:00 ana: squat 3x5 100", options=["--jsonl"])
    (receipt, hello) = objects(out)

    assert (status, err) == (0, "")
    assert receipt == {
        "at": "2026-03-02T18:00",
        "to": "ana",
        "kind": "send",
        "id": receipt["id"],
        "text": "Barbell back squat 3×5 at 100 kg. Saved.",
        "buttons": [["Undo"]],
    }
    assert hello["kind"] == "send"


def test_an_edit_carries_the_id_of_its_message_and_a_reaction_that_of_hers(replay):
    _, out, _ = replay(
        HEAD + "18:00 ana: hello", HEAD + "18:01 ana: squat 100x5", HEAD + "18:02 ana: 5", options=["--jsonl"]
    )
    sent = objects(out)
    receipt = next(one for one in sent if "Saved" in one["text"])
    reaction, edit = sent[-2:]

    assert (reaction["kind"], reaction["text"], reaction["buttons"]) == ("react", "", [])
    assert edit["kind"] == "edit"
    assert edit["id"] == receipt["id"]
    assert reaction["id"] == 3, "her third message of the story"


TELLS_NEXT = [
    pytest.param("today", id="today"),
    pytest.param("next", id="next"),
    pytest.param("squat 90x5", id="a receipt that names the next set"),
    pytest.param("why squat", id="why"),
]


@pytest.mark.parametrize("words", TELLS_NEXT)
def test_what_states_a_prescription_carries_it(replay, words):
    _, out, _ = replay(
        HEAD + "17:00 ana sends plan.txt",
        HEAD + f"18:00 ana: {words}",
        options=["--jsonl"],
        files={"plan.txt": PLAN.encode()},
    )
    line = next(one for one in objects(out) if "prescribes" in one)
    squat = line["prescribes"][0]

    assert set(squat) == {"exercise", "sets", "reason"}
    assert squat["exercise"] == "barbell back squat"
    assert squat["sets"] == [{"reps": 5, "load": 90, "unit": "kg"}] * 3
    assert squat["reason"]


@pytest.mark.parametrize(
    ("line", "sets"),
    [
        pytest.param("lateral raise 2x12-15 at 8 kg", {"reps": [12, 15], "load": 8, "unit": "kg"}, id="a range"),
        pytest.param("push-up 2x max", {"reps": "max", "load": None, "unit": None}, id="a maximum"),
        pytest.param("plank 2x40 s", {"reps": 1, "load": None, "unit": None, "seconds": 40}, id="a time"),
        pytest.param("barbell bench press 2x5 at 60.5 kg, rir 2", {"reps": 5, "unit": "kg", "rir": 2}, id="an effort"),
    ],
)
def test_a_target_is_told_in_its_own_shape(replay, line, sets):
    plan = f"plan: one, 2 weeks\nday mon: all\n{line}"
    _, out, _ = replay(
        HEAD + "17:00 ana sends plan.txt",
        HEAD + "18:00 ana: today",
        options=["--jsonl"],
        files={"plan.txt": plan.encode()},
    )
    told = next(one["prescribes"][0]["sets"] for one in objects(out) if "prescribes" in one)

    assert len(told) == 2
    assert sets.items() <= told[0].items()


def test_a_week_carries_its_volume_and_a_summary_is_silent(replay):
    _, out, _ = replay(
        HEAD + "17:00 ana: /start",
        HEAD + "17:01 ana: London",
        HEAD + "17:01 ana: kg",
        HEAD + "17:02 ana sends plan.txt",
        HEAD + "18:00 ana: squat 3x5 90",
        HEAD + "19:00 ana: week",
        "2026-03-08 21:00 --",
        options=["--jsonl"],
        files={"plan.txt": (PLAN + "target quads 6-12\n").encode()},
    )
    week, summary = [one for one in objects(out) if "volume" in one]

    assert week["volume"]["quads"] == {"direct": 3, "fractional": 3, "target": [6, 12]}
    assert "silent" not in week
    assert summary["silent"] is True
    assert summary["at"] == "2026-03-08T19:00"
    assert summary["volume"]["hamstrings" if "hamstrings" in summary["volume"] else "quads"]


def test_an_export_names_its_document_and_pictures_writes_it(replay, tmp_path):
    _, out, _ = replay(
        HEAD + "18:00 ana: squat 3x5 100",
        HEAD + "18:01 ana: export",
        options=["--jsonl", "--pictures", str(tmp_path / "files")],
    )
    named = [one["document"] for one in objects(out) if "document" in one]
    written = [path.name for path in (tmp_path / "files").iterdir()]

    assert "everything.json" in named
    assert len(written) == len(named)
    assert all(any(name.endswith(f"-{document}") for name in written) for document in named)


def test_the_sets_that_stand_are_written_in_order_with_the_keys_of_a_reading(replay, tmp_path):
    where = tmp_path / "sets.jsonl"
    replay(
        HEAD + "18:00 ana: squat 100x5 @8",
        HEAD + "18:01 ben: bench 60x8",
        HEAD + "18:02 ana: squat 100x4",
        HEAD + "18:03 ana: undo",
        HEAD + "18:04 ana: db curl 12kg 10",
        HEAD + "18:05 ana: plank 40s",
        HEAD + "18:06 ana: yesterday: pull ups +10kg 6",
        options=["--sets", str(where)],
    )

    ana, kg = {"who": "ana", "date": "2026-03-02"}, {"unit": "kg"}
    assert objects(where.read_text("utf-8")) == [
        {**ana, "exercise": "barbell back squat", "reps": 5, "load": 100, **kg, "rpe": 8},
        {**ana, "exercise": "dumbbell curl", "reps": 10, "load": 12, **kg, "per_hand": True},
        {**ana, "exercise": "plank", "reps": 1, "load": 0, **kg, "body": True, "seconds": 40},
        {**ana, "date": "2026-03-01", "exercise": "pull-up", "reps": 6, "load": 10, **kg, "body": True},
        {**ana, "who": "ben", "exercise": "barbell bench press", "reps": 8, "load": 60, **kg},
    ]


def test_a_story_straight_from_start_to_sets_loses_none(replay, tmp_path):
    where = tmp_path / "sets.jsonl"
    replay(
        HEAD + "18:00 ana: /start",
        HEAD + "18:01 ana: squat 3x5 100",
        HEAD + "18:02 ana: bench 60x8",
        HEAD + "18:03 ana: London",
        HEAD + "18:04 ana: row 40x10 barbell",
        options=["--sets", str(where)],
    )

    assert len(objects(where.read_text("utf-8"))) == 5


def test_edits_count_her_messages_without_start_and_edits(replay, tmp_path):
    where = tmp_path / "sets.jsonl"
    replay(
        HEAD + "18:00 ana: /start",
        HEAD + "18:01 ana: squat 100x5",
        HEAD + "18:02 ben: squat 60x5",
        HEAD + "18:03 ana: squat 100x4",
        HEAD + "18:04 ana edits 1: squat 100x6",
        HEAD + "18:05 ana: squat 100x3",
        HEAD + "18:06 ana edits 3: squat 100x2",
        HEAD + "18:07 ana edits: squat 100x1",
        options=["--sets", str(where)],
    )
    reps = [one["reps"] for one in objects(where.read_text("utf-8")) if one["who"] == "ana"]

    assert reps == [6, 4, 1]


def test_times_are_by_each_persons_own_clock(replay):
    _, out, _ = replay(
        HEAD + "12:00 ana: /start",
        HEAD + "12:01 ana: Tokyo",
        HEAD + "21:10 ana: remind me at 21:30",
        HEAD + "12:30 ben: hello",
        HEAD + "12:31 ben: squat 60x5",
        options=["--jsonl"],
    )
    told = [(one["at"][11:], one["to"]) for one in objects(out)]

    assert ("21:30", "ana") in told
    assert told.index(("21:30", "ana")) < told.index(("12:31", "ben"))


@pytest.mark.parametrize(
    ("line", "complaint"),
    [
        pytest.param("ana: squat", "line 2", id="no time"),
        pytest.param("2026-02-30 18:00 ana: squat", "line 2", id="no such day"),
        pytest.param(HEAD + "18:01 ana hums", "line 2", id="no deed"),
        pytest.param(HEAD + "18:01 ana taps: Dance", "line 2: taps 'Dance'", id="no such button"),
        pytest.param(HEAD + "18:01 ana taps: U", "line 2: taps 'U'", id="a prefix of no button"),
        pytest.param(HEAD + "18:01 ana edits 7: squat", "line 2: read 'edits 7'", id="no such message"),
        pytest.param(HEAD + "18:01 ana sends missing.txt", "line 2: read 'sends missing.txt'", id="no such file"),
        pytest.param(HEAD + "18:01 ben taps: Undo", "line 2", id="a tap before anything was said"),
    ],
)
def test_a_line_that_cannot_be_played_ends_it_naming_the_line(replay, line, complaint):
    status, out, err = replay(HEAD + "18:00 ana: /start", line, HEAD + "18:30 ana: squat 100x5")

    assert status == 2
    assert complaint in err
    assert "I'm a bot" in out, "what came before is told"
    assert "Saved" not in out


@pytest.mark.parametrize(
    "content", [pytest.param(None, id="no such story"), pytest.param(b"\xff\xfe\x00", id="no text at all")]
)
def test_a_story_that_cannot_be_read_is_named_without_a_traceback(tmp_path, capsys, content):
    story = tmp_path / "story.txt"
    if content is not None:
        story.write_bytes(content)

    assert main(["replay", str(story)]) == 2
    assert "story.txt" in capsys.readouterr().err


def test_a_database_may_be_named_by_its_file_and_keeps_the_story(replay, tmp_path):
    where = str(tmp_path / "log.db")
    first = replay(HEAD + "18:00 ana: squat 100x5", options=["--db", where])
    again = replay(HEAD + "19:00 ana: history squat", options=["--db", where])

    assert (first[0], again[0]) == (0, 0)
    assert "5 at 100 kg" in again[1]
    assert "Saved" not in again[1], "what went out before is not told again"


def test_a_second_story_on_the_same_database_edits_its_own_messages(replay, tmp_path):
    where, sets = str(tmp_path / "log.db"), tmp_path / "sets.jsonl"
    replay(HEAD + "18:00 ana: squat 100x5", options=["--db", where])
    replay(
        HEAD + "19:00 ana: squat 100x4",
        HEAD + "19:01 ana edits: squat 100x3",
        options=["--db", where, "--sets", str(sets)],
    )

    assert [one["reps"] for one in objects(sets.read_text("utf-8"))] == [5, 3]


def test_plain_printing_is_for_people(replay):
    _, out, _ = replay(HEAD + "18:00 ana: hello", HEAD + "18:01 ana: squat 100x5", HEAD + "18:02 ana: 5")

    assert "2026-03-02 18:01 to ana\n" in out
    assert "    [Undo]\n" in out
    assert "thumbs up, to ana" in out
    assert "edit, to ana" in out

"""What is hers: taken along whole, erased whole, and another's untouched."""

from __future__ import annotations

import csv
import io
import json
from datetime import timedelta

import pytest
from sqlalchemy import select

from engine.values.ids import AthleteId
from storage.database import Database
from storage.tables import METADATA
from tests.bot.chatting import PLAN, Chats, buttons, said, texts, to

SECRET = "zebra"


def lived_in(database) -> Chats:
    """Two clients of one coach, each with something in every corner."""
    chats = Chats(database)
    chats.says("kit", "/start")
    for who in ("ana", "ben"):
        code = said(chats.says("kit", "invite")).split("/start ")[1].split()[0]
        chats.says(who, "/start", "London", "kg", f"/start {code}", "yes", PLAN, "bodyweight 82")
        chats.says(who, "remind me 17:30 mon thu", "remind me tomorrow at 7:00", "bp means close grip bench press")
        chats.says(who, "new exercise: cable hip flexion, like leg extension", "press 3x8 40", "overhead")
        chats.says(who, f"note: {SECRET} {who}", "squat 3x5 90", "skip leg extension", "row 3x10 60")
        chats.edits(who, "squat 3x5 92.5", -3)
        chats.says(who, "undo", "elbow hurts", "share")
        chats.says("kit", f"note to {who}: {SECRET} elbows", f"digest {who}")
    chats.says("kit", "digest")
    return chats


def rows_of(database: Database, athlete: int, name: str) -> dict[str, int]:
    """How many rows of each table are a person's, or name her."""
    found = {}
    with database.transaction() as store:
        connection = store.people._work.connection
        for table in METADATA.sorted_tables:
            columns = [
                column for column in table.c if column.name in ("athlete_id", "coach_id", "by", "coach", "about")
            ]
            rows = [dict(row) for row in connection.execute(select(table)).mappings()]
            hers = [
                row
                for row in rows
                if any(row[column.name] == athlete for column in columns)
                or (table.name == "person" and row["id"] == athlete)
                or name in json.dumps(row, default=str)
            ]
            if hers:
                found[table.name] = len(hers)
    return found


def dump(database: Database, athlete: AthleteId) -> str:
    with database.transaction() as store:
        return store.belongings.as_json(athlete)


def erased(chats: Chats, who: str):
    chats.says(who, "erase")
    return chats.says(who, "Erase ALL ")


def test_erasing_leaves_no_row_of_hers_anywhere_once_the_last_answer_is_out(either):
    chats = lived_in(either)
    ana = chats.person("ana").id
    before = rows_of(either, ana, "ana")
    out = erased(chats, "ana")
    chats.tick(chats.at + timedelta(minutes=20))

    assert texts(to(out, chats.parties["ana"].chat)) == [
        "Erased, all of it. Messages stay in this chat until you clear it there. /start begins anew."
    ]
    assert len(before) > 12
    assert rows_of(either, ana, f"{SECRET} ana") == {}
    with chats.store() as store:
        assert [person.name for person in store.people.everyone()] == ["kit", "ben"]


def test_erasing_takes_what_her_coach_was_told_of_her_too(chats):
    chats = lived_in(chats.database)
    ana = chats.person("ana").id
    kit = chats.person("kit").id
    erased(chats, "ana")
    with chats.store() as store:
        told = [one.outgoing.text for one in store.outbox.after(0, kit)]

    assert not [words for words in told if words.startswith(("ana", "Shared", "Sent to ana"))]
    assert [words for words in told if words.startswith("ben")]
    assert rows_of(chats.database, ana, "nobody") == {}


def test_erasing_leaves_every_row_of_another_as_it_was(either):
    chats = lived_in(either)
    ben = chats.person("ben").id
    before = dump(either, ben)
    erased(chats, "ana")
    chats.tick(chats.at + timedelta(minutes=20))

    assert dump(either, ben) == before


def test_after_an_erasure_nothing_more_goes_out_to_her(chats):
    chats = lived_in(chats.database)
    erased(chats, "ana")
    later = chats.until(chats.at + timedelta(days=8))

    assert to(later, chats.parties["ana"].chat) == []
    assert to(later, chats.parties["ben"].chat) != []


def test_whoever_comes_back_within_the_quarter_of_an_hour_is_a_stranger_and_stays(chats):
    chats.says("ana", "/start", "London", "kg", "squat 90x5")
    erased(chats, "ana")
    out = chats.says("ana", "/start", "Paris", "lb", "squat 185x5")
    chats.tick(chats.at + timedelta(minutes=30))

    assert "lb" in said(out)
    assert chats.log("ana") == [("barbell back squat", 5, "185 lb")]
    assert chats.standing("ana")["settings"]["zone"] == "Europe/Paris"


@pytest.mark.parametrize(
    "words",
    [
        pytest.param("keep my data", id="the button's words"),
        pytest.param("tap: v1:keep", id="the button"),
        pytest.param("erase", id="erase again"),
        pytest.param("yes", id="a yes is not enough"),
        pytest.param("erase all of it?", id="near the words"),
        pytest.param("squat 90x4", id="a set"),
    ],
)
def test_nothing_but_the_very_words_erases(chats, words):
    chats.says("ana", "squat 90x5", "erase")
    chats.taps("ana", words.removeprefix("tap: ")) if words.startswith("tap: ") else chats.says("ana", words)

    assert chats.log("ana")[0] == ("barbell back squat", 5, "90 kg")


def test_the_words_alone_erase_nothing_half_an_hour_later(chats):
    chats.says("ana", "squat 90x5", "erase")
    chats.at += timedelta(minutes=31)
    chats.says("ana", "erase all")

    assert len(chats.log("ana")) == 1


def files(deliveries) -> dict[str, str]:
    return {
        one.outgoing.attachment_name: one.outgoing.attachment.decode("utf-8")
        for one in deliveries
        if one.outgoing.attachment is not None
    }


def test_the_export_holds_her_sets_in_both_files_and_nobody_elses(chats):
    chats = lived_in(chats.database)
    found = files(chats.says("ana", "export"))
    sheet = next(words for name, words in found.items() if "set" in name)
    rows = list(csv.DictReader(io.StringIO(sheet)))
    everything = json.loads(found["everything.json"])["tables"]
    standing = chats.log("ana")

    assert len(rows) == len(standing) == 6
    assert len([row for row in everything["set_record"] if row["stands"]]) == 6
    assert any(f"{SECRET} ana" in words for words in found.values())
    assert not any(f"{SECRET} ben" in words for words in found.values())


def test_an_export_before_anything_was_said_is_a_file_all_the_same(chats):
    found = files(chats.says("ana", "export"))

    assert "everything.json" in found


def test_privacy_offers_both(chats):
    out = chats.says("ana", "/start", "/privacy")

    assert {"Export", "Erase"} <= set(buttons(out))

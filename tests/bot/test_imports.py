"""Old logs through the whole product: shown, approved, recorded in one change, never doubled, never half saved."""

from __future__ import annotations

from datetime import date

import pytest

from bot.replay import as_text
from bot.replies.screen import fits_card
from bot.story_player import StoryPlayer
from tests.databases import in_memory

LOG = """Date,Exercise,Sets,Reps,Weight,Notes
5/3/2024,Bench press,3,8,"82,5",felt good
13/3/2024,Barbell row,3,"8,8,7",60,
14/3/2024,row,2,8,60,
14/3/2024,squat,1,8-12,100,
14/3/2024,squat,1,5,100,
"""
DIARY = "5.3.2024\nsquat 100x5 105x3\n\n7.3.2024\nsquat 110x3\n"
FILES = {
    "log.csv": LOG,
    "longer.csv": LOG + "15/3/2024,squat,2,5,105,\n",
    "today.csv": "date,exercise,reps,weight\n2026-03-02,squat,5,100\n2026-03-02,squat,5,100\n",
    "diary.txt": DIARY,
    "unread.csv": "date,exercise,reps\n2024-03-05,glorp,5\n",
    "plan.txt": "plan: first, 4 weeks\nday mon: full body\nsquat 3x5 at 60 kg, then +2.5 kg\n",
    "many.csv": "date,exercise,reps\n2024-03-05,squat,5\n"
    + "".join(f"2024-03-05,gadget number {n},5\n" for n in range(40)),
}


class Told:
    """A story played by one athlete, a minute a line."""

    def __init__(self, *deeds: str, **files: str) -> None:
        content = {name: text.encode() for name, text in (FILES | files).items()}
        self.player = StoryPlayer(in_memory(), content)
        lines = [f"2026-03-02 17:{minute:02} ana{deed}" for minute, deed in enumerate(deeds)]
        self.sent = list(self.player.play("\n".join(lines)))
        self.replies = [as_text(one, "ana", self.player.wall_time(one)).split("\n", 1)[1] for one in self.sent]
        with self.player.database.transaction() as store:
            self.failures = store.inbox.failures()
            person = store.people.find("story", 1)
            assert person is not None
            self.athlete = person.id
            self.records = store.sets.between(self.athlete, date.min, date.max)
            self.notes = store.notes.between(self.athlete, date.min, date.max)

        assert self.failures == ()

    @property
    def last(self) -> str:
        return self.replies[-1]


def test_nothing_is_saved_before_it_is_approved():
    told = Told(" sends log.csv")

    assert told.records == ()
    assert "not saved yet: 7 sets, 3 days, 3 lifts, 1 note, 5 Mar to 14 Mar 2024." in told.last
    assert "“row” ×1 is open. Send: row means barbell row" in told.last
    assert "[Take over] [Cancel]" in told.last


@pytest.mark.parametrize("yes", [" taps: Take over", ": take over", ": Yes.", ": ok"])
def test_approved_by_button_or_words(yes):
    told = Told(" sends log.csv", yes)

    assert len(told.records) == 7
    assert [note.text for note in told.notes] == ["felt good"]
    assert told.last.lstrip().startswith("Taken over from log.csv: 7 sets")
    assert "2 lines left out." in told.last


@pytest.mark.parametrize("no", [" taps: Cancel", ": cancel", ": no"])
def test_declined_by_button_or_words(no):
    told = Told(" sends log.csv", no, " taps: Take over") if "taps" not in no else Told(" sends log.csv", no)

    assert told.records == ()


def test_one_undo_takes_all_of_it_back_and_redo_returns_it():
    undone = Told(" sends log.csv", ": take over", ": undo")
    redone = Told(" sends log.csv", ": take over", ": undo", ": redo")

    assert (undone.records, undone.notes) == ((), ())
    assert len(redone.records) == 7


def test_the_same_document_again_doubles_nothing():
    told = Told(" sends log.csv", ": take over", " sends log.csv", ": take over")

    assert len(told.records) == 7
    assert "Nothing new in log.csv: all 7 sets are in your log. Nothing is doubled." in told.replies[2]


def test_of_a_document_that_grew_only_the_new_rows_are_taken():
    told = Told(" sends log.csv", ": take over", " sends longer.csv", ": take over")

    assert len(told.records) == 9
    assert "2 sets, 1 day, 1 lift, 15 Mar 2024" in told.replies[2]
    assert "7 sets of it are in your log already." in told.replies[2]


def test_after_an_undo_the_same_document_can_be_taken_again():
    told = Told(" sends log.csv", ": take over", ": undo", " sends log.csv", ": take over")

    assert len(told.records) == 7


def test_sets_told_in_the_chat_are_not_doubled_by_a_sheet_that_has_them_too():
    told = Told(": squat 100x5", " sends today.csv", ": take over")

    assert len(told.records) == 2


@pytest.mark.parametrize(
    ("told", "rows"),
    [
        pytest.param("squat 2x5 100 rpe 8", "squat,5,100\n2026-03-02,squat,5,100", id="effort told in the chat alone"),
        pytest.param("pull ups 8 8, last to failure", "pull up,8,\n2026-03-02,pull up,8,", id="failure"),
        pytest.param("squat 2x5 220lb", "squat,5,100\n2026-03-02,squat,5,100", id="in another unit, rounded"),
        pytest.param("squat 2x5 100", "squat,5,\n2026-03-02,squat,5,", id="without the load"),
    ],
)
def test_a_row_that_tells_less_of_a_set_in_the_log_is_that_set(told, rows):
    table = f"date,exercise,reps,weight\n2026-03-02,{rows}\n2026-03-02,bench press,8,60\n"
    after = Told(f": {told}", " sends same.csv", ": take over", **{"same.csv": table})

    assert len(after.records) == 3
    assert "2 sets of it are in your log already." in after.replies[-2]


@pytest.mark.parametrize("row", ["squat,5,102.5", "squat,4,100", "front squat,5,100"])
def test_another_set_of_the_same_day_is_another_set(row):
    table = f"date,exercise,reps,weight\n2026-03-02,{row}\n"

    assert len(Told(": squat 1x5 100", " sends more.csv", ": take over", **{"more.csv": table}).records) == 2


BARE = "date,exercise,reps,weight\n1/2/2026,squat,5,100\n2/3/2026,squat,5,100\n"


@pytest.mark.parametrize(
    ("answers", "first", "load"),
    [
        pytest.param((), (1, 2), "100 kg", id="by habit"),
        pytest.param((": month first",), (2, 1), "100 kg", id="the order of dates"),
        pytest.param((": month first", ": day first"), (1, 2), "100 kg", id="and back"),
        pytest.param((": those are pounds",), (2, 1), "100 lb", id="the unit, and the order that goes with it"),
        pytest.param((": lb", ": day first"), (1, 2), "100 lb", id="both"),
    ],
)
def test_she_may_say_what_the_dates_and_loads_are(answers, first, load):
    told = Told(" sends bare.csv", *answers, ": take over", **{"bare.csv": BARE})

    assert (told.records[0].on.day, told.records[0].on.month) == first
    assert str(told.records[0].done.load) == load
    assert len(told.records) == 2


def test_what_is_taken_for_granted_says_how_to_change_it():
    assert (
        "Dates day/month, bare loads kg; else say month first or lb."
        in Told(" sends bare.csv", **{"bare.csv": BARE}).last
    )
    assert "Dates day/month, bare loads kg; else say lb." in Told(" sends log.csv").last


def test_a_row_corrected_since_is_not_brought_back():
    told = Told(" sends today.csv", ": take over", ": delete set 2", " sends today.csv")
    again = Told(" sends today.csv", ": take over", ": delete set 2", " sends today.csv", ": take over")

    assert len(told.records) == 1
    assert len(again.records) == 1


def test_two_taps_take_over_once():
    told = Told(" sends log.csv", " taps: Take over", " sends diary.txt", " taps: Cancel")

    assert len(told.records) == 7
    assert "Cancelled: nothing of diary.txt is saved." in told.last


def test_what_was_taught_between_is_shown_before_it_is_recorded():
    told = Told(" sends log.csv", ": row means barbell row", ": take over")
    then = Told(" sends log.csv", ": row means barbell row", ": take over", ": take over")

    assert told.records == ()
    assert "not saved yet: 9 sets" in told.last
    assert len(then.records) == 9


def test_sets_may_be_logged_while_an_old_log_waits():
    told = Told(" sends log.csv", ": squat 120x5", ": take over")

    assert len(told.records) == 8


def test_an_old_log_never_becomes_the_exercise_in_hand():
    told = Told(" sends diary.txt", ": take over", ": squat 120x5", " sends log.csv", ": take over", ": 120x4")

    assert told.records[-1].done.exercise == "barbell back squat"
    assert (told.records[-1].on, told.records[-1].done.reps) == (date(2026, 3, 2), 4)


def test_a_diary_is_taken_over_day_by_day():
    told = Told(" sends diary.txt", ": take over")

    assert [(one.on, one.done.reps, str(one.done.load)) for one in told.records] == [
        (date(2024, 3, 5), 5, "100 kg"),
        (date(2024, 3, 5), 3, "105 kg"),
        (date(2024, 3, 7), 3, "110 kg"),
    ]


def test_a_log_without_one_set_says_why():
    told = Told(" sends unread.csv")

    assert told.last.lstrip().startswith("Not saved: no sets in unread.csv that I can take over.")
    assert "“glorp” ×1: unknown exercise" in told.last


@pytest.mark.parametrize(
    ("name", "content", "said"),
    [
        ("empty.csv", "", "expected a plan or an old log"),
        (
            "long.csv",
            "date,exercise,reps\n" + "2024-03-05,squat,5\n" * 30_001,
            "read “30002 lines”, expected up to 30000",
        ),
        ("list.csv", "name,phone\nx,1\n", "for an old log a date, too"),
        ("log.ods", "x", "I can't read .ods files"),
    ],
)
def test_a_file_that_cannot_be_read_is_answered_once_and_saves_nothing(name, content, said):
    told = Told(f" sends {name}", **{name: content})

    assert told.last.lstrip().startswith("Not saved: ")
    assert said in told.last
    assert told.records == ()


def test_columns_that_are_passed_over_are_shown():
    told = Told(" sends log.csv", **{"log.csv": "date,exercise,reps,poundage\n2024-03-05,squat,5,100\n"})

    assert "Columns not read: poundage." in told.last


def test_a_plan_is_a_plan():
    told = Told(" sends plan.txt")

    assert "Plan saved" in told.last


@pytest.mark.parametrize("name", ["log.csv", "many.csv", "diary.txt", "unread.csv"])
def test_what_is_shown_fits_the_screen(name):
    shown = Told(f" sends {name}").sent[-1].outgoing

    assert fits_card(shown.text.splitlines(), len(shown.buttons))


def test_what_does_not_fit_the_screen_stands_in_the_file():
    shown = Told(" sends many.csv").sent[-1].outgoing

    assert "see the file" in shown.text
    assert shown.attachment is not None
    assert shown.attachment.decode().count("unknown exercise") == 40


def test_what_is_exported_is_taken_over_equal():
    first = Told(
        ": squat 3x5 100 rpe 8", ": pull ups 8 7 +10", ": plank 60s", ": dumbbell row 24s 3x10, last to failure"
    )
    with first.player.database.transaction() as store:
        exported = store.belongings.as_csv(first.athlete)["sets.csv"]
    files = {"exported.csv": exported}
    second = Told(" sends exported.csv", ": take over", **files)
    again = Told(": squat 3x5 100 rpe 8", " sends exported.csv", **files)

    assert [(one.on, one.done) for one in second.records] == [(one.on, one.done) for one in first.records]
    assert "3 sets of it are in your log already." in again.last

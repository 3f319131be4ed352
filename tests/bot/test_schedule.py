"""What goes out on its own: at the right local time, once, never late beyond use, never against her will."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from threading import Barrier, Thread
from typing import Any

import pytest

from bot import zones
from bot.due_kind import next_weekday, out_of_quiet
from bot.memory import Memory
from tests.bot.chatting import PLAN, Chats, buttons, said, texts, to


def walls(deliveries, zone="UTC"):
    """When each went out, by a zone's clock."""
    return [f"{zones.local(one.at, zone):%a %d %b %H:%M}" for one in deliveries]


def utc(wall, zone="UTC"):
    return zones.instant(datetime.fromisoformat(wall), zone)


def code_of(deliveries):
    return said(deliveries).split("/start ")[1].split()[0]


def coach(chats, *clients):
    """A coach with these clients, all by one clock."""
    chats.says("kit", "/start", "London")
    for who in clients:
        code = code_of(chats.says("kit", "invite"))
        chats.says(who, "/start", "London", f"/start {code}", "yes")


# The days on which clocks change are published by the zones' authorities and stand in the IANA database.
@pytest.mark.parametrize(
    ("zone", "city", "begin", "at", "expected"),
    [
        pytest.param(
            "Europe/Berlin", "Berlin", "2026-03-27", "02:30",
            ["Sat 28 Mar 02:30", "Sun 29 Mar 03:30", "Mon 30 Mar 02:30"], id="Berlin in spring: the hour is not there",
        ),
        pytest.param(
            "Europe/Berlin", "Berlin", "2026-10-23", "02:30",
            ["Sat 24 Oct 02:30", "Sun 25 Oct 02:30", "Mon 26 Oct 02:30"], id="Berlin in autumn: twice there, once sent",
        ),
        pytest.param(
            "Europe/Berlin", "Berlin", "2026-03-27", "00:15",
            ["Sat 28 Mar 00:15", "Sun 29 Mar 00:15", "Mon 30 Mar 00:15"], id="Berlin in spring, just past midnight",
        ),
        pytest.param(
            "America/New_York", "New York", "2026-03-06", "18:00",
            ["Fri 06 Mar 18:00", "Sat 07 Mar 18:00", "Sun 08 Mar 18:00"], id="New York in spring, evening",
        ),
        pytest.param(
            "America/New_York", "New York", "2026-10-30", "01:30",
            ["Sat 31 Oct 01:30", "Sun 01 Nov 01:30", "Mon 02 Nov 01:30"], id="New York in autumn: twice there",
        ),
        pytest.param(
            "Australia/Sydney", "Sydney", "2026-10-02", "02:30",
            ["Sat 03 Oct 02:30", "Sun 04 Oct 03:30", "Mon 05 Oct 02:30"], id="Sydney in spring: the hour is not there",
        ),
        pytest.param(
            "Australia/Sydney", "Sydney", "2026-04-03", "02:30",
            ["Sat 04 Apr 02:30", "Sun 05 Apr 02:30", "Mon 06 Apr 02:30"], id="Sydney in autumn: twice there",
        ),
    ],
)  # fmt: skip
def test_a_daily_reminder_keeps_her_clock_over_both_changes(database, zone, city, begin, at, expected):
    chats = Chats(database, at=utc(f"{begin} 12:00", zone))
    chats.says("ana", "/start", city, "kg", "/settings summary off", f"remind me {at} daily")

    out = chats.until(chats.at + timedelta(days=3, hours=2))

    assert walls([one for one in out if "Time to train" in one.outgoing.text], zone) == expected


@pytest.mark.parametrize(
    ("wall", "quiet", "open_at"),
    [
        pytest.param("19:00", ("21:30", "08:00"), "01 19:00", id="before quiet hours"),
        pytest.param("21:30", ("21:30", "08:00"), "02 08:00", id="their first minute"),
        pytest.param("23:00", ("21:30", "08:00"), "02 08:00", id="before midnight"),
        pytest.param("03:00", ("21:30", "08:00"), "01 08:00", id="after midnight"),
        pytest.param("08:00", ("21:30", "08:00"), "01 08:00", id="their end is open"),
        pytest.param("13:00", ("12:00", "15:00"), "01 15:00", id="by day"),
        pytest.param("13:00", ("13:00", "13:00"), "01 13:00", id="from a time to itself: none"),
    ],
)
def test_quiet_hours_put_off_to_their_end(wall, quiet, open_at):
    put_off = out_of_quiet(
        datetime.fromisoformat(f"2026-03-01 {wall}"), (time.fromisoformat(quiet[0]), time.fromisoformat(quiet[1]))
    )

    assert f"{put_off:%d %H:%M}" == open_at


@pytest.mark.parametrize(
    ("now", "expected"),
    [
        pytest.param("2026-03-01 18:59", "2026-03-01 19:00", id="later today"),
        pytest.param("2026-03-01 19:00", "2026-03-08 19:00", id="strictly after now"),
        pytest.param("2026-03-02 00:00", "2026-03-08 19:00", id="the coming one"),
    ],
)
def test_the_next_weekday_is_strictly_to_come(now, expected):
    assert next_weekday(datetime.fromisoformat(now), 6, time(19, 0)) == datetime.fromisoformat(expected)


def athlete(chats, *more):
    chats.says("ana", "/start", "London", "kg", PLAN, *more)


def reminders(deliveries):
    return [one for one in deliveries if "today: " in one.outgoing.text or "Time to train" in one.outgoing.text]


def test_reminders_come_on_training_days_and_not_on_rest_days_or_once_trained(chats):
    chats.at = utc("2026-03-02 08:00")
    athlete(chats, "remind me 17:30 daily", "/settings summary off")
    out = chats.until(utc("2026-03-05 10:00"))
    chats.says("ana", "row 3x12 55")
    out += chats.until(utc("2026-03-10 08:00"))

    assert walls(reminders(out)) == ["Mon 02 Mar 17:30", "Mon 09 Mar 17:30"]


def test_a_reminder_sounds_names_the_session_and_can_be_put_off_or_stopped(chats):
    chats.at = utc("2026-03-02 08:00")
    athlete(chats, "remind me 17:30 mon")
    out = chats.until(utc("2026-03-02 18:00"))

    assert texts(out) == ["Legs today: barbell back squat and leg extension"]
    assert not out[0].outgoing.silent
    assert {"v1:snooze", "v1:stop-reminders"} <= set(buttons(out).values())


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        pytest.param(["pause until 2026-03-12"], ["Thu 12 Mar 17:30"], id="paused until a day"),
        pytest.param(["pause"], [], id="paused for good"),
        pytest.param(["pause", "resume"], ["Thu 05 Mar 17:30", "Mon 09 Mar 17:30", "Thu 12 Mar 17:30"], id="resumed"),
        pytest.param(
            ["pause", "undo"], ["Thu 05 Mar 17:30", "Mon 09 Mar 17:30", "Thu 12 Mar 17:30"], id="pause undone"
        ),
        pytest.param(["undo"], [], id="reminders undone"),
        pytest.param(
            ["undo", "redo"], ["Thu 05 Mar 17:30", "Mon 09 Mar 17:30", "Thu 12 Mar 17:30"], id="undone and redone"
        ),
        pytest.param(["tap: v1:stop-reminders"], [], id="stopped"),
        pytest.param(
            ["tap: v1:stop-reminders", "undo"],
            ["Thu 05 Mar 17:30", "Mon 09 Mar 17:30", "Thu 12 Mar 17:30"],
            id="stopped, undone",
        ),
        pytest.param(["remind me 6:15 thu"], ["Thu 05 Mar 06:15", "Thu 12 Mar 06:15"], id="told anew"),
        pytest.param(["stop reminders"], [], id="stopped in words"),
        pytest.param(["stop"], [], id="stopped in a word"),
    ],
)
def test_reminders_follow_her_word(chats, words, expected):
    chats.at = utc("2026-03-02 20:00")
    athlete(chats, "/settings summary off", "remind me 17:30 mon thu")
    for word in words:
        chats.taps("ana", word.removeprefix("tap: ")) if word.startswith("tap: ") else chats.says("ana", word)
    out = chats.until(utc("2026-03-13 12:00"))

    assert walls(reminders(out)) == expected


def test_a_reminder_told_anew_on_the_day_it_came_goes_on_coming(chats):
    chats.at = utc("2026-03-02 08:00")
    athlete(chats, "/settings summary off", "remind me 17:30 mon")
    chats.until(utc("2026-03-02 18:00"))
    chats.says("ana", "remind me 19:00 mon")

    out = chats.until(utc("2026-03-17 12:00"))

    assert walls(reminders(out))[-2:] == ["Mon 09 Mar 19:00", "Mon 16 Mar 19:00"]


def test_a_snoozed_reminder_comes_again_once(chats):
    chats.at = utc("2026-03-02 17:00")
    athlete(chats, "remind me 17:30 mon", "/settings summary off")
    chats.until(utc("2026-03-02 17:31"))
    chats.taps("ana", "v1:snooze")
    out = chats.until(utc("2026-03-03 12:00"))

    assert len(out) == 1
    assert walls(out)[0].startswith("Mon 02 Mar 18:3")


def test_reminders_asked_for_once_each_come_at_their_own_time(chats):
    chats.at = utc("2026-03-02 08:00")
    chats.says("ana", "/start", "London", "kg", "remind me at 19:00", "remind me tomorrow at 7:00")
    out = chats.until(utc("2026-03-05 12:00"))

    assert walls(out) == ["Mon 02 Mar 19:00", "Tue 03 Mar 07:00"]


@pytest.mark.parametrize(
    ("words", "walls_told"),
    [
        pytest.param(["undo"], [], id="undone"),
        pytest.param(["undo", "redo"], ["Mon 02 Mar 19:00"], id="brought back"),
        pytest.param(["bench 60x8", "undo"], ["Mon 02 Mar 19:00"], id="a later step undone"),
    ],
)
def test_a_reminder_asked_for_once_goes_with_undo_and_the_sets_before_it_stay(chats, words, walls_told):
    chats.at = utc("2026-03-02 08:00")
    chats.says("ana", "/start", "London", "kg", "squat 90x5", "remind me at 19:00", *words)
    out = chats.until(utc("2026-03-03 12:00"))

    assert walls(out) == walls_told
    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        pytest.param(["rest 2 min"], 1, id="over"),
        pytest.param(["rest 2 min", "tap: v1:rest-stop"], 0, id="stopped by a tap"),
        pytest.param(["rest 2 min", "stop"], 0, id="stopped in a word"),
        pytest.param(["rest 2 min", "rest 3 min"], 1, id="the later one replaces it"),
    ],
)
def test_a_rest_sounds_once_when_it_is_over_and_not_when_it_was_stopped(chats, words, expected):
    chats.at = utc("2026-03-02 23:00")
    athlete(chats, "squat 90x5")
    for word in words:
        chats.taps("ana", word.removeprefix("tap: ")) if word.startswith("tap: ") else chats.says("ana", word)
    out = chats.until(chats.at + timedelta(minutes=15), timedelta(seconds=10))

    assert texts(out) == ["Rest over. Next set: 5 at 90 kg"] * expected
    assert not any(one.outgoing.silent for one in out)


def test_a_rest_that_ended_while_the_bot_was_down_is_not_told_long_after(chats):
    athlete(chats, "squat 90x5", "rest 2 min")

    assert chats.tick(chats.at + timedelta(minutes=30)) == []


def summaries(deliveries):
    return [one for one in deliveries if one.outgoing.text.startswith("Week ")]


def test_one_silent_summary_a_week_however_often_one_looks(chats):
    chats.at = utc("2026-03-02 18:00")
    athlete(chats, "squat 3x5 90")
    out = chats.until(utc("2026-03-08 18:50"))
    out += chats.until(utc("2026-03-08 19:10"), timedelta(seconds=30))
    out += chats.until(utc("2026-03-16 12:00"))

    assert walls(summaries(out)) == ["Sun 08 Mar 19:00", "Sun 15 Mar 19:00"]
    assert all(one.outgoing.silent for one in summaries(out))


@pytest.mark.parametrize(
    ("quiet", "expected"),
    [
        pytest.param("quiet 18:00 8:00", ["Mon 09 Mar 08:00", "Mon 16 Mar 08:00"], id="over Sunday evening"),
        pytest.param("quiet 18:30 20:00", ["Sun 08 Mar 20:00", "Sun 15 Mar 20:00"], id="for an hour of it"),
    ],
)
def test_a_summary_put_off_by_quiet_hours_still_tells_the_week_that_ended(chats, quiet, expected):
    chats.at = utc("2026-03-02 18:00")
    athlete(chats, "squat 3x5 90", quiet)
    out = summaries(chats.until(utc("2026-03-17 12:00")))

    assert walls(out) == expected
    assert [one.outgoing.text.splitlines()[0] for one in out] == [
        "Week 10: 1 of 2 sessions",
        "Week 11: 0 of 2 sessions",
    ]


def test_what_is_settled_between_sunday_evening_and_its_summary_loses_none(chats):
    chats.at = utc("2026-03-02 18:00")
    athlete(chats, "squat 3x5 90", "quiet 18:00 8:00")
    chats.until(utc("2026-03-09 07:00"))
    chats.says("ana", "remind me 17:30 mon thu", PLAN)
    out = summaries(chats.until(utc("2026-03-09 12:00")))

    assert walls(out) == ["Mon 09 Mar 08:00"]


def test_a_summary_sent_already_is_not_sent_again_when_the_hours_change(chats):
    chats.at = utc("2026-03-02 18:00")
    athlete(chats, "squat 3x5 90")
    out = chats.until(utc("2026-03-08 20:00"))
    chats.says("ana", "quiet 18:00 8:00")
    out += chats.until(utc("2026-03-09 12:00"))

    assert walls(summaries(out)) == ["Sun 08 Mar 19:00"]


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        pytest.param(["/settings summary off"], 0, id="off"),
        pytest.param(["tap: v1:stop-summary"], 0, id="stopped by a tap"),
        pytest.param(["tap: v1:stop-summary", "undo"], 1, id="stopped, undone"),
        pytest.param(["tap: v1:stop-summary", "/settings summary on"], 1, id="stopped, on again"),
        pytest.param(["/settings summary off", "undo"], 1, id="off, undone"),
        pytest.param(["pause"], 0, id="paused"),
    ],
)
def test_the_summary_follows_her_word(chats, words, expected):
    chats.at = utc("2026-03-02 18:00")
    athlete(chats, "squat 3x5 90")
    for word in words:
        chats.taps("ana", word.removeprefix("tap: ")) if word.startswith("tap: ") else chats.says("ana", word)
    out = chats.until(utc("2026-03-09 12:00"))

    assert len(summaries(out)) == expected


def test_a_week_with_neither_sets_nor_plan_is_not_summed_up(chats):
    chats.at = utc("2026-03-02 18:00")
    chats.says("ana", "/start", "London", "kg")

    assert chats.until(utc("2026-03-10 12:00")) == []


@pytest.mark.parametrize(
    ("down_until", "expected"),
    [
        pytest.param("2026-03-09 17:00", ["Mon 09 Mar 17:30"], id="up again before it is due"),
        pytest.param("2026-03-09 19:15", ["Mon 09 Mar 17:30"], id="two hours late at most"),
        pytest.param("2026-03-09 19:45", [], id="later it is no use"),
        pytest.param("2026-03-11 12:00", [], id="two days later least of all"),
    ],
)
def test_after_downtime_what_is_too_late_is_skipped_and_the_next_one_comes(chats, down_until, expected):
    chats.at = utc("2026-03-02 20:00")
    athlete(chats, "/settings summary off", "remind me 17:30 mon")
    first = reminders(chats.tick(utc(down_until)) + chats.until(utc("2026-03-12 12:00")))
    later = reminders(chats.until(utc("2026-03-17 12:00")))

    assert walls(first) == expected
    assert walls(later) == ["Mon 16 Mar 17:30"]


def chats_all(chats):
    """Everything that ever went out."""
    with chats.store() as store:
        return list(store.outbox.after(0))


def test_after_weeks_of_downtime_nothing_comes_in_a_heap(chats):
    chats.at = utc("2026-03-02 08:00")
    athlete(chats, "remind me 17:30 daily", "remind me at 19:00")

    assert chats.tick(utc("2026-04-15 12:00")) == []


class Stumbling(Memory):
    """What a process remembers, which cannot bear one person."""

    def __init__(self) -> None:
        super().__init__(secret=b"test")
        self.unbearable = 0

    def own_of(self, store: Any, athlete: Any) -> Any:
        if athlete == self.unbearable:
            raise OSError("the machine gave up")
        return super().own_of(store, athlete)


def two_reminded(database):
    memory = Stumbling()
    chats = Chats(database, memory=memory, at=utc("2026-03-02 08:00"))
    for who in ("ana", "ben"):
        chats.says(who, "/start", "London", "kg", PLAN, "/settings summary off", "remind me 17:30 mon")
    memory.unbearable = chats.person("ana").id
    return chats, memory


def test_one_persons_fault_keeps_nobody_elses_message_back_and_hers_comes_when_it_is_mended(database):
    chats, memory = two_reminded(database)
    out = chats.until(utc("2026-03-02 17:40"))
    memory.unbearable = 0
    later = chats.until(utc("2026-03-02 18:30"))

    assert [one.chat for one in out] == [chats.parties["ben"].chat]
    assert [one.chat for one in later] == [chats.parties["ana"].chat]


def test_what_failed_until_it_was_no_use_any_more_is_not_sent_late(database):
    chats, memory = two_reminded(database)
    chats.until(utc("2026-03-02 20:30"))
    memory.unbearable = 0
    later = chats.until(utc("2026-03-09 17:00"))
    next_week = chats.until(utc("2026-03-09 17:40"))

    assert later == []
    assert len(next_week) == 2


def test_two_workers_looking_at_once_send_each_thing_once(postgres_url):
    from storage.database import open_database

    database, other = open_database(postgres_url), open_database(postgres_url)
    chats = Chats(database, at=utc("2026-03-02 08:00"))
    for who in ("ana", "ben", "cem"):
        chats.says(who, "/start", "London", "kg", PLAN, "remind me 17:30 mon", "squat 90x5", "undo")
    workers = [chats, Chats(other, memory=Memory(secret=b"other"))]
    for at in ("2026-03-02 17:31", "2026-03-08 19:01", "2026-03-08 19:02", "2026-03-09 17:31"):
        start = Barrier(2)

        def look(worker: Chats, at: str = at, start: Barrier = start) -> None:
            start.wait()
            worker.product.tick(utc(at))

        threads = [Thread(target=look, args=(worker,)) for worker in workers]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    out = chats.fresh()
    database.close()
    other.close()

    assert sorted(one.chat for one in reminders(out)) == [1, 1, 2, 2, 3, 3]
    assert sorted(one.chat for one in summaries(out)) == [1, 2, 3]


def test_someone_who_blocked_the_bot_gets_nothing_and_her_reminders_go_on_when_she_returns(chats):
    chats.at = utc("2026-03-02 08:00")
    athlete(chats, "/settings summary off", "remind me 17:30 mon thu")
    chats.leaves("ana")
    away = chats.until(utc("2026-03-04 12:00"))
    chats.returns("ana")
    back = chats.until(utc("2026-03-06 12:00"))

    assert away == []
    assert walls(reminders(back)) == ["Thu 05 Mar 17:30"]


# ---- digests


def digests(deliveries, chats):
    return [one for one in to(deliveries, chats.parties["kit"].chat) if one.outgoing.text.startswith("Week ")]


def test_a_coach_gets_one_silent_digest_a_week_of_those_who_consented(chats):
    chats.at = utc("2026-03-02 08:00")
    coach(chats, "ana", "ben")
    code = code_of(chats.says("kit", "invite"))
    chats.says("cem", "/start", "London", f"/start {code}", "not now", "squat 100x5")
    chats.says("ana", PLAN, "squat 3x5 90")
    out = digests(chats.until(utc("2026-03-16 12:00")), chats)

    assert walls(out) == ["Sun 08 Mar 20:00", "Sun 15 Mar 20:00"]
    assert all(one.outgoing.silent for one in out)
    assert all("ana" in one.outgoing.text and "cem" not in one.outgoing.text for one in out)


@pytest.mark.parametrize(
    "words",
    [
        pytest.param([("kit", "/settings digest off")], id="the coach turned it off"),
        pytest.param([("ana", "/accept leave coach")], id="the client left"),
    ],
)
def test_no_digest_where_it_is_not_wanted_or_not_allowed(chats, words):
    chats.at = utc("2026-03-02 08:00")
    coach(chats, "ana")
    for who, word in [("ana", PLAN), ("ana", "squat 3x5 90"), *words]:
        chats.says(who, word)

    assert digests(chats.until(utc("2026-03-09 12:00")), chats) == []


def test_a_coach_who_never_told_a_clock_gets_the_digest_by_the_machines(database):
    chats = Chats(database, at=utc("2026-03-02 08:00"), zone="Asia/Tokyo")
    code = code_of(chats.says("kit", "/start", "invite"))
    chats.says("ana", f"/start {code}", "yes", "squat 90x5")
    out = digests(chats.until(utc("2026-03-09 12:00")), chats)

    assert walls(out, "Asia/Tokyo") == ["Sun 08 Mar 20:00"]


def test_private_notes_and_pain_never_reach_a_coach_and_shared_ones_do(chats):
    chats.at = utc("2026-03-02 08:00")
    coach(chats, "ana")
    chats.says("ana", PLAN, "squat 3x5 90 knee hurts", "note: my secret worry", "elbow hurts since yesterday")
    chats.says("ana", "feeling gloomy about work", "bodyweight 71.5", "share")
    for words in ("clients", "digest", "digest ana", "ana: +2 sets quads", "plan for ana", "week", "volume"):
        chats.says("kit", words)
    chats.says("kit", "cancel")
    chats.until(utc("2026-03-17 12:00"))
    seen = said(to(chats_all(chats), 1))

    assert "elbow hurts since yesterday" in seen
    for private in ("secret", "gloomy", "71.5", "knee", "Pain noted", "Held", "pain note: no heavier"):
        assert private not in seen

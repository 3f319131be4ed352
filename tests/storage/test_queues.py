"""Nothing that came in is lost or handled twice; nothing that goes out overtakes or is doubled."""

from __future__ import annotations

from datetime import timedelta

import pytest

from engine.values.ids import AthleteId
from storage.database import Database
from storage.envelopes import EDIT, REACT, InboundState, Lane, OutboxId, OutboxState, StoredOutgoing
from storage.store import Store
from tests.storage.stories import AT, answer, log, row, said

LEASE = timedelta(seconds=30)
LATER = AT + timedelta(minutes=5)


def claimed(store: Store, now: object = AT) -> list[str]:
    return [one.outgoing.text for one in store.outbox.claim("telegram", now, lease=LEASE)]  # type: ignore[arg-type]


class TestInbox:
    def test_an_event_that_comes_again_is_passed_over(self, database: Database) -> None:
        with database.transaction() as store:
            ids = store.inbox.put([said("row 3x12 55", "10"), said("bench", "11")], AT)
            store.inbox.set_offset("telegram", 12)
        with database.transaction() as store:
            again = store.inbox.put([said("bench", "11"), said("squat", "12"), said("squat", "12")], LATER)
            assert store.inbox.offset("telegram") == 12
            assert store.inbox.offset("terminal") is None
            texts = [event.text for event in store.inbox.pending()]

        assert len(set(ids)) == 2
        assert len(again) == 1
        assert texts == ["row 3x12 55", "bench", "squat"]

    def test_the_same_key_of_another_source_is_another_event(self, database: Database) -> None:
        with database.transaction() as store:
            other = said("row", "10")
            assert (
                len(store.inbox.put([said("row", "10"), type(other)("terminal", 1, "10", "message", 1, "row", AT)], AT))
                == 2
            )

    def test_a_large_batch_keeps_its_order(self, database: Database) -> None:
        events = [said(str(n), str(n)) for n in range(250)]
        with database.transaction() as store:
            ids = store.inbox.put(events, AT)
            texts = []
            for id in ids:
                event = store.inbox.get(id)
                assert event is not None
                texts.append(event.text)

        assert texts == [event.text for event in events]

    def test_events_of_a_chat_come_in_the_platforms_order(self, database: Database) -> None:
        with database.transaction() as store:
            store.inbox.put([said("second", "12", place=12), said("his", "13", chat=2, place=13)], AT)
            store.inbox.put([said("first", "11", place=11)], AT)
            assert store.inbox.waiting() == (("telegram", 1), ("telegram", 2))
            handled = []
            while event := store.inbox.take_next("telegram", 1):
                handled.append(event.text)
                store.inbox.done(event.id, AT)
            assert store.inbox.waiting() == (("telegram", 2),)

        assert handled == ["first", "second"]

    def test_an_event_is_still_there_when_handling_it_broke(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            store.inbox.put([said("row 3x12 55", "10")], AT)

        def handle(fail: bool) -> None:
            with database.transaction() as store:
                event = store.inbox.take_next("telegram", 1)
                assert event is not None
                log(store, ana, row())
                store.outbox.add(ana, answer("logged"), AT, inbound=event.id)
                store.inbox.done(event.id, AT)
                if fail:
                    raise RuntimeError("the power went out")

        with pytest.raises(RuntimeError):
            handle(fail=True)
        handle(fail=False)
        with database.transaction() as store:
            assert store.inbox.take_next("telegram", 1) is None
            assert store.sets.count(ana) == 1
            event = store.inbox.find("telegram", "10")
            assert event is not None
            assert event.state is InboundState.DONE
            assert [reply.outgoing.text for reply in store.inbox.replies(event.id)] == ["logged"]

    def test_an_event_that_cannot_be_handled_says_why(self, database: Database) -> None:
        with database.transaction() as store:
            (id,) = store.inbox.put([said("row", "10")], AT)
            store.inbox.failed(id, "KeyError: 'row'", AT)
            event = store.inbox.get(id)
            assert event is not None
            assert (event.state, event.error) == (InboundState.FAILED, "KeyError: 'row'")
            assert store.inbox.pending() == ()

    def test_a_document_is_attached_when_it_was_fetched(self, database: Database) -> None:
        with database.transaction() as store:
            event = said("", "10", document_name="plan.txt", document_reference="file-7")
            (id,) = store.inbox.put([event], AT)
            store.inbox.attach(id, b"day mon", "")
            stored = store.inbox.take_next("telegram", 1)
            assert stored is not None
            assert (stored.document, stored.document_reference) == (b"day mon", "file-7")
            assert store.inbox.pending()[0].document is None  # a list of many leaves the contents where they are

    def test_a_message_and_its_edits_without_taps(self, database: Database) -> None:
        with database.transaction() as store:
            tap = said("undo", "12", message=7)
            store.inbox.put([said("row", "10", message=7), said("row 3x12", "11", message=7)], AT)
            store.inbox.put([type(tap)("telegram", 1, "12", "tap", 7, "undo", AT), said("other", "13", message=8)], AT)
            assert [event.text for event in store.inbox.of_message("telegram", 1, 7)] == ["row", "row 3x12"]


class TestOutbox:
    def test_a_chat_gets_its_messages_one_after_the_other(
        self, database: Database, ana: AthleteId, ben: AthleteId
    ) -> None:
        with database.transaction() as store:
            first = store.outbox.add(ana, answer("1"), AT)
            store.outbox.add(ana, answer("2"), AT)
            store.outbox.add(ben, answer("his"), AT)
            assert claimed(store) == ["1", "his"]
            assert claimed(store) == []
            store.outbox.mark_sent(first, 501, AT)
            assert claimed(store) == ["2"]
            sent = store.outbox.get(first)
            assert sent is not None
            assert (sent.state, sent.platform_message, sent.sent_at, sent.attempts) == (OutboxState.SENT, 501, AT, 1)

    def test_replies_go_before_what_nobody_asked_for(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            store.outbox.add(ana, answer("broadcast"), AT, lane=Lane.BROADCAST)
            store.outbox.add(ben, answer("reminder"), AT, lane=Lane.UNPROMPTED)
            store.outbox.add(ben, answer("reply"), AT)
            assert claimed(store) == ["reply", "broadcast"]

    def test_nothing_overtakes_a_message_that_must_be_sent_again(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            first = store.outbox.add(ana, answer("1"), AT)
            store.outbox.add(ana, answer("2"), AT)
            assert claimed(store) == ["1"]
            store.outbox.retry_at(first, LATER, "slow down")
            assert claimed(store) == []
            assert store.outbox.next_at("telegram", AT) == AT
            assert claimed(store, LATER) == ["1"]

    def test_what_is_written_for_later_holds_nobody_up(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            store.outbox.add(ana, answer("rest is over"), AT, lane=Lane.UNPROMPTED, not_before=LATER)
            assert store.outbox.next_at("telegram", AT) == LATER
            store.outbox.add(ana, answer("summary"), AT, lane=Lane.UNPROMPTED)
            assert claimed(store) == ["summary"]

    def test_an_edit_waits_for_the_message_it_changes(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            line = store.outbox.add(ana, answer("reminder"), AT, lane=Lane.UNPROMPTED)
            store.outbox.add(ana, StoredOutgoing(EDIT, "reminder, done", edits=line), AT)
            assert claimed(store) == ["reminder"]
            assert claimed(store) == []
            store.outbox.mark_sent(line, 501, AT)
            (edit,) = store.outbox.claim("telegram", AT, lease=LEASE)
            assert (edit.outgoing.text, edit.edits_platform_message) == ("reminder, done", 501)

    @pytest.mark.parametrize(
        ("kind", "then"),
        [
            pytest.param("send", OutboxState.UNKNOWN, id="a message may have arrived: it is not sent twice"),
            pytest.param(EDIT, OutboxState.SENDING, id="an edit does no harm twice"),
            pytest.param(REACT, OutboxState.SENDING, id="nor does a reaction"),
        ],
    )
    def test_a_sender_dies_while_sending(
        self, database: Database, ana: AthleteId, kind: str, then: OutboxState
    ) -> None:
        with database.transaction() as store:
            id = store.outbox.add(ana, StoredOutgoing(kind, "1"), AT)
            claimed(store)
        with database.transaction() as store:
            store.outbox.claim("telegram", AT + LEASE, lease=LEASE)
            found = store.outbox.get(id)
            assert found is not None
            assert found.state is then

    def test_unknown_and_refused_messages_let_the_next_one_through(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            ids = [store.outbox.add(ana, answer(str(n)), AT) for n in range(3)]
            claimed(store)
            store.outbox.mark_unknown(ids[0], "timed out")
            assert claimed(store) == ["1"]
            store.outbox.mark_failed(ids[1], "chat not found")
            assert claimed(store) == ["2"]
            found = store.outbox.get(ids[1])
            assert found is not None
            assert (found.state, found.error) == (OutboxState.FAILED, "chat not found")

    def test_a_pause_holds_every_chat(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            store.outbox.add(ana, answer("1"), AT)
            store.outbox.hold("telegram", LATER)
            assert claimed(store) == []
            assert store.outbox.next_at("telegram", AT) == LATER
            assert claimed(store, LATER) == ["1"]
            assert store.outbox.next_at("telegram", LATER) is None

    def test_a_key_that_was_used_is_not_used_again(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            first = store.outbox.add(ana, answer("Sunday"), AT, dedupe_key="summary 2026-03-01")
            again = store.outbox.add(ana, answer("Sunday!"), AT, dedupe_key="summary 2026-03-01")
            his = store.outbox.add(ben, answer("Sunday"), AT, dedupe_key="summary 2026-03-01")
            assert first == again != his
            assert [one.outgoing.text for one in store.outbox.latest(ana, 5)] == ["Sunday"]

    def test_messages_are_found_again(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            start = store.outbox.add(ana, answer("hello"), AT)
            second = store.outbox.add(ana, answer("row"), AT)
            store.outbox.add(ana, StoredOutgoing(REACT, "👍", message=7), AT)
            store.outbox.add(ben, answer("his"), AT)
            store.outbox.mark_sent(second, 501, AT)

            found = store.outbox.of_platform("telegram", 1, 501)
            assert found is not None
            assert found.id == second
            assert store.outbox.of_platform("telegram", 2, 501) is None
            assert [one.outgoing.text for one in store.outbox.latest(ana, 2)] == ["row", "hello"]
            assert [one.outgoing.text for one in store.outbox.after(start)] == ["row", "👍", "his"]
            assert [one.outgoing.text for one in store.outbox.after(start, ana)] == ["row", "👍"]
            assert store.outbox.get(OutboxId(999)) is None

    def test_a_blocked_bot_says_nothing_and_forgets_nothing(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            log(store, ana, row())
            waiting = store.outbox.add(ana, answer("1"), AT)
            store.due.plan(ana, "reminder", AT.date(), AT)
            store.people.gone(ana)
            dropped = store.outbox.add(ana, answer("2"), AT)

            assert claimed(store) == []
            assert store.due.planned(ana) == ()
            for id in (waiting, dropped):
                found = store.outbox.get(id)
                assert found is not None
                assert found.state is OutboxState.DROPPED
            store.people.back(ana)
            store.outbox.add(ana, answer("3"), AT)
            assert claimed(store) == ["3"]
            assert store.sets.count(ana) == 1

    def test_a_broadcast_reaches_everyone_who_can_be_reached(
        self, database: Database, ana: AthleteId, ben: AthleteId
    ) -> None:
        with database.transaction() as store:
            cleo = store.people.create("telegram", 3, "Cleo", AT)
            store.people.gone(cleo.id)
            broadcast = store.broadcasts.start(answer("new: progress pictures"), AT)
            store.outbox.add(ben, answer("reply"), AT)
            assert claimed(store) == ["reply", "new: progress pictures"]
            sent = store.outbox.latest(ana)[0]
            store.outbox.mark_sent(sent.id, 501, AT)
            progress = store.broadcasts.progress(broadcast)
            assert (progress.waiting, progress.sent, progress.failed) == (1, 1, 0)

"""People, notes, plans, choices, questions, lift lines, coaches: what is put in is what is found."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load, Unit
from storage.coaching import INVITATION_LASTS
from storage.database import Database
from storage.errors import CodeTaken, NoSuchPerson
from storage.records import ChangeKind, ChoiceKind, CoachLink, InvitationTrouble, Permission, QuestionState, Role
from tests.storage.stories import AT, BENCH, MONDAY, ROW, answer, said

NEXT_MONDAY = MONDAY + timedelta(days=7)
LATER = AT + timedelta(minutes=10)


class TestPeople:
    def test_a_chat_is_one_person_at_each_source(self, database: Database) -> None:
        far = 2**52 + 1  # ids of chats have up to 52 significant bits
        with database.transaction() as store:
            assert store.people.find("telegram", far) is None
            ana = store.people.create("telegram", far, "Ana", AT)
            assert store.people.create("telegram", far, "Anna", AT) == ana == store.people.find("telegram", far)
            assert store.people.create("terminal", far, "Ana", AT).id != ana.id
            assert (ana.name, ana.roles, ana.reachable) == ("Ana", {Role.ATHLETE}, True)

    def test_names_roles_and_pages(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            store.people.rename(ben, "Benno")
            benno = store.people.set_roles(ben, [Role.COACH, Role.ATHLETE])
            assert (benno.name, benno.roles) == ("Benno", {Role.COACH, Role.ATHLETE})
            assert [person.id for person in store.people.everyone(limit=1)] == [ana]
            assert store.people.everyone(after=ana) == (benno,)

    def test_nobody_has_this_id(self, database: Database) -> None:
        nobody = AthleteId(99)
        for ask in (
            lambda store: store.people.get(nobody),
            lambda store: store.changes.begin(nobody, ChangeKind.SETS, "sets", AT),
            lambda store: store.outbox.add(nobody, answer("hello"), AT),
            lambda store: store.belongings.as_json(nobody),
            lambda store: store.belongings.erase(nobody),
        ):
            with pytest.raises(NoSuchPerson), database.transaction() as store:
                ask(store)

    def test_what_came_before_she_was_somebody_becomes_hers(self, database: Database) -> None:
        with database.transaction() as store:
            store.inbox.put([said("/start", "1", chat=5)], AT)
            ana = store.people.create("telegram", 5, "Ana", AT)
            store.belongings.erase(ana.id)
            assert store.inbox.find("telegram", "1") is None


class TestDiary:
    def test_notes(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            change = store.changes.begin(ana, ChangeKind.NOTE, "notes", AT)
            plain = store.notes.add(change, "felt light", on=MONDAY, at=AT, message=7)
            pain = store.notes.add(change, "left elbow", on=NEXT_MONDAY, at=AT, exercise=ROW, pain=True)

            assert store.notes.between(ana, MONDAY, NEXT_MONDAY) == (plain, pain)
            assert store.notes.between(ana, MONDAY, NEXT_MONDAY, pain=True) == (pain,)
            assert store.notes.between(ana, MONDAY, NEXT_MONDAY, pain=False) == (plain,)
            assert store.notes.of_message(ana, 7) == (plain,)
            shared = store.notes.share(change, pain)
            assert replace(shared, id=pain.id, shared=False) == pain
            assert store.notes.latest(ana) == (shared, plain)
            assert store.notes.remove(change, [plain.id]) == 1
            assert store.notes.remove(change, []) == 0
            assert store.notes.latest(ana) == (shared,)

    def test_body_weights(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            change = store.changes.begin(ana, ChangeKind.BODY_WEIGHT, "body weight", AT)
            store.body_weights.add(change, Load(Decimal(180), Unit.LB), on=NEXT_MONDAY, at=AT)
            first = store.body_weights.add(change, Load(Decimal("81.4"), Unit.KG), on=MONDAY, at=AT)

            assert store.body_weights.at(ana, MONDAY + timedelta(days=3)) == first
            assert store.body_weights.at(ana, MONDAY - timedelta(days=1)) is None
            assert [one.load.unit for one in store.body_weights.between(ana, MONDAY, NEXT_MONDAY)] == [Unit.KG, Unit.LB]


class TestPlanning:
    def test_the_plan_in_force(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            change = store.changes.begin(ana, ChangeKind.PLAN, "plans", AT)
            first = store.plans.assign(change, "first", "day mon", starts_on=MONDAY, at=AT)
            second = store.plans.assign(change, "second", "day tue", starts_on=NEXT_MONDAY, at=AT, coach=ben)

            assert store.plans.at(ana, MONDAY - timedelta(days=1)) is None
            assert store.plans.at(ana, NEXT_MONDAY - timedelta(days=1)) == first
            assert store.plans.at(ana, NEXT_MONDAY) == store.plans.newest(ana) == second
            earlier = store.plans.assign(change, "third", "day wed", starts_on=MONDAY, at=AT)
            assert store.plans.at(ana, NEXT_MONDAY) == earlier  # the one assigned last counts
            store.plans.end(change, on=NEXT_MONDAY, at=AT)
            assert store.plans.at(ana, NEXT_MONDAY) is store.plans.newest(ana) is None
            assert store.plans.at(ana, MONDAY) == earlier
            assert [plan.name for plan in store.plans.all(ana)] == ["first", "second", "third", ""]
            assert store.plans.get(ana, first.id) == first
            assert store.plans.get(ben, first.id) is None

    def test_choices(self, database: Database, ana: AthleteId) -> None:
        with database.transaction() as store:
            change = store.changes.begin(ana, ChangeKind.SWAP, "choices", AT)
            store.choices.add(change, ChoiceKind.SWAP, on=MONDAY, at=AT, exercise=BENCH, to=ROW)
            skipped = store.choices.add(change, ChoiceKind.SKIP, on=MONDAY, at=AT, exercise=BENCH)
            whole_day = store.choices.add(change, ChoiceKind.MOVE, on=MONDAY, at=AT, to_day=NEXT_MONDAY)

            assert store.choices.between(ana, MONDAY, MONDAY) == (skipped, whole_day)
            assert store.choices.between(ana, NEXT_MONDAY, NEXT_MONDAY) == (whole_day,)
            store.choices.add(change, ChoiceKind.SKIP, on=MONDAY, at=AT)
            assert [one.kind for one in store.choices.between(ana, MONDAY, MONDAY)] == [ChoiceKind.SKIP] * 2
            assert store.choices.remove(change, [skipped.id]) == 1
            assert store.choices.remove(change, []) == 0


class TestDialogue:
    def test_one_question_is_open_at_a_time(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            first = store.questions.ask(ana, {"readings": [1]}, at=AT, expires_at=LATER, message=7)
            assert store.questions.open(ana, AT) == first
            assert store.questions.open(ana, LATER) is None
            second = store.questions.ask(ana, {"readings": [2]}, at=AT, expires_at=LATER, message=8)
            assert store.questions.open(ana, AT) == second
            assert store.questions.get(ana, first.id) == replace(first, state=QuestionState.DROPPED)
            assert store.questions.get(ben, first.id) is None
            more = store.questions.update(second, {"readings": [2, 3]})
            assert store.questions.open(ana, AT) == more
            answered = store.questions.close(more, QuestionState.ANSWERED)
            assert store.questions.open(ana, AT) is None
            assert store.questions.about_message(ana, 8) == answered
            assert store.questions.about_message(ana, 9) is None

    def test_a_question_waits_beside_the_open_one(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            waits = store.questions.keep_waiting(ana, {"line": 4}, at=AT, expires_at=LATER)
            asked = store.questions.ask(ana, {"readings": [1]}, at=AT, expires_at=LATER)
            assert store.questions.open(ana, AT) == asked
            assert store.questions.waiting(ana, AT) == (waits,)
            assert store.questions.waiting(ben, AT) == ()
            assert store.questions.lapsed(ana, AT) == ()
            assert store.questions.waiting(ana, LATER) == ()
            assert store.questions.lapsed(ana, LATER) == (waits,)
            store.questions.close(waits, QuestionState.ANSWERED)
            assert store.questions.waiting(ana, AT) == ()
            assert store.questions.lapsed(ana, LATER) == ()

    def test_lift_lines(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            line = store.outbox.add(ana, answer("barbell row: 12"), AT)
            store.lift_lines.put(ana, MONDAY, ROW, line)
            store.outbox.add(ana, replace(answer("barbell row: 12 12"), kind="edit", edits=line), AT)
            store.outbox.add(ben, answer("his"), AT)
            found = store.lift_lines.get(ana, MONDAY, ROW)
            assert found is not None
            assert (found.outbox, found.buried) == (line, 0)
            newer = store.outbox.add(ana, answer("bench press: 5"), AT)
            store.lift_lines.put(ana, MONDAY, BENCH, newer)
            assert [(one.exercise, one.buried) for one in store.lift_lines.of_day(ana, MONDAY)] == [
                (ROW, 1),
                (BENCH, 0),
            ]
            store.lift_lines.put(ana, MONDAY, ROW, newer)
            store.lift_lines.drop(ana, MONDAY, BENCH)
            assert [one.outbox for one in store.lift_lines.of_day(ana, MONDAY)] == [newer]
            assert store.lift_lines.get(ana, date(2026, 3, 3), ROW) is None
            assert store.lift_lines.get(ben, MONDAY, ROW) is None


class TestHabits:
    def test_what_is_remembered(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            change = store.changes.begin(ana, ChangeKind.TEACH, "habits", AT)
            store.settings.put(change, "unit", "kg")
            store.settings.put(change, "unit", "lb")
            store.settings.put(change, "quiet", None)
            assert store.settings.all(ana) == {"unit": "lb", "quiet": None}
            assert store.settings.get(ben, "unit", "kg") == "kg"
            assert store.settings.clear(change, "unit")
            assert not store.settings.clear(change, "unit")
            store.taught.shorthand(change, "bp", BENCH)
            assert store.taught.shorthands(ana) == {"bp": BENCH}
            assert store.taught.forget(change, "bp")
            assert not store.taught.forget(change, "bp")
            assert not store.taught.drop_exercise(change, ExerciseName("band curl"))
            store.taught.settle(change, "which exercise", "press", "overhead press")
            store.taught.settle(change, "which exercise", "press", "bench press")
            assert [one.answer for one in store.taught.settled(ana)] == ["bench press"]
            assert store.taught.unsettle(change, "which exercise", "press")
            assert not store.taught.unsettle(change, "which exercise", "press")


class TestCoaching:
    def test_an_athlete_is_linked_once_and_withdraws(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            invitation = store.coaching.invite(ben, "oak-37", AT)
            assert store.coaching.invitation("oak-37", AT) == invitation
            link = store.coaching.accept("oak-37", ana, [Permission.SEE_LOG, Permission.SEE_NOTES], LATER)
            assert link == CoachLink(ben, ana, LATER, frozenset({Permission.SEE_LOG, Permission.SEE_NOTES}))
            assert store.coaching.clients(ben) == store.coaching.coaches(ana) == (link,)
            assert store.coaching.clients(ana) == store.coaching.coaches(ben) == ()
            narrower = store.coaching.permit(ben, ana, [])
            assert narrower == store.coaching.link(ben, ana) == replace(link, permissions=frozenset())
            assert store.coaching.withdraw(ben, ana)
            assert not store.coaching.withdraw(ben, ana)
            assert store.coaching.permit(ben, ana, [Permission.SEE_LOG]) is None

    def test_codes_that_link_nobody(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        def accept(code: str, who: AthleteId) -> object:
            return store.coaching.accept(code, who, [], AT)

        with database.transaction() as store:
            store.coaching.invite(ben, "old", AT - INVITATION_LASTS)
            store.coaching.invite(ben, "oak-37", AT)
            assert accept("never", ana) is InvitationTrouble.UNKNOWN
            assert accept("old", ana) is InvitationTrouble.EXPIRED
            assert accept("oak-37", ben) is InvitationTrouble.OWN
            assert isinstance(accept("oak-37", ana), CoachLink)
            assert accept("oak-37", ana) is InvitationTrouble.USED
            with pytest.raises(CodeTaken):
                store.coaching.invite(ben, "oak-37", AT)

    def test_linking_again_renews_the_permissions(self, database: Database, ana: AthleteId, ben: AthleteId) -> None:
        with database.transaction() as store:
            for code, permissions in (("one", [Permission.SEE_LOG]), ("two", [Permission.CHANGE_PLAN])):
                store.coaching.invite(ben, code, AT)
                store.coaching.accept(code, ana, permissions, AT)
            assert [link.permissions for link in store.coaching.clients(ben)] == [{Permission.CHANGE_PLAN}]

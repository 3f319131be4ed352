"""Who coaches whom, by invitation and with the athlete's consent."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime, timedelta

from engine.values.ids import AthleteId
from storage.records import CoachLink, Invitation, InvitationTrouble, Permission
from storage.work import Work

INVITATION_LASTS = timedelta(days=7)


class Coaching:
    def __init__(self, work: Work) -> None:
        self._work = work

    def invite(self, coach: AthleteId, code: str, at: datetime) -> Invitation:
        """An invitation that links one athlete within seven days.

        Errors: CodeTaken when the code is already in use.
        """
        raise NotImplementedError

    def invitation(self, code: str, at: datetime) -> Invitation | InvitationTrouble:
        """An invitation that can still be accepted, without accepting it (to ask for consent first)."""
        raise NotImplementedError

    def accept(
        self, code: str, athlete: AthleteId, permissions: Collection[Permission], at: datetime
    ) -> CoachLink | InvitationTrouble:
        """The link that the athlete consented to; the code is used up. Linking again renews the permissions."""
        raise NotImplementedError

    def permit(self, coach: AthleteId, athlete: AthleteId, permissions: Collection[Permission]) -> CoachLink | None:
        """The link with exactly these permissions; None when there is none."""
        raise NotImplementedError

    def withdraw(self, coach: AthleteId, athlete: AthleteId) -> bool:
        """Whether there was a link; from now on the coach sees nothing of this athlete."""
        raise NotImplementedError

    def link(self, coach: AthleteId, athlete: AthleteId) -> CoachLink | None:
        """The link between the two."""
        raise NotImplementedError

    def clients(self, coach: AthleteId) -> tuple[CoachLink, ...]:
        """All athletes of a coach, by the athlete's id."""
        raise NotImplementedError

    def coaches(self, athlete: AthleteId) -> tuple[CoachLink, ...]:
        """All coaches of an athlete, by the coach's id."""
        raise NotImplementedError

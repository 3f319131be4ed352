"""Who coaches whom, by invitation and with the athlete's consent."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Row, and_, delete, insert, select, update

from engine.values.ids import AthleteId
from storage.errors import CodeTaken
from storage.records import CoachLink, Invitation, InvitationTrouble, Permission
from storage.tables.coaching import COACH_LINKS, INVITATIONS
from storage.work import Work

INVITATION_LASTS = timedelta(days=7)


class Coaching:
    def __init__(self, work: Work) -> None:
        self._work = work

    def invite(self, coach: AthleteId, code: str, at: datetime) -> Invitation:
        """An invitation that links one athlete within seven days.

        Errors: CodeTaken when the code was given out before.
        """
        if self._code(code) is not None:
            raise CodeTaken(code)
        expires_at = at + INVITATION_LASTS
        self._work.connection.execute(
            insert(INVITATIONS), {"athlete_id": coach, "code": code, "expires_at": expires_at}
        )
        return Invitation(code, coach, expires_at)

    def invitation(self, code: str, at: datetime) -> Invitation | InvitationTrouble:
        """An invitation that can still be accepted, without accepting it (to ask for consent first)."""
        row = self._code(code)
        if row is None:
            return InvitationTrouble.UNKNOWN
        if row.used_at is not None:
            return InvitationTrouble.USED
        if row.expires_at <= at:
            return InvitationTrouble.EXPIRED
        return Invitation(row.code, AthleteId(row.athlete_id), row.expires_at)

    def accept(
        self, code: str, athlete: AthleteId, permissions: Collection[Permission], at: datetime
    ) -> CoachLink | InvitationTrouble:
        """The link that the athlete consented to; the code is used up. Linking again renews the permissions."""
        invitation = self.invitation(code, at)
        if isinstance(invitation, InvitationTrouble):
            return invitation
        if invitation.coach == athlete:
            return InvitationTrouble.OWN
        used = self._work.connection.execute(
            update(INVITATIONS).where(INVITATIONS.c.code == code, INVITATIONS.c.used_at.is_(None)).values(used_at=at)
        )
        if used.rowcount == 0:  # another worker was quicker
            return InvitationTrouble.USED
        self.withdraw(invitation.coach, athlete)
        link = CoachLink(invitation.coach, athlete, at, frozenset(permissions))
        self._work.connection.execute(
            insert(COACH_LINKS),
            {
                "athlete_id": athlete,
                "coach_id": link.coach,
                "consented_at": at,
                "permissions": _names(link.permissions),
            },
        )
        return link

    def permit(self, coach: AthleteId, athlete: AthleteId, permissions: Collection[Permission]) -> CoachLink | None:
        """The link with exactly these permissions; None when there is none."""
        self._work.connection.execute(
            update(COACH_LINKS).where(_between(coach, athlete)).values(permissions=_names(permissions))
        )
        return self.link(coach, athlete)

    def withdraw(self, coach: AthleteId, athlete: AthleteId) -> bool:
        """Whether there was a link; from now on the coach sees nothing of this athlete."""
        return self._work.connection.execute(delete(COACH_LINKS).where(_between(coach, athlete))).rowcount > 0

    def link(self, coach: AthleteId, athlete: AthleteId) -> CoachLink | None:
        """The link between the two."""
        return next(iter(self._links(_between(coach, athlete))), None)

    def clients(self, coach: AthleteId) -> tuple[CoachLink, ...]:
        """All athletes of a coach, by the athlete's id."""
        return self._links(COACH_LINKS.c.coach_id == coach)

    def coaches(self, athlete: AthleteId) -> tuple[CoachLink, ...]:
        """All coaches of an athlete, by the coach's id."""
        return self._links(COACH_LINKS.c.athlete_id == athlete)

    def _code(self, code: str) -> Row[Any] | None:
        return self._work.connection.execute(select(INVITATIONS).where(INVITATIONS.c.code == code)).one_or_none()

    def _links(self, which: ColumnElement[bool]) -> tuple[CoachLink, ...]:
        query = select(COACH_LINKS).where(which).order_by(COACH_LINKS.c.athlete_id, COACH_LINKS.c.coach_id)
        return tuple(_link(row) for row in self._work.connection.execute(query))


def _between(coach: AthleteId, athlete: AthleteId) -> ColumnElement[bool]:
    return and_(COACH_LINKS.c.athlete_id == athlete, COACH_LINKS.c.coach_id == coach)


def _names(permissions: Collection[Permission]) -> str:
    return ",".join(sorted(permission.value for permission in set(permissions)))


def _link(row: Row[Any]) -> CoachLink:
    permissions = frozenset(Permission(name) for name in row.permissions.split(",") if name)
    return CoachLink(AthleteId(row.coach_id), AthleteId(row.athlete_id), row.consented_at, permissions)

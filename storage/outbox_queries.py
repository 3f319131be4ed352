"""Which rows of the outbox a sender may take."""

from __future__ import annotations

from sqlalchemy import BindParameter, Integer, and_, bindparam, exists, insert, or_, select, update
from sqlmodel import UTCDateTime

from storage.envelopes import EDIT, REACT, SEND, OutboxState
from storage.tables.queues import OUTBOX

__all__ = ["ADD", "CLAIMABLE", "GIVE_UP_EXPIRED", "LANE_OF_WAITING", "ONE", "REPEAT_EXPIRED", "SEND"]

_NEW, _SENDING = OutboxState.NEW.value, OutboxState.SENDING.value
_NOW = bindparam("now", type_=UTCDateTime())
_SOURCE: BindParameter[str] = bindparam("of_source")  # an UPDATE keeps its columns' own names for itself

ADD = insert(OUTBOX).returning(OUTBOX.c.id)

ONE = OUTBOX.alias("one")
_OTHER = OUTBOX.alias("other")

_put_off = and_(_OTHER.c.attempts == 0, _OTHER.c.not_before.is_not(None), _OTHER.c.not_before > _NOW)
"""Written for later from the start: it holds nobody up. One that is to be sent again keeps its place in the order."""

_goes_before = or_(
    _OTHER.c.state == _SENDING,
    _OTHER.c.id == ONE.c.edits,
    and_(
        or_(_OTHER.c.lane < ONE.c.lane, and_(_OTHER.c.lane == ONE.c.lane, _OTHER.c.id < ONE.c.id)),
        ~_put_off,
    ),
)

CLAIMABLE = (
    select(ONE.c.id)
    .where(
        ONE.c.state == _NEW,
        ONE.c.source == _SOURCE,
        or_(ONE.c.not_before.is_(None), ONE.c.not_before <= _NOW),
        ~exists().where(
            _OTHER.c.source == ONE.c.source,
            _OTHER.c.chat == ONE.c.chat,
            _OTHER.c.state.in_((_NEW, _SENDING)),
            _OTHER.c.id != ONE.c.id,
            _goes_before,
        ),
    )
    .order_by(ONE.c.lane, ONE.c.id)
    .limit(bindparam("most", type_=Integer))
)

_expired = and_(OUTBOX.c.state == _SENDING, OUTBOX.c.source == _SOURCE, OUTBOX.c.claimed_until <= _NOW)
GIVE_UP_EXPIRED = (
    update(OUTBOX)
    .where(_expired, OUTBOX.c.kind == SEND)
    .values(state=OutboxState.UNKNOWN.value, claimed_until=None, error="the sender stopped while sending")
)
REPEAT_EXPIRED = update(OUTBOX).where(_expired, OUTBOX.c.kind.in_((EDIT, REACT))).values(state=_NEW, claimed_until=None)

LANE_OF_WAITING = select(OUTBOX.c.lane).where(OUTBOX.c.id == bindparam("message"), OUTBOX.c.state.in_((_NEW, _SENDING)))

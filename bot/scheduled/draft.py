"""A plan that waited a day for its last lines lapses, and its writer is told."""

from __future__ import annotations

from datetime import timedelta

from bot.due_kind import Kind, Moment
from bot.replies.mending import lapsed
from storage.records import Due, QuestionState

LAPSE = "draft"
MEND = "mend plan"
OPEN_FOR = timedelta(days=1)
LATE = timedelta(hours=12)


def _run(moment: Moment, due: Due) -> bool:
    over = [one for one in moment.store.questions.lapsed(moment.person.id, moment.at) if one.payload["kind"] == MEND]
    for draft in over:
        moment.store.questions.close(draft, QuestionState.ANSWERED)
    if over:
        moment.send(lapsed(str(over[0].payload.get("name", "")), over[0].payload["line"]), silent=True)
    return bool(over)


KIND = Kind(LAPSE, _run, None, LATE)

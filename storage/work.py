"""One open transaction: the session, the dialect, and ids that count within each athlete."""

from __future__ import annotations

from sqlmodel import Session


class Work:
    def __init__(self, session: Session) -> None:
        self.session = session

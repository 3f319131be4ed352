"""What can go wrong that is no one's slip of the thumb; each error is named for it and holds the values involved."""

from __future__ import annotations


class NoSuchPerson(LookupError):
    def __init__(self, athlete: int) -> None:
        super().__init__(f"no person has the id {athlete}: look her up by her chat first")
        self.athlete = athlete


class PersonExists(ValueError):
    def __init__(self, source: str, chat: int) -> None:
        super().__init__(f"chat {chat} of {source} is known here already: erase that person first, then bring her back")
        self.source, self.chat = source, chat


class CodeTaken(ValueError):
    def __init__(self, code: str) -> None:
        super().__init__(f"invitation code {code} is in use: draw another")
        self.code = code


class NotOurs(ValueError):
    def __init__(self, why: str) -> None:
        super().__init__(f"this is no export of one person's records ({why}): give the JSON file that `export` made")
        self.why = why


class Contended(RuntimeError):
    """Another worker was in the way. Nothing was kept: run the whole transaction again."""


class DatabaseTooNew(RuntimeError):
    def __init__(self, revision: str) -> None:
        super().__init__(
            f"the database is at revision {revision}, which this version does not know: start the newer version of the"
            " program, or restore the copy made before it ran"
        )
        self.revision = revision

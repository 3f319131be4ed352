"""What goes wrong in the catalogue's own data files: a contributor's slip, found when the program starts."""

from __future__ import annotations


class MalformedData(ValueError):
    """A line of a data file that cannot be used.

    The message names the file and the line, what was read, what was expected and what to write instead.
    """

    def __init__(self, file: str, line: int, read: str, expected: str, try_instead: str) -> None:
        super().__init__(f"{file}, line {line}: read “{read}”, expected {expected}. Try: {try_instead}")
        self.file, self.line, self.read = file, line, read
        self.expected, self.try_instead = expected, try_instead

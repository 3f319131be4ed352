"""What a process needs to know to start, from the environment."""

from __future__ import annotations

import os
from pathlib import Path

FILE = "chalkwire.db"


def user_data_directory() -> Path:
    """Where this user's data belong: XDG_DATA_HOME, or the customary place on macOS, else ~/.local/share."""
    told = os.environ.get("XDG_DATA_HOME")
    if told:
        return Path(told) / "chalkwire"
    mac = Path.home() / "Library" / "Application Support"
    return (mac if mac.is_dir() else Path.home() / ".local" / "share") / "chalkwire"


def database_url(told: str | None) -> str:
    """The database to use: the one told, or CHALKWIRE_DB, or a SQLite file in the user's data directory."""
    url = told or os.environ.get("CHALKWIRE_DB")
    if url:
        return url if "://" in url else f"sqlite:///{Path(url).expanduser().resolve()}"
    directory = user_data_directory()
    directory.mkdir(parents=True, exist_ok=True, mode=0o700)
    return f"sqlite:///{directory / FILE}"

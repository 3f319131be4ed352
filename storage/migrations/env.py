"""How migrations run: in the connection that the program hands over, or on `-x url=...` from the command line."""

from typing import Any, Literal

from alembic import context
from alembic.autogenerate.api import AutogenContext
from sqlalchemy import Connection
from sqlmodel import AutoString, UTCDateTime

from storage.connections import connect
from storage.tables import METADATA


def rendered(kind: str, thing: Any, autogenerate: AutogenContext) -> str | Literal[False]:
    """How a new migration writes a type; False: as the tool does by itself."""
    if kind == "type" and isinstance(thing, AutoString):
        return "sa.String()"
    if kind == "type" and isinstance(thing, UTCDateTime):
        autogenerate.imports.add("from sqlmodel import UTCDateTime")
        return "UTCDateTime()"
    return False


def run(connection: Connection) -> None:
    context.configure(
        connection=connection,
        target_metadata=METADATA,
        # SQLite cannot alter most things in place: rebuild the table.
        render_as_batch=connection.dialect.name == "sqlite",
        compare_type=True,
        render_item=rendered,
    )
    with context.begin_transaction():
        context.run_migrations()


handed_over = context.config.attributes.get("connection")
if handed_over is not None:
    run(handed_over)
else:
    with connect(context.get_x_argument(as_dictionary=True)["url"], foreign_keys=False).begin() as opened:
        run(opened)

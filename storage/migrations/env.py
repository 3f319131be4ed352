"""How migrations run: in the connection that the program hands over, or on `-x url=...` from the command line."""

from alembic import context
from sqlalchemy import Connection

from storage.connections import connect
from storage.tables import METADATA


def run(connection: Connection) -> None:
    context.configure(
        connection=connection,
        target_metadata=METADATA,
        # SQLite cannot alter most things in place: rebuild the table.
        render_as_batch=connection.dialect.name == "sqlite",
        compare_type=True,
    )
    with context.begin_transaction():
        context.run_migrations()


handed_over = context.config.attributes.get("connection")
if handed_over is not None:
    run(handed_over)
else:
    with connect(context.get_x_argument(as_dictionary=True)["url"], foreign_keys=False).begin() as opened:
        run(opened)

"""${message}

A migration must work with the code that is still running: add first, fill, switch the readers, remove in a later release.
Set HEAD in storage/migrate.py to this revision.
"""

import sqlalchemy as sa
from alembic import op
${imports if imports else ""}
revision: str = ${repr(up_revision)}
down_revision: str | None = ${repr(down_revision)}


def upgrade() -> None:
    ${upgrades if upgrades else "pass"}


def downgrade() -> None:
    ${downgrades if downgrades else "pass"}

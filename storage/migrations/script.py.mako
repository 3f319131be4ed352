"""${message}

A migration must work with the code that is still running: add first, fill, switch the readers, remove in a later release.
Set HEAD in storage/migrate.py to this revision.
"""

import sqlalchemy as sa
import sqlmodel
from alembic import op
${imports if imports else ""}
revision = ${repr(up_revision)}
down_revision = ${repr(down_revision)}
branch_labels = ${repr(branch_labels)}
depends_on = ${repr(depends_on)}


def upgrade() -> None:
    ${upgrades if upgrades else "pass"}


def downgrade() -> None:
    ${downgrades if downgrades else "pass"}

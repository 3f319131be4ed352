"""first tables

A migration must work with the code that is still running: add first, fill, switch the readers, remove in a later release.
Set HEAD in storage/migrate.py to this revision.
"""

import sqlalchemy as sa
from alembic import op
from sqlmodel import UTCDateTime

revision: str = "0001"
down_revision: str | None = None


def upgrade() -> None:
    op.create_table(
        "broadcast",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_broadcast")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "inbound",
        sa.Column("athlete_id", sa.BigInteger(), nullable=True),
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("source", sa.String(), nullable=False),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("chat", sa.BigInteger(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("message", sa.BigInteger(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("received_at", UTCDateTime(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("document_name", sa.String(), nullable=True),
        sa.Column("document", sa.LargeBinary(), nullable=True),
        sa.Column("document_trouble", sa.String(), nullable=False),
        sa.Column("document_reference", sa.String(), nullable=False),
        sa.Column("place", sa.BigInteger(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("error", sa.String(), nullable=False),
        sa.Column("handled_at", UTCDateTime(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_inbound")),
        sa.UniqueConstraint("source", "key", name=op.f("uq_inbound_source_key")),
        sqlite_autoincrement=True,
    )
    with op.batch_alter_table("inbound", schema=None) as batch_op:
        batch_op.create_index("ix_inbound_message", ["source", "chat", "message"], unique=False)
        batch_op.create_index("ix_inbound_state", ["state", "source", "chat", "place", "id"], unique=False)

    op.create_table(
        "person",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("source", sa.String(), nullable=False),
        sa.Column("chat", sa.BigInteger(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("roles", sa.String(), nullable=False),
        sa.Column("since", UTCDateTime(), nullable=False),
        sa.Column("reachable", sa.Boolean(), nullable=False),
        sa.Column("last_id", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_person")),
        sa.UniqueConstraint("source", "chat", name=op.f("uq_person_source_chat")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "source",
        sa.Column("source", sa.String(), nullable=False),
        sa.Column("poll_offset", sa.BigInteger(), nullable=True),
        sa.Column("held_until", UTCDateTime(), nullable=True),
        sa.PrimaryKeyConstraint("source", name=op.f("pk_source")),
    )
    op.create_table(
        "change",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("by", sa.BigInteger(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("label", sa.String(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("inbound", sa.BigInteger(), nullable=True),
        sa.Column("undone_at", UTCDateTime(), nullable=True),
        sa.Column("undone_place", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_change_athlete_id")),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_change")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("change", schema=None) as batch_op:
        batch_op.create_index("ix_change_inbound", ["athlete_id", "inbound"], unique=False)
        batch_op.create_index("ix_change_undone", ["athlete_id", "by", "undone_place", "id"], unique=False)

    op.create_table(
        "coach_link",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("coach_id", sa.BigInteger(), nullable=False),
        sa.Column("consented_at", UTCDateTime(), nullable=False),
        sa.Column("permissions", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_coach_link_athlete_id")),
        sa.ForeignKeyConstraint(["coach_id"], ["person.id"], name=op.f("fk_coach_link_coach_id")),
        sa.PrimaryKeyConstraint("athlete_id", "coach_id", name=op.f("pk_coach_link")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("coach_link", schema=None) as batch_op:
        batch_op.create_index("ix_coach_link_coach", ["coach_id", "athlete_id"], unique=False)

    op.create_table(
        "due",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("local_date", sa.Date(), nullable=False),
        sa.Column("due_at", UTCDateTime(), nullable=False),
        sa.Column("payload", sa.JSON(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("claimed_until", UTCDateTime(), nullable=True),
        sa.Column("done_at", UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_due_athlete_id")),
        sa.PrimaryKeyConstraint("athlete_id", "kind", "local_date", name=op.f("pk_due")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("due", schema=None) as batch_op:
        batch_op.create_index("ix_due_state", ["state", "due_at"], unique=False)

    op.create_table(
        "invitation",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("code", sa.String(), nullable=False),
        sa.Column("expires_at", UTCDateTime(), nullable=False),
        sa.Column("used_at", UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_invitation_athlete_id")),
        sa.PrimaryKeyConstraint("athlete_id", "code", name=op.f("pk_invitation")),
        sa.UniqueConstraint("code", name=op.f("uq_invitation_code")),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "outbox",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("about", sa.BigInteger(), nullable=True),
        sa.Column("source", sa.String(), nullable=False),
        sa.Column("chat", sa.BigInteger(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("buttons", sa.JSON(), nullable=False),
        sa.Column("extras", sa.JSON(), nullable=False),
        sa.Column("edits", sa.BigInteger(), nullable=True),
        sa.Column("message", sa.BigInteger(), nullable=True),
        sa.Column("silent", sa.Boolean(), nullable=False),
        sa.Column("attachment_name", sa.String(), nullable=True),
        sa.Column("attachment", sa.LargeBinary(), nullable=True),
        sa.Column("attachment_is_picture", sa.Boolean(), nullable=False),
        sa.Column("lane", sa.Integer(), nullable=False),
        sa.Column("dedupe_key", sa.String(), nullable=True),
        sa.Column("broadcast_id", sa.BigInteger(), nullable=True),
        sa.Column("inbound", sa.BigInteger(), nullable=True),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("not_before", UTCDateTime(), nullable=True),
        sa.Column("claimed_until", UTCDateTime(), nullable=True),
        sa.Column("platform_message", sa.BigInteger(), nullable=True),
        sa.Column("sent_at", UTCDateTime(), nullable=True),
        sa.Column("error", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_outbox_athlete_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outbox")),
        sa.UniqueConstraint("athlete_id", "dedupe_key", name=op.f("uq_outbox_athlete_id_dedupe_key")),
        sqlite_autoincrement=True,
    )
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.create_index("ix_outbox_about", ["about", "id"], unique=False)
        batch_op.create_index("ix_outbox_athlete", ["athlete_id", "id"], unique=False)
        batch_op.create_index("ix_outbox_broadcast", ["broadcast_id", "state"], unique=False)
        batch_op.create_index("ix_outbox_chat", ["source", "chat", "state", "lane", "id"], unique=False)
        batch_op.create_index("ix_outbox_inbound", ["inbound"], unique=False)
        batch_op.create_index("ix_outbox_platform", ["source", "chat", "platform_message"], unique=False)
        batch_op.create_index("ix_outbox_state", ["state", "source", "lane", "id"], unique=False)

    op.create_table(
        "question",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("payload", sa.JSON(), nullable=False),
        sa.Column("asked_at", UTCDateTime(), nullable=False),
        sa.Column("expires_at", UTCDateTime(), nullable=False),
        sa.Column("message", sa.BigInteger(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_question_athlete_id")),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_question")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("question", schema=None) as batch_op:
        batch_op.create_index("ix_question_message", ["athlete_id", "message"], unique=False)
        batch_op.create_index("ix_question_state", ["athlete_id", "state"], unique=False)

    op.create_table(
        "body_weight",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("thousandths", sa.BigInteger(), nullable=False),
        sa.Column("unit", sa.String(), nullable=False),
        sa.Column("basis", sa.String(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_body_weight_athlete_id_added_by"),
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_body_weight_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_body_weight")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("body_weight", schema=None) as batch_op:
        batch_op.create_index("ix_body_weight_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_body_weight_day", ["athlete_id", "stands", "on_day"], unique=False)
        batch_op.create_index("ix_body_weight_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "choice",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("exercise", sa.String(), nullable=True),
        sa.Column("to_exercise", sa.String(), nullable=True),
        sa.Column("to_day", sa.Date(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"], ["change.athlete_id", "change.id"], name=op.f("fk_choice_athlete_id_added_by")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_choice_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_choice")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("choice", schema=None) as batch_op:
        batch_op.create_index("ix_choice_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_choice_day", ["athlete_id", "stands", "on_day"], unique=False)
        batch_op.create_index("ix_choice_removed_by", ["athlete_id", "removed_by"], unique=False)
        batch_op.create_index("ix_choice_to_day", ["athlete_id", "stands", "to_day"], unique=False)

    op.create_table(
        "lift_line",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("exercise", sa.String(), nullable=False),
        sa.Column("outbox", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["person.id"], name=op.f("fk_lift_line_athlete_id")),
        sa.ForeignKeyConstraint(["outbox"], ["outbox.id"], name=op.f("fk_lift_line_outbox")),
        sa.PrimaryKeyConstraint("athlete_id", "on_day", "exercise", name=op.f("pk_lift_line")),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "note",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("exercise", sa.String(), nullable=True),
        sa.Column("pain", sa.Boolean(), nullable=False),
        sa.Column("shared", sa.Boolean(), nullable=False),
        sa.Column("message", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"], ["change.athlete_id", "change.id"], name=op.f("fk_note_athlete_id_added_by")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"], ["change.athlete_id", "change.id"], name=op.f("fk_note_athlete_id_removed_by")
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_note")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("note", schema=None) as batch_op:
        batch_op.create_index("ix_note_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_note_day", ["athlete_id", "stands", "on_day"], unique=False)
        batch_op.create_index("ix_note_message", ["athlete_id", "message"], unique=False)
        batch_op.create_index("ix_note_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "own_exercise",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("content", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_own_exercise_athlete_id_added_by"),
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_own_exercise_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_own_exercise")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("own_exercise", schema=None) as batch_op:
        batch_op.create_index("ix_own_exercise_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_own_exercise_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "plan",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("starts_on", sa.Date(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("coach", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"], ["change.athlete_id", "change.id"], name=op.f("fk_plan_athlete_id_added_by")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"], ["change.athlete_id", "change.id"], name=op.f("fk_plan_athlete_id_removed_by")
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_plan")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("plan", schema=None) as batch_op:
        batch_op.create_index("ix_plan_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_plan_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "set_record",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("exercise", sa.String(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("at", UTCDateTime(), nullable=False),
        sa.Column("place", sa.BigInteger(), nullable=False),
        sa.Column("message", sa.BigInteger(), nullable=False),
        sa.Column("reps", sa.Integer(), nullable=False),
        sa.Column("thousandths", sa.BigInteger(), nullable=True),
        sa.Column("unit", sa.String(), nullable=True),
        sa.Column("basis", sa.String(), nullable=True),
        sa.Column("mass", sa.BigInteger(), nullable=True),
        sa.Column("rir", sa.String(), nullable=True),
        sa.Column("as_rpe", sa.Boolean(), nullable=False),
        sa.Column("seconds", sa.String(), nullable=True),
        sa.Column("metres", sa.String(), nullable=True),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("failure", sa.Boolean(), nullable=False),
        sa.Column("missed", sa.Boolean(), nullable=False),
        sa.Column("side", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_set_record_athlete_id_added_by"),
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_set_record_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_set_record")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("set_record", schema=None) as batch_op:
        batch_op.create_index("ix_set_record_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_set_record_day", ["athlete_id", "stands", "on_day", "place"], unique=False)
        batch_op.create_index(
            "ix_set_record_exercise", ["athlete_id", "stands", "exercise", "on_day", "place"], unique=False
        )
        batch_op.create_index("ix_set_record_mass", ["athlete_id", "stands", "exercise", "mass"], unique=False)
        batch_op.create_index("ix_set_record_message", ["athlete_id", "message", "stands", "place"], unique=False)
        batch_op.create_index("ix_set_record_place", ["athlete_id", "stands", "place"], unique=False)
        batch_op.create_index("ix_set_record_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "setting",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("content", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"], ["change.athlete_id", "change.id"], name=op.f("fk_setting_athlete_id_added_by")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_setting_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_setting")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("setting", schema=None) as batch_op:
        batch_op.create_index("ix_setting_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_setting_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "settled",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("doubt", sa.String(), nullable=False),
        sa.Column("term", sa.String(), nullable=False),
        sa.Column("answer", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"], ["change.athlete_id", "change.id"], name=op.f("fk_settled_athlete_id_added_by")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_settled_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_settled")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("settled", schema=None) as batch_op:
        batch_op.create_index("ix_settled_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_settled_removed_by", ["athlete_id", "removed_by"], unique=False)

    op.create_table(
        "shorthand",
        sa.Column("athlete_id", sa.BigInteger(), nullable=False),
        sa.Column("id", sa.BigInteger(), nullable=False),
        sa.Column("added_by", sa.BigInteger(), nullable=False),
        sa.Column("removed_by", sa.BigInteger(), nullable=True),
        sa.Column("stands", sa.Boolean(), nullable=False),
        sa.Column("shorthand", sa.String(), nullable=False),
        sa.Column("exercise", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id", "added_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_shorthand_athlete_id_added_by"),
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id", "removed_by"],
            ["change.athlete_id", "change.id"],
            name=op.f("fk_shorthand_athlete_id_removed_by"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", "id", name=op.f("pk_shorthand")),
        sqlite_with_rowid=False,
    )
    with op.batch_alter_table("shorthand", schema=None) as batch_op:
        batch_op.create_index("ix_shorthand_added_by", ["athlete_id", "added_by"], unique=False)
        batch_op.create_index("ix_shorthand_removed_by", ["athlete_id", "removed_by"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("shorthand", schema=None) as batch_op:
        batch_op.drop_index("ix_shorthand_removed_by")
        batch_op.drop_index("ix_shorthand_added_by")

    op.drop_table("shorthand")
    with op.batch_alter_table("settled", schema=None) as batch_op:
        batch_op.drop_index("ix_settled_removed_by")
        batch_op.drop_index("ix_settled_added_by")

    op.drop_table("settled")
    with op.batch_alter_table("setting", schema=None) as batch_op:
        batch_op.drop_index("ix_setting_removed_by")
        batch_op.drop_index("ix_setting_added_by")

    op.drop_table("setting")
    with op.batch_alter_table("set_record", schema=None) as batch_op:
        batch_op.drop_index("ix_set_record_removed_by")
        batch_op.drop_index("ix_set_record_place")
        batch_op.drop_index("ix_set_record_message")
        batch_op.drop_index("ix_set_record_mass")
        batch_op.drop_index("ix_set_record_exercise")
        batch_op.drop_index("ix_set_record_day")
        batch_op.drop_index("ix_set_record_added_by")

    op.drop_table("set_record")
    with op.batch_alter_table("plan", schema=None) as batch_op:
        batch_op.drop_index("ix_plan_removed_by")
        batch_op.drop_index("ix_plan_added_by")

    op.drop_table("plan")
    with op.batch_alter_table("own_exercise", schema=None) as batch_op:
        batch_op.drop_index("ix_own_exercise_removed_by")
        batch_op.drop_index("ix_own_exercise_added_by")

    op.drop_table("own_exercise")
    with op.batch_alter_table("note", schema=None) as batch_op:
        batch_op.drop_index("ix_note_removed_by")
        batch_op.drop_index("ix_note_message")
        batch_op.drop_index("ix_note_day")
        batch_op.drop_index("ix_note_added_by")

    op.drop_table("note")
    op.drop_table("lift_line")
    with op.batch_alter_table("choice", schema=None) as batch_op:
        batch_op.drop_index("ix_choice_to_day")
        batch_op.drop_index("ix_choice_removed_by")
        batch_op.drop_index("ix_choice_day")
        batch_op.drop_index("ix_choice_added_by")

    op.drop_table("choice")
    with op.batch_alter_table("body_weight", schema=None) as batch_op:
        batch_op.drop_index("ix_body_weight_removed_by")
        batch_op.drop_index("ix_body_weight_day")
        batch_op.drop_index("ix_body_weight_added_by")

    op.drop_table("body_weight")
    with op.batch_alter_table("question", schema=None) as batch_op:
        batch_op.drop_index("ix_question_state")
        batch_op.drop_index("ix_question_message")

    op.drop_table("question")
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.drop_index("ix_outbox_state")
        batch_op.drop_index("ix_outbox_platform")
        batch_op.drop_index("ix_outbox_inbound")
        batch_op.drop_index("ix_outbox_chat")
        batch_op.drop_index("ix_outbox_broadcast")
        batch_op.drop_index("ix_outbox_athlete")
        batch_op.drop_index("ix_outbox_about")

    op.drop_table("outbox")
    op.drop_table("invitation")
    with op.batch_alter_table("due", schema=None) as batch_op:
        batch_op.drop_index("ix_due_state")

    op.drop_table("due")
    with op.batch_alter_table("coach_link", schema=None) as batch_op:
        batch_op.drop_index("ix_coach_link_coach")

    op.drop_table("coach_link")
    with op.batch_alter_table("change", schema=None) as batch_op:
        batch_op.drop_index("ix_change_undone")
        batch_op.drop_index("ix_change_inbound")

    op.drop_table("change")
    op.drop_table("source")
    op.drop_table("person")
    with op.batch_alter_table("inbound", schema=None) as batch_op:
        batch_op.drop_index("ix_inbound_state")
        batch_op.drop_index("ix_inbound_message")

    op.drop_table("inbound")
    op.drop_table("broadcast")

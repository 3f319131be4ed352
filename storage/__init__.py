"""Rows to engine values and back: tables, queries, migrations, the outbox."""

"""Old logs from documents: diaries in plain text, and tables of any sensible columns."""

"""Answers in words to an open question."""

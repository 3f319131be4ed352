"""Chunks to sets, once it is decided which number is which."""

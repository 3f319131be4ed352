"""Numbers and words that stand beside the sets and are none."""

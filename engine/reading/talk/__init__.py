"""Talk that holds numbers but no sets."""

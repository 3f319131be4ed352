"""Text to pieces: tokens with their unit or meaning, words with a slip of the thumb mended."""

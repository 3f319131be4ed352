"""Plans: their values, the text they are written in, their check and their projection."""

"""How results are put into words; pure, no chat library and no database."""

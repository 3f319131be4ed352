"""One rule a file: from the history of a slot to its next prescription and the reason."""

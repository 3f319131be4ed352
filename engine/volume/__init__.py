"""Weekly sets for each muscle, targets, and the spacing between sessions."""

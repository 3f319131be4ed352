"""Days and hours told in words or numbers."""

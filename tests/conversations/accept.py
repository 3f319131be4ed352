"""Accepts what the stories of this folder say now: python tests/conversations/accept.py [NAME ...]

Read the diff before you commit it: a wording change is a change that a coach can review.
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.conversations.playing import STORIES, Played

for story in STORIES:
    if len(sys.argv) == 1 or story.parent.name in sys.argv[1:]:
        (story.parent / "replies.txt").write_text(Played(story).text, encoding="utf-8")
        print(f"accepted {story.parent.name}")

"""``python -m bot`` is the same as the command ``chalkwire``."""

from __future__ import annotations

import sys

from bot.cli import main

sys.exit(main())

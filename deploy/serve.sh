#!/bin/sh
# Runs the bot: with the compiled reader where `sh deploy/compile.sh` made it of the sources as they stand, and else in
# plain Python, which does the same. After an update the copy is out of date until it is made again, and is passed over.
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
python="$root/.venv/bin/python"

program="$root"
if "$python" "$root/deploy/compile.py" --is-fresh; then program="$root/build/compiled"; fi
# -P: what lies in the folder that the bot is started from is none of the program.
PYTHONPATH="$program" exec "$python" -P -m bot serve "$@"

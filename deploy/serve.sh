#!/bin/sh
# Runs the bot: with the compiled reader where `sh deploy/compile.sh` made it of the sources as they stand, and else in
# plain Python, which does the same. After an update the copy is out of date until it is made again, and is passed over.
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
python="$root/.venv/bin/python"

cd "$root"
if "$python" deploy/compile.py --is-fresh; then cd build/compiled; fi
exec "$python" -m bot serve "$@"

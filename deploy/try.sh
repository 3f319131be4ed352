#!/bin/sh
# Try Chalkwire: sets up .venv beside this folder and opens a chat with an invented athlete. Needs Python 3.11 or newer.
# Anything behind the command goes to the chat: sh deploy/try.sh --as NAME
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/deploy/environment.sh"

ensure_environment requirements.lock
exec "$venv/bin/chalkwire" chat --demo "$@"

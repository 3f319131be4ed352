#!/bin/sh
# Makes a copy of Chalkwire whose reader is compiled to C, in build/compiled or the folder named behind it: the same
# outcomes in half the time. Nobody needs it. Wants a C compiler (Debian: apt install gcc) and Python's
# headers (python3-dev); some minutes. `deploy/serve.sh` runs the copy from then on, until the sources change.
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/deploy/environment.sh"

command -v "${CC:-cc}" >/dev/null 2>&1 ||
    fail "There is no C compiler here, so the reader stays plain Python, which does the same." \
        "On Debian and Ubuntu: sudo apt install gcc python3-dev. Then run this again."
ensure_environment requirements-test.lock
exec "$venv/bin/python" "$root/deploy/compile.py" "$@"

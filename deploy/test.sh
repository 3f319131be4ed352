#!/bin/sh
# Runs every check of Chalkwire: format, lint, layers, types, tests. Sets up .venv beside this folder first.
# Anything behind the command goes to pytest: sh deploy/test.sh tests/engine -k deload
#
# CHALKWIRE_TEST_POSTGRES   URL of a PostgreSQL database that the tests may fill and empty; without it the tests that
#                           need PostgreSQL are skipped, and with CI=true that is a failure
# CHALKWIRE_TEST_WORKERS    how many processes run the tests (default 2)
# CHALKWIRE_TEST_THOROUGH   set to anything: the bot killed at every step, ten times the examples of a property, remarks
#                           beside all sets in all forms (slow)
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/deploy/environment.sh"

if [ "${CI:-}" = true ] && [ -z "${CHALKWIRE_TEST_POSTGRES:-}" ]; then
    fail "CI=true, and CHALKWIRE_TEST_POSTGRES is not set: no test may be skipped here." \
        "Run .ci/run, which starts PostgreSQL, or set the URL of a database for the tests."
fi

ensure_environment requirements-test.lock
cd "$root"
# Where Python may not keep what it compiled, each worker and each process that a test starts compiles everything anew.
unset PYTHONDONTWRITEBYTECODE

failed=""
check() { # check NAME COMMAND...
    name=$1
    shift
    printf '\n== %s\n' "$name"
    "$venv/bin/python" -m "$@" || failed="$failed $name"
}

# Types take one core for most of a minute, and the tests wait now and then: both at once.
types_told=$(mktemp)
"$venv/bin/python" -m mypy >"$types_told" 2>&1 &
types=$!
trap 'exit 130' INT TERM
trap 'kill "$types" 2>/dev/null || true; rm -f "$types_told"' EXIT

check format ruff format --check .
check lint ruff check .
printf '\n== layers\n'
"$venv/bin/lint-imports" || failed="$failed layers"
check tests pytest -rs -n "${CHALKWIRE_TEST_WORKERS:-2}" --dist worksteal "$@"
printf '\n== types\n'
wait "$types" || failed="$failed types"
cat "$types_told"

if [ -n "$failed" ]; then
    fail "Failed:$failed"
fi
printf '\nAll checks passed.\n'

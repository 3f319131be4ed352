#!/bin/sh
# Writes requirements.lock and requirements-test.lock anew from pyproject.toml, for every supported Python and system.
# Needs uv: https://docs.astral.sh/uv/. With --upgrade each package goes to the newest release that pyproject.toml admits;
# without it, what is locked stays where it still fits.
set -eu
cd "$(dirname "$0")/.."

if ! command -v uv >/dev/null 2>&1; then
    echo "deploy/lock.sh needs uv. Install it with: python3 -m pip install uv" >&2
    exit 1
fi

# The build backend is locked too, so that the project itself installs without a second, unlocked, environment.
build_backend='hatchling>=1.27
editables>=0.5'

compile() { # compile TARGET [OPTION...]
    target=$1
    shift
    echo "$build_backend" | uv pip compile pyproject.toml - --quiet --universal --python-version 3.11 --generate-hashes \
        --no-header --no-annotate --no-emit-index-url --output-file "$target" "$@" >/dev/null
    {
        echo "# Made by deploy/lock.sh from pyproject.toml. Do not edit."
        cat "$target"
    } >"$target.new"
    mv "$target.new" "$target"
    # An index or a folder of this machine has no place in a file that others install from.
    if grep -nE '^ *(--index-url|--extra-index-url|--find-links|-f |-i )|://|file:' "$target"; then
        echo "$target names a place of this machine: see the lines above." >&2
        exit 1
    fi
}

# The larger set first: what runs for a lifter is then what the tests ran with.
compile requirements-test.lock --extra test "$@"
compile requirements.lock --constraint requirements-test.lock "$@"
echo "Wrote requirements.lock and requirements-test.lock. Now run: sh deploy/test.sh"

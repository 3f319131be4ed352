# Makes .venv beside this folder and installs a lock file into it. Sourced by try.sh and test.sh; POSIX sh.
#
# CHALKWIRE_PYTHON   the Python to build .venv with (default: the first of python3, python3.14 ... that is 3.11 or newer)
# CHALKWIRE_NO_UV    set to anything: use venv and pip even where uv is there
# An index of your own is read by pip and uv themselves: PIP_INDEX_URL, UV_DEFAULT_INDEX.

venv="$root/.venv"
install_log="$venv/install.log"

say() { printf '%s\n' "$*" >&2; }

fail() {
    say ""
    for line in "$@"; do say "$line"; done
    exit 1
}

has_uv() { [ -z "${CHALKWIRE_NO_UV:-}" ] && command -v uv >/dev/null 2>&1; }

is_new_enough() { "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; }

python_to_use() { # prints the first Python that is new enough; nothing where there is none
    for candidate in "${CHALKWIRE_PYTHON:-}" python3 python3.14 python3.13 python3.12 python3.11 python; do
        if [ -n "$candidate" ] && command -v "$candidate" >/dev/null 2>&1 && is_new_enough "$candidate"; then
            command -v "$candidate"
            return 0
        fi
    done
}

how_to_get_python() {
    case "$(uname -s)" in
    Darwin) echo "On macOS: install Python 3.11 or newer from https://www.python.org/downloads/ (or: brew install python)." ;;
    *) echo "On Debian 12 or newer and Ubuntu: sudo apt install python3 python3-venv" ;;
    esac
}

stop_without_python() {
    found=$(python3 -c 'import sys; print("Found Python %d.%d." % sys.version_info[:2])' 2>/dev/null) ||
        found="No Python was found."
    fail "$found Chalkwire needs Python 3.11 or newer." "$(how_to_get_python)" "Then run this command again."
}

stop_without_venv() {
    version=$("$1" -c 'import sys; print("%d.%d" % sys.version_info[:2])')
    fail "$1 has no venv module, so no isolated environment can be made." \
        "On Debian and Ubuntu: sudo apt install python3-venv   (or python$version-venv)" \
        "Elsewhere install a complete Python 3.11 or newer. Then run this command again."
}

make_venv() {
    rm -rf "$venv"
    python=$(python_to_use)
    if has_uv; then
        # Without a Python here, uv fetches one.
        uv venv --quiet --python "${python:->=3.11}" "$venv" || stop_without_python
        return 0
    fi
    [ -n "$python" ] || stop_without_python
    "$python" -c 'import ensurepip, venv' >/dev/null 2>&1 || stop_without_venv "$python"
    "$python" -m venv "$venv" || {
        rm -rf "$venv"
        stop_without_venv "$python"
    }
}

# What an environment was made from: when this changes, it is installed anew. The path counts, as scripts hold it.
fingerprint() { # fingerprint LOCK
    { cat "$root/$1" "$root/pyproject.toml" "$root/deploy/environment.sh" && printf '%s' "$root"; } | cksum
}

is_installed() { # is_installed LOCK: whether that lock file, as it stands, is in .venv
    [ -f "$venv/$1.installed" ] && [ "$(cat "$venv/$1.installed")" = "$(fingerprint "$1")" ]
}

install_quietly() { # install_quietly [OPTION...]: pip install with these options, by uv where it is there
    if has_uv; then
        VIRTUAL_ENV="$venv" uv pip install --python "$venv/bin/python" "$@" >>"$install_log" 2>&1
    else
        "$venv/bin/python" -m pip install --disable-pip-version-check --no-input "$@" >>"$install_log" 2>&1
    fi
}

stop_after_failed_install() {
    say ""
    tail -n 12 "$install_log" >&2
    if grep -qiE 'connect|resolution|resolve host|dns|timed? ?out|unreachable|network|proxy|could not fetch|from versions: none|offline' "$install_log"; then
        fail "The packages could not be fetched: this machine does not reach the package index." \
            "Go online, or set PIP_INDEX_URL (pip) or UV_DEFAULT_INDEX (uv) to an index that it reaches. Then run this again."
    fi
    fail "The packages could not be installed; the lines above say why. The whole report: $install_log"
}

ensure_environment() { # ensure_environment LOCK: .venv holds that lock file and this project
    if [ -d "$venv" ] && ! is_new_enough "$venv/bin/python"; then
        say "The Python of .venv is gone or too old: making .venv anew."
        rm -rf "$venv"
    fi
    # The test packages include all that runs the bot.
    if is_installed "$1" || { [ "$1" = requirements.lock ] && is_installed requirements-test.lock; }; then
        return 0
    fi
    if [ -d "$venv" ] && ! has_uv && ! "$venv/bin/python" -m pip --version >/dev/null 2>&1; then
        rm -rf "$venv" # made by uv, which leaves pip out
    fi
    [ -d "$venv" ] || make_venv
    say "Installing from $1 into .venv (once; a minute or two) ..."
    : >"$install_log"
    install_quietly --require-hashes -r "$root/$1" || stop_after_failed_install
    install_quietly --no-deps --no-build-isolation -e "$root" || stop_after_failed_install
    rm -f "$venv"/*.installed
    fingerprint "$1" >"$venv/$1.installed"
}

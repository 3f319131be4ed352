"""sh deploy/try.sh on machines that lack something, and a second time. A pretended Python stands for the real one."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

import pytest

TOP = Path(__file__).parents[2]
TOOLS = ("cat", "cksum", "cp", "dirname", "grep", "mkdir", "rm", "sh", "tail", "touch", "uname", "chmod")

PYTHON = """\
#!/bin/sh
# Pretends to be Python as far as the set-up asks.
case "$*" in
*version_info*3,\\ 11*) exit {too_old} ;;
*print*version*) echo "{version}" ;;
*"import ensurepip"*) exit {lacks_venv} ;;
"-m venv "*) mkdir -p "$3/bin" && cp "$0" "$3/bin/python" ;;
"-m pip --version") echo pip ;;
"-m pip install"*)
    echo "$*" >>"{calls}"
    if [ -n "{trouble}" ]; then echo "{trouble}" >&2; exit 1; fi
    folder=$(dirname "$0")
    case "$*" in *" -e "*)
        printf '#!/bin/sh\\necho "chat is open: $*"\\n' >"$folder/chalkwire"
        chmod +x "$folder/chalkwire" ;;
    esac
    ;;
*) echo "not expected: $*" >&2; exit 9 ;;
esac
"""


class Machine:
    """A checkout in a folder whose name has a space, and a PATH with next to nothing on it."""

    def __init__(self, folder: Path) -> None:
        self.checkout = folder / "my lifts"
        self.bin = folder / "bin"
        self.calls = folder / "calls"
        self.bin.mkdir()
        for tool in TOOLS:
            found = shutil.which(tool)
            assert found, tool
            (self.bin / tool).symlink_to(found)
        shutil.copytree(TOP / "deploy", self.checkout / "deploy")
        for name in ("requirements.lock", "requirements-test.lock", "pyproject.toml"):
            shutil.copy(TOP / name, self.checkout / name)

    def add_python(self, *, too_old: bool = False, lacks_venv: bool = False, trouble: str = "") -> None:
        python = self.bin / "python3"
        python.write_text(
            PYTHON.format(
                too_old=int(too_old),
                lacks_venv=int(lacks_venv),
                version="Found Python 3.9." if too_old else "3.12",
                trouble=trouble,
                calls=self.calls,
            )
        )
        python.chmod(0o755)

    def run(self, *arguments: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [str(self.bin / "sh"), str(self.checkout / "deploy" / "try.sh"), *arguments],
            cwd="/",
            env={"PATH": str(self.bin), "HOME": os.environ.get("HOME", "/")},
            stdin=subprocess.DEVNULL,
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )

    def installs(self) -> int:
        return len(self.calls.read_text().splitlines()) if self.calls.exists() else 0


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    return Machine(tmp_path)


def test_from_any_folder_into_a_path_with_a_space(machine: Machine) -> None:
    machine.add_python()

    done = machine.run("--as", "coach")

    assert done.returncode == 0, done.stderr
    assert done.stdout == "chat is open: chat --demo --as coach\n"
    assert (machine.checkout / ".venv").is_dir()


def test_the_packages_are_checked_by_hash_and_the_project_comes_without_fetching_more(machine: Machine) -> None:
    machine.add_python()
    machine.run()

    packages, project = machine.calls.read_text().splitlines()
    assert "--require-hashes" in packages
    assert packages.endswith("requirements.lock")
    assert "--no-deps" in project
    assert "--no-build-isolation" in project


def test_the_second_time_nothing_is_installed(machine: Machine) -> None:
    machine.add_python()
    machine.run()
    installs = machine.installs()

    again = machine.run()

    assert again.returncode == 0
    assert again.stderr == ""
    assert machine.installs() == installs


@pytest.mark.parametrize("changed", ["requirements.lock", "pyproject.toml"])
def test_a_change_is_installed(machine: Machine, changed: str) -> None:
    machine.add_python()
    machine.run()
    installs = machine.installs()
    with (machine.checkout / changed).open("a") as file:
        file.write("# changed\n")

    machine.run()

    assert machine.installs() == 2 * installs


def test_a_checkout_that_moved_is_set_up_again(machine: Machine) -> None:
    machine.add_python()
    machine.run()
    installs = machine.installs()
    machine.checkout = machine.checkout.rename(machine.checkout.with_name("elsewhere"))

    assert machine.run().returncode == 0
    assert machine.installs() == 2 * installs


def test_an_install_that_broke_off_is_done_again(machine: Machine) -> None:
    machine.add_python(trouble="killed")
    assert machine.run().returncode == 1
    machine.add_python()
    shutil.copy(machine.bin / "python3", machine.checkout / ".venv" / "bin" / "python")

    assert machine.run().returncode == 0
    assert machine.run().stdout == "chat is open: chat --demo\n"


def test_an_environment_whose_python_is_gone_is_made_anew(machine: Machine) -> None:
    machine.add_python()
    machine.run()
    (machine.checkout / ".venv" / "bin" / "python").unlink()

    done = machine.run()

    assert done.returncode == 0
    assert "anew" in done.stderr


def test_without_python_it_says_what_to_install(machine: Machine) -> None:
    done = machine.run()

    assert done.returncode == 1
    assert "No Python was found. Chalkwire needs Python 3.11 or newer." in done.stderr
    assert "install" in done.stderr


def test_an_old_python_is_named(machine: Machine) -> None:
    machine.add_python(too_old=True)

    done = machine.run()

    assert done.returncode == 1
    assert "Found Python 3.9." in done.stderr


def test_without_the_venv_module_it_names_the_package(machine: Machine) -> None:
    machine.add_python(lacks_venv=True)

    done = machine.run()

    assert done.returncode == 1
    assert "apt install python3-venv" in done.stderr
    assert not (machine.checkout / ".venv").exists()


@pytest.mark.parametrize(
    "trouble",
    [
        pytest.param("ERROR: No matching distribution (from versions: none)", id="an index that cannot be reached"),
        pytest.param("Temporary failure in name resolution", id="no name server"),
        pytest.param("Read timed out.", id="no answer"),
    ],
)
def test_offline_it_says_so(machine: Machine, trouble: str) -> None:
    machine.add_python(trouble=trouble)

    done = machine.run()

    assert done.returncode == 1
    assert trouble in done.stderr
    assert "does not reach the package index" in done.stderr
    assert "PIP_INDEX_URL" in done.stderr


def test_another_trouble_is_shown_as_it_is(machine: Machine) -> None:
    machine.add_python(trouble="No space left on device")

    done = machine.run()

    assert done.returncode == 1
    assert "No space left on device" in done.stderr
    assert "does not reach" not in done.stderr
    assert "install.log" in done.stderr

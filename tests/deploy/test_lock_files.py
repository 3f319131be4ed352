"""The lock files hold what pyproject.toml asks for, checked by hash, and name no place of any machine."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

TOP = Path(__file__).parents[2]
PINNED = re.compile(r"^([A-Za-z0-9._-]+)==([^ ;\\]+)")
LOCKS = ("requirements.lock", "requirements-test.lock")


def locked(name: str) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for line in (TOP / name).read_text(encoding="utf-8").splitlines():
        pin = PINNED.match(line)
        if pin:
            found.setdefault(canonicalize_name(pin[1]), []).append(pin[2])
    return found


def asked_for(lock: str) -> list[Requirement]:
    project = tomllib.loads((TOP / "pyproject.toml").read_text(encoding="utf-8"))
    asked = [*project["build-system"]["requires"], *project["project"]["dependencies"]]
    if lock == "requirements-test.lock":
        asked += project["project"]["optional-dependencies"]["test"]
    return [Requirement(one) for one in asked]


@pytest.mark.parametrize("lock", LOCKS)
def test_everything_asked_for_is_locked_at_a_fitting_release(lock: str) -> None:
    """A failure here: pyproject.toml changed, and deploy/lock.sh was not run."""
    pins = locked(lock)
    missing = [
        str(one)
        for one in asked_for(lock)
        if not pins.get(canonicalize_name(one.name))
        or not all(one.specifier.contains(release) for release in pins[canonicalize_name(one.name)])
    ]

    assert missing == []


def test_what_runs_for_a_lifter_is_what_the_tests_ran_with() -> None:
    tested = locked("requirements-test.lock")

    assert {name: pins for name, pins in locked("requirements.lock").items() if tested.get(name) != pins} == {}


@pytest.mark.parametrize("lock", LOCKS)
def test_every_pin_has_hashes(lock: str) -> None:
    text = (TOP / lock).read_text(encoding="utf-8")
    pins = re.split(r"\n(?=\S)", text)

    assert [pin.splitlines()[0] for pin in pins if "==" in pin and "--hash=sha256:" not in pin] == []


@pytest.mark.parametrize("lock", LOCKS)
def test_no_place_of_a_machine_is_named(lock: str) -> None:
    text = (TOP / lock).read_text(encoding="utf-8")

    assert not re.search(r"://|file:|--(extra-)?index-url|--find-links", text)

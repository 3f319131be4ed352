"""How hard the properties try: hypothesis profiles for every test. No time limit, as a loaded machine is no fault.

default   as many examples as each test says (100 where it says nothing), other ones each time
ci        the same examples each time, so that a change is judged by what it changes
thorough  1000 examples where a test says nothing; on with CHALKWIRE_TEST_THOROUGH

What is collected lives to the end: while it is made nothing is looked through for garbage, and later no more than what
the tests themselves make.
"""

from __future__ import annotations

import gc
import os
from collections.abc import Generator

import pytest
from hypothesis import HealthCheck, settings

settings.register_profile("default", deadline=None, suppress_health_check=[HealthCheck.too_slow], print_blob=True)
settings.register_profile("ci", settings.get_profile("default"), derandomize=True, database=None)
settings.register_profile("thorough", settings.get_profile("default"), max_examples=1000)

if os.environ.get("CHALKWIRE_TEST_THOROUGH"):
    settings.load_profile("thorough")
else:
    settings.load_profile("ci" if os.environ.get("CI") == "true" else "default")


@pytest.hookimpl(wrapper=True)
def pytest_collection() -> Generator[None, object, object]:
    gc.disable()
    try:
        return (yield)
    finally:
        gc.enable()
        gc.collect()
        gc.freeze()

"""The page's own code, tested in Node."""

from pathlib import Path

import pytest
from make import prepare
from make.said import run


@pytest.mark.parametrize("name", [file.name for file in sorted(Path(__file__).parent.glob("*.test.mjs"))])
def test_the_code_does_what_its_tests_say(name: str) -> None:
    """Node's own test runner finds nothing wrong."""
    told = run([prepare.node(), "--test", "--test-reporter=tap", Path(__file__).with_name(name)], name)
    assert "# fail 0" in told
    assert "# pass 0" not in told

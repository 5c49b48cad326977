"""A wood found by a part of its name: one meaning, or the names it could mean."""

import pytest

from calc.bench import Bench
from calc.describe import given as described
from calc.errors import Refusal
from calc.sums import _species

WOOD = _species.asked()


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("ash-white", "ash-white"),
        ("Ash, white (Fraxinus americana)", "ash-white"),
        ("white ash", "ash-white"),
        ("WHITE  ASH", "ash-white"),
        ("fraxinus americana", "ash-white"),
        ("americana frax", "ash-white"),
        ("cherry", "cherry-black"),
        ("yellow poplar", "yellow-poplar"),
        ("white oak", "oak-white"),
        ("sitka", "spruce-sitka"),
        ("swietenia", "mahogany-true"),
    ],
)
def test_a_wood_is_found_by_words_of_its_name(text: str, key: str) -> None:
    """Key, whole name, words in any order, beginnings of words, botanical name; capitals do not matter."""
    assert WOOD.read(text, Bench()).value == key


@pytest.mark.parametrize("key", list(_species.names()))
def test_every_wood_is_found_by_its_common_name_and_its_key(key: str) -> None:
    """No common name is hidden behind another's."""
    common, _ = _species.names()[key]
    assert {WOOD.read(text, Bench()).value for text in (common, key, key.upper())} == {key}


def test_a_name_of_several_lists_them() -> None:
    """“ash” is five woods and not the slash pine."""
    with pytest.raises(Refusal, match="could be Ash, black") as refused:
        WOOD.read("ash", Bench())
    assert refused.value.say.count("Fraxinus") == 5
    assert "slash" not in refused.value.say


def test_a_long_list_is_cut_short_and_says_so() -> None:
    """Pines are many: eight names, and how many more."""
    with pytest.raises(Refusal, match=r"\d more; type more of the name|5 more"):
        WOOD.read("pine", Bench())


@pytest.mark.parametrize(("text", "near"), [("asch", "Ash"), ("mapel", "Maple"), ("quercas", "Quercus")])
def test_a_name_misspelt_is_met_with_those_near(text: str, near: str) -> None:
    """The refusal offers what was probably meant."""
    with pytest.raises(Refusal) as refused:
        WOOD.read(text, Bench())
    assert "is no wood in the table" in refused.value.say
    assert near in refused.value.instead


@pytest.mark.parametrize("text", ["", "  ", "xyzzy", "(", "ash" * 100])
def test_nonsense_is_refused_in_words(text: str) -> None:
    """Never a guess, never a fault."""
    with pytest.raises(Refusal):
        WOOD.read(text, Bench())


def test_a_page_is_told_that_it_can_be_searched() -> None:
    """To a page that knows nothing of searching it is a choice like another."""
    told = described(WOOD)
    assert (told["kind"], told["search"]) == ("choice", True)
    assert {"key": "ash-white", "label": "Ash, white (Fraxinus americana)"} in told["options"]

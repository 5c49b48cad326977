"""Pieces in files, from the command line: every act, files kept whole, and anything else refused in a sentence."""

import json
import os
import shlex
import stat
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from calc import door
from calc.__main__ import Disk, main
from calc.building.saved import LONGEST_FILE
from calc.command.command_line import Told, run
from calc.command.command_pieces import DOES
from calc.command.completion import complete
from calc.command.guide import command
from calc.discover import find

SCHEMA = Draft202012Validator(json.loads(Path("shared/piece.schema.json").read_text("utf-8")))
BOX = find("sloping-lid-box")
GIVENS = " ".join(f"{name}={shlex.quote(text)}" for name, text in BOX.example.givens.items())


@pytest.fixture(autouse=True)
def _bench(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A folder of its own to work in."""
    monkeypatch.chdir(tmp_path)


def piece(line: str) -> Told:
    """What `tenpenny piece` is told, with a real disk."""
    return run(["piece", *shlex.split(line)], Disk())


def out(line: str) -> str:
    """What it prints when all is well."""
    told = piece(line)
    assert (told.status, told.err) == (0, ""), told
    return told.out


def begun(name: str = "box.json") -> Path:
    """The example's box in a file, in millimetres."""
    out(f"new {name} sloping-lid-box --unit mm --title 'Reading room' {GIVENS}")
    return Path(name)


def standing(name: str = "box.json") -> dict[str, Any]:
    """Each given and size as it stands, by name."""
    settled = json.loads(out(f"show {name} --json"))["settled"]
    return {one["name"]: one for one in (*settled["givens"], *settled["sizes"])}


def test_a_new_piece_is_the_published_form() -> None:
    """One entry for each given, in the file that the schema describes; the page's door opens it."""
    saved = json.loads(begun().read_text("utf-8"))
    SCHEMA.validate(saved)
    assert {entry["name"]: entry["text"] for entry in saved["entries"]} == dict(BOX.example.givens)
    assert (saved["title"], saved["bench"]["unit"], saved["bench"]["mark"]) == ("Reading room", "mm", "mm")
    request = {"id": 1, "op": "piece", "sum": BOX.id, "record": saved}
    assert json.loads(door.handle(json.dumps(request)))["record"] == saved


def test_a_piece_shows_every_size_by_the_name_to_type() -> None:
    """With how each stands; the whole of it in JSON, without ink."""
    begun()
    shown = out("show box.json")
    assert all(f"  {one.name} " in shown for one in BOX.named if one.kind != "rows")
    told = json.loads(out("show box.json --json"))
    assert told["settled"]["whole"]
    assert "figure" not in told["answer"]


def test_a_cut_is_kept_and_what_follows_is_told() -> None:
    """Old and new of what changed, and no more; then taken back, to the same bytes."""
    before = begun().read_bytes()
    told = out("cut box.json lid_long='182.5 mm'")
    assert told.splitlines()[0] == "Overhang at the front: 10 mm, strong by 0.08 mm; was 12 mm"
    assert "Inside width" not in told
    assert standing()["lid_long"]["state"] == "cut"
    assert standing()["front_overhang"]["state"] == "yielded"
    assert "12 mm" in out("undo box.json")
    assert Path("box.json").read_bytes() == before


def test_what_does_not_fit_is_told_with_what_to_type() -> None:
    """The choice offered can be typed as it stands, and closes the gap."""
    begun()
    told = out("cut box.json front-long=232 inside-width=201.5")
    assert "The front is 1.50 mm short" in told
    offer = next(line for line in told.splitlines() if "side_thickness" in line)
    assert "Mind:" not in out(f"cut box.json {offer.partition('then cut ')[2]}")


def test_set_uncut_and_first_are_entries_too() -> None:
    """Each kept, in the order made; an empty value goes back to what is usual; several at once."""
    begun()
    out("set box.json crest=30 tail='1 in'")
    out("set box.json crest=")
    out("cut box.json back_high=300")
    out("first box.json back-high")
    out("uncut box.json back_high")
    entries = json.loads(Path("box.json").read_text("utf-8"))["entries"][len(BOX.example.givens) :]
    assert [(one["act"], one["name"]) for one in entries] == [
        ("give", "crest"), ("give", "tail"), ("give", "crest"), ("cut", "back_high"), ("first", "back_high"),
        ("uncut", "back_high"),
    ]  # fmt: skip
    assert standing()["tail"]["value"] == 25.4
    assert standing()["crest"]["state"] == "default"


def test_a_size_given_that_is_cut_already_is_told_to_wait() -> None:
    """The wood is what it is: 170 is kept for when the side is made anew, and the maker is told so, once."""
    begun()
    out("cut box.json depth=155")
    assert out("set box.json depth=170").splitlines() == ["Depth of the sides: cut at 155 mm, and that stands"]
    assert "stands" not in out("set box.json crest=30") + out("undo box.json")
    out("uncut box.json depth")
    assert standing()["depth"]["value"] == 170


def test_another_bench_reads_what_follows_and_keeps_what_was() -> None:
    """In inches from now on; 150 typed before is still millimetres."""
    begun()
    out("set box.json depth=150")
    out("set box.json --unit in")
    assert standing()["depth"]["value"] == 150
    assert out("show box.json").count(" in") > 20
    out("set box.json depth=6")
    assert standing()["depth"]["value"] == 152.4


def test_why_tells_the_chain_and_what_follows() -> None:
    """With the numbers put in."""
    begun()
    told = out("why box.json lid-wide")
    assert "lid side to side = outside width + 2 × overhang at each side = 232 mm + 2 × 6 mm = 244 mm" in told
    assert json.loads(out("why box.json lid_wide --json"))["chain"][-1]["name"] == "lid_wide"
    assert "From it follow: " in out("why box.json depth")


def test_the_bench_sheet_has_all_that_is_wanted_at_the_bench() -> None:
    """Parts with a box to tick, gauge, joints, order of work, what to buy, cautions; a tick where a part is cut."""
    begun()
    out("cut box.json bottom_wide=202")
    sheet = out("sheet box.json")
    for words in ("Parts:", "Joints:", "Order of work:", "Board to cut it from:", "Nails to buy:", "Bevel gauge, run"):
        assert words in sheet, words
    assert [line.split()[1] for line in sheet.splitlines() if line.startswith("  [x]")] == ["Bottom"]
    assert "does not go in between the sides" in sheet
    assert sheet.count("Take care:") >= 5


def test_an_unfinished_piece_has_what_is_known() -> None:
    """Begun with nothing given, it can be shown, printed and explained."""
    out("new box.json sloping-lid-box")
    assert "not decided yet" in out("show box.json")
    assert "Parts:" not in out("sheet box.json")
    assert "not decided yet" in out("why box.json lid_long")
    assert json.loads(out("show box.json --json"))["answer"] is None


@pytest.mark.parametrize(
    ("line", "say"),
    [
        ("burn box.json", "choose new, show, set"),
        ("show", "no words follow “show”; write tenpenny piece show FILE"),
        ("why box.json", "1 word follows “why”; write tenpenny piece why FILE name"),
        ("show box.json twice.json", "write tenpenny piece show FILE"),
        ("show nowhere.json", "There is no file “nowhere.json”"),
        ("show .", "is no file"),
        ("new box.json sloping-lid-box", "“box.json” is there already"),
        ("new other.json sloping-lid-bax", "perhaps sloping-lid-box"),
        ("new other.json chair", "no piece called “chair”; choose one like flat-lid-box, sliding-lid-box, "),
        ("new other.json slope", "“Slope” is a sum"),
        ("new no/such/place.json sloping-lid-box", "cannot be written"),
        ("new other.json sloping-lid-box depth=wide", "Depth of the sides: “wide”"),
        ("set box.json depht=3", "there is no “depht” to give; perhaps depth was meant"),
        ("set box.json depth=140 width=3", "there is no “width” to give"),
        ("set box.json", "nothing is set"),
        ("set box.json --unit furlong", "“furlong” is not one of them"),
        ("set box.json depth=140 depth=150", "given twice"),
        ("cut box.json", "nothing is cut"),
        ("cut box.json volume=3", "“volume” is nothing that is cut"),
        ("cut box.json lidlong=3", "“lidlong” is nothing that is cut; perhaps lid_long, "),
        ("cut box.json qq=3", "choose one like stock_width, stock_thickness, inside_width, depth, "),
        ("cut box.json depth=", "nothing is typed"),
        ("uncut box.json depth", "not recorded as cut"),
        ("first box.json", "write tenpenny piece first FILE name"),
        ("why box.json nothing", "tenpenny piece show box.json"),
        ("show box.json depth=3", "takes no sizes"),
        ("show box.json --metric", "there is no option"),
        ("new other.json sloping-lid-box --title", "--title stands alone"),
    ],
)
def test_what_cannot_be_done_is_said_and_nothing_is_written(line: str, say: str) -> None:
    """In a sentence, with status 2; the file is as it was, and no other has appeared."""
    before = begun().read_bytes()
    told = piece(line)
    assert (told.out, told.status) == ("", 2)
    assert say.casefold() in told.err.casefold()
    assert Path("box.json").read_bytes() == before
    assert [one.name for one in Path().iterdir()] == ["box.json"]


@pytest.mark.parametrize(
    "text",
    [
        b"",
        b"\xff\xfe{",
        b"[" * 100_000,
        b" " * (LONGEST_FILE + 1),
        b'{"format": "tenpenny piece", "version": 2}',
        b'{"format": "something else"}',
        b'{"format":"tenpenny piece","version":1,"piece":"../etc","title":"","entries":[],'
        b'"bench":{"unit":"mm","mark":"mm","angles":"tenths","currency":""}}',
        b'{"format":"tenpenny piece","version":1,"piece":"slope","title":"","entries":[],'
        b'"bench":{"unit":"mm","mark":"mm","angles":"tenths","currency":""}}',
    ],
    ids=["empty", "no text", "deep", "long", "newer", "foreign", "unknown", "a sum"],
)
@pytest.mark.parametrize("act", ["show", "set depth=150", "cut depth=150", "undo", "sheet"])
def test_a_file_that_is_no_good_is_refused_and_left(text: bytes, act: str) -> None:
    """Damaged, newer, foreign or hostile: said so, and not a byte of it changed."""
    Path("box.json").write_bytes(text)
    told = piece(f"{act.split()[0]} box.json {' '.join(act.split()[1:])}")
    assert (told.out, told.status) == ("", 2)
    assert told.err.endswith(".")
    assert Path("box.json").read_bytes() == text


def test_a_file_saved_by_an_editor_that_marks_it_is_read() -> None:
    """Some put three bytes in front of all they save; the page reads such a file too."""
    begun().write_bytes(b"\xef\xbb\xbf" + Path("box.json").read_bytes())
    assert standing()["depth"]["value"] == 150


def test_a_file_is_written_whole_or_not_at_all(monkeypatch: pytest.MonkeyPatch) -> None:
    """When the disk fails half way, the old file stands and nothing is left beside it."""
    before = begun().read_bytes()

    def full(*names: str) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    told = piece("cut box.json depth=149")
    assert told.err == "“box.json” cannot be written: no space left on device; try another name or place."
    assert Path("box.json").read_bytes() == before
    assert [one.name for one in Path().iterdir()] == ["box.json"]


@pytest.mark.skipif(os.name != "posix", reason="links and rights as POSIX has them")
def test_a_link_stays_a_link_and_rights_stay_as_they_were() -> None:
    """What the link leads to is what is written."""
    begun("real.json").chmod(0o600)
    Path("box.json").symlink_to("real.json")
    out("cut box.json depth=149")
    assert Path("box.json").is_symlink()
    assert stat.S_IMODE(Path("real.json").stat().st_mode) == 0o600
    assert '"149"' in Path("real.json").read_text("utf-8")


@pytest.mark.parametrize("act", list(DOES))
def test_every_act_has_its_help(act: str) -> None:
    """How it is written and what it does; all of them together under piece alone."""
    assert out(f"{act} --help").startswith(f"tenpenny piece {DOES[act].usage}\n    {DOES[act].help}")
    assert DOES[act].help in out("--help")
    assert f"{act} " in complete(["piece", ""])


def test_from_the_shell_it_is_the_same(capsys: pytest.CaptureFixture[str]) -> None:
    """Through the front door, with the words of the help; and completed as the rest is."""
    assert main(["piece", "new", "box.json", "sloping-lid-box"]) == 0
    assert capsys.readouterr().out.startswith("Sloping-lid box\n")
    assert main(["piece", "show", "none.json"]) == 2
    assert complete(["piece", "new", "box.json", "slop"]) == ["sloping-lid-box "]
    assert "piece " in complete(["pie"])
    assert run(["piece", "show", "box.json"]).err.startswith("There are no files here")
    assert "piece" not in command(BOX, {})

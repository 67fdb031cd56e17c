"""One grammar serves Python and the browser, and grows only where a form says so."""

import json
import re
import shutil
import subprocess

import pytest

from bezelbook.values.day import DAY_PATTERN
from bezelbook.values.grammar import Form, form_pattern, reads
from bezelbook.values.ident import ID_PATTERN
from tests.values.spoken import SIZES

NODE = shutil.which("node")
FORMS = [
    Form(dimension, signed, sized, plus_minus)
    for dimension in SIZES
    for signed in (False, True)
    for sized in (False, True)
    for plus_minus in (False, True)
]
TEXTS = [
    *("165 mm", "165 ± 1 mm", "165 mm ± 1/16 in", "6½ in", '6-1/2"', "6' 2\"", "6' 2½″", "1 h 45", "1 h 75", "20 Ω"),
    *("165", "165 mm\n", "\n165 mm", "−5 mm", "-5 mm", "165 mm caliper", "165 mm Printed", "1,000 mm", "1.000,5 mm"),
    *("165\u00a0mm", "165\u2028mm", "10 \u03bcF", "10 \u00b5F", "500 mA", "500 MA", "15°", "10 M", "10 m", "±1 mm"),
    *("2026-02-29", "2024-02-29", "2024-02-29\n", "compact-hatch-2", "con", "con\n", "con-1", "٣ mm", "165 ± 0 mm", ""),
]


def test_every_pattern_can_be_compiled() -> None:
    for form in FORMS:
        re.compile(form_pattern(form))


def test_a_form_takes_no_more_than_it_says() -> None:
    assert reads("165 mm", Form("length"))
    assert not reads("165 mm caliper", Form("length"))
    assert not reads("-165 mm", Form("length"))
    assert reads("-165 ± 1 mm caliper", Form("length", signed=True, sized=True))
    assert not reads("165 ± 1 mm", Form("length", plus_minus=False))


def test_minutes_stay_below_an_hour_and_inches_below_a_foot() -> None:
    assert [reads(f"1 h {n}", Form("time")) for n in (0, 59, 60)] == [True, True, False]
    assert [reads(f"1 ft {n} in", Form("length")) for n in (0, 11, 12)] == [True, True, False]


@pytest.mark.parametrize("dimension", sorted(SIZES))
def test_a_long_run_of_one_character_is_refused_at_once(dimension: str) -> None:
    for character in " 0.,/½-±m":
        assert not reads("1" + character * 100_000, Form(dimension, signed=True, sized=True))


@pytest.mark.skipif(NODE is None, reason="there is no JavaScript engine on this machine")
def test_a_browser_in_unicode_mode_agrees_on_every_pattern() -> None:
    patterns = [*map(form_pattern, FORMS), DAY_PATTERN, ID_PATTERN]
    script = """
        const {patterns, texts} = JSON.parse(require("fs").readFileSync(0, "utf8"));
        const found = patterns.map(p => { const r = new RegExp(p, "u"); return texts.map(t => r.test(t)); });
        process.stdout.write(JSON.stringify(found));
    """
    asked = json.dumps({"patterns": patterns, "texts": TEXTS})
    ran = subprocess.run([str(NODE), "-e", script], input=asked, capture_output=True, text=True, check=True)
    assert json.loads(ran.stdout) == [[bool(re.search(p, text)) for text in TEXTS] for p in patterns]

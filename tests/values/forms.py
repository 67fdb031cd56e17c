"""Every form that a quantity can take, and texts that are at the edge of some of them."""

from bezelbook.values.grammar import Form
from tests.values.spoken import SIZES

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

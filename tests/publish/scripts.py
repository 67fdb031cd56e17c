"""What a data script hands over, read back."""

import json
import re
from typing import Any


def handed_over(script: str) -> tuple[str, Any]:
    """The name of the function that is called, and the plain data that it is called with."""
    called = re.fullmatch(r"bezelbook\.(\w+)\((.*)\);\n", script)
    assert called, "a data script is one call on one line"
    return called[1], json.loads(called[2])

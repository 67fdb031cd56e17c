"""How the book is checked: which rules there are, what each is handed, and what came of it."""

from bezelbook.checking.run import Kept, group_of, rules
from bezelbook.checking.settling import Checked, check

__all__ = ["Checked", "Kept", "check", "group_of", "rules"]

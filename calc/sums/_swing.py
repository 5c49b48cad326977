"""A lid that swings up on a pin over its saw cut: what a batten under it must turn past.

The pin is level with the lid's upper face, over the middle of the kerf. `away` is along the lid from the pin to the
front's inner face; the front's inner arris lies on the lid's under face. Millimetres.
"""

from typing import Any

from calc import trig


def to_arris(away: Any, lid: Any) -> Any:
    """From the pin to the front's inner arris."""
    return trig.sqrt(away * away + lid * lid)


def turns_past(swing: Any, away: Any, lid: Any, batten: Any, clearance: Any) -> Any:
    """How far along the lid from the pin a batten may reach; 0 where none turns past the front.

    Its lower corner must stay nearer the pin than the arris, which is `swing` away, by the clearance.
    """
    reach, below = swing - clearance if away > 0 else 0, lid + batten
    return trig.sqrt(max(0, reach * reach - below * below))

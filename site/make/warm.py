"""Run in the browser's Python before its snapshot is taken, so that what is made at the first use has been made."""

from calc.units import factor

factor("inch", "mm")

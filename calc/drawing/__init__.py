"""Drawings to scale: wood in millimetres, ink in pixels; solids, and a piece drawn taken apart."""

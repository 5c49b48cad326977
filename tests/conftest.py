"""The same examples on every run and every machine, and no clock."""

from hypothesis import settings

settings.register_profile("steady", derandomize=True, deadline=None, max_examples=50)
settings.load_profile("steady")

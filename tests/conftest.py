"""The same examples on every run and every machine, and no clock; more of them with --hypothesis-profile=long."""

from hypothesis import settings

settings.register_profile("steady", derandomize=True, deadline=None, max_examples=15)
settings.register_profile("long", derandomize=True, deadline=None, max_examples=1000)
settings.load_profile("steady")

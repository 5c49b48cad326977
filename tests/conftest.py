"""The same examples on every run and every machine, and no clock; ten thousand of each in the profile called long."""

from hypothesis import HealthCheck, settings

settings.register_profile("steady", derandomize=True, deadline=None, max_examples=15)
settings.register_profile(
    "long", derandomize=True, deadline=None, max_examples=10_000, suppress_health_check=list(HealthCheck)
)
settings.load_profile("steady")

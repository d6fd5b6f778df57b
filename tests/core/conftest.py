"""How the core's tests run: hypothesis without chance, and helpers that several files share."""

import sys
from pathlib import Path

from hypothesis import HealthCheck, settings

# Files are collected by path, not as packages: helpers are found through the path.
sys.path.insert(0, str(Path(__file__).parent / "helpers"))

settings.register_profile("bench", derandomize=True, deadline=None, database=None, max_examples=50,
                          suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("bench")

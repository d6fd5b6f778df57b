"""The workshop: builds, proves, serves and tests Brimbook.

Only the standard library is imported here, save by what the tests use; the
modules `enter`, `command`, `environment` and what they import run before the
project's own environment exists.
"""

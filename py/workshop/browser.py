"""A Chromium for the tests: the machine's own, the distribution's, or Playwright's."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

from workshop.run import Failed, run
from workshop.say import Trouble, say

NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"]
MAC_PATHS = [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
]

# Quiet and self-contained: nothing is fetched behind a test's back.
FLAGS = [
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


def flags() -> list[str]:
    """Chromium's options for the tests; its sandbox cannot run as root."""
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    return FLAGS + ["--no-sandbox"] * as_root


def find_browser() -> Path:
    """A Chromium that starts, installed if there is none. Raises Trouble."""
    for find in (_named, _on_the_machine, _from_the_distribution, _from_playwright):
        path = find()
        if path and _starts(path):
            return path
    raise Trouble(
        "The tests need Chromium, and none could be installed (.build/logs/ tells why): install"
        " Chromium or Chrome, or name one in BRIMBOOK_CHROMIUM."
    )


def _named() -> Path | None:
    named = os.environ.get("BRIMBOOK_CHROMIUM")
    if named and not _starts(Path(named)):
        raise Trouble(f"BRIMBOOK_CHROMIUM names {named}, which does not start.")
    return Path(named) if named else None


def _on_the_machine() -> Path | None:
    found = [shutil.which(name) for name in NAMES] + MAC_PATHS
    return next((Path(path) for path in found if path and Path(path).exists()), None)


def _from_the_distribution() -> Path | None:
    if not shutil.which("apt-get"):
        return None
    leave = _leave_to_install()
    if leave is None:
        return None
    say("Installing Chromium from the distribution")
    quiet = {"DEBIAN_FRONTEND": "noninteractive"}
    try:
        run([*leave, "apt-get", "update"], log="apt-update", environment=quiet)
        run([*leave, "apt-get", "install", "-y", "chromium"], log="apt-install", environment=quiet)
    except Failed:
        return None
    return _on_the_machine()


def _leave_to_install() -> list[str] | None:
    if os.geteuid() == 0:
        return []
    if not shutil.which("sudo"):
        return None
    asked = subprocess.run(["sudo", "-n", "true"], capture_output=True)
    return ["sudo", "-n", "--preserve-env=DEBIAN_FRONTEND"] if asked.returncode == 0 else None


def _from_playwright() -> Path | None:
    from playwright.sync_api import sync_playwright

    say("Fetching Playwright's own Chromium")
    try:
        run([sys.executable, "-m", "playwright", "install", "chromium"], log="playwright-install")
    except Failed:
        return None
    with sync_playwright() as playwright:
        return Path(playwright.chromium.executable_path)


def _starts(path: Path) -> bool:
    try:
        asked = subprocess.run([path, "--version"], capture_output=True, timeout=60)
    except (OSError, subprocess.TimeoutExpired):
        return False
    return asked.returncode == 0

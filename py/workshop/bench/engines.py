"""The browser engines of this machine, and how each is started: by its own command line alone."""

import contextlib
import os
import shutil
import subprocess
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from workshop.browser import MAC_PATHS, NAMES, flags

FIREFOX_NAMES = ["firefox-esr", "firefox"]
MINI_BROWSERS = "usr/lib/*/webkit2gtk-4.*/MiniBrowser"

# Nothing on the first run, nothing from outside, no throttling of a page that nobody looks at.
FIREFOX_SETTINGS = {
    "app.normandy.enabled": False,
    "app.shield.optoutstudies.enabled": False,
    "app.update.enabled": False,
    "browser.aboutwelcome.enabled": False,
    "browser.safebrowsing.downloads.enabled": False,
    "browser.safebrowsing.malware.enabled": False,
    "browser.safebrowsing.phishing.enabled": False,
    "browser.shell.checkDefaultBrowser": False,
    "browser.startup.homepage_override.mstone": "ignore",
    "browser.startup.page": 0,
    "datareporting.healthreport.uploadEnabled": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "extensions.getAddons.cache.enabled": False,
    "extensions.update.enabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "services.settings.server": "",
    "startup.homepage_welcome_url": "",
    "toolkit.telemetry.enabled": False,
    "toolkit.telemetry.reportingpolicy.firstRun": False,
    "toolkit.telemetry.server": "",
    "trailhead.firstrun.didSeeAboutWelcome": True,
}


@dataclass(frozen=True)
class Engine:
    """An engine: its name in the report, its program, its version, and the words by which its page's process is known."""

    name: str
    program: Path
    version: str
    page_process: str

    def command(self, address: str, profile: Path) -> list[str]:
        """The command line that opens `address` in a profile's folder."""
        return [str(self.program), *_ARGUMENTS[self.name](profile), address]

    def surroundings(self, profile: Path) -> dict[str, str]:
        """Environment variables that keep everything it writes inside the profile's folder."""
        kept = {f"XDG_{kind}_HOME": str(profile / kind.lower()) for kind in ("DATA", "CACHE", "CONFIG")}
        quiet = {"NO_AT_BRIDGE": "1", "GSETTINGS_BACKEND": "memory", "MOZ_CRASHREPORTER_DISABLE": "1"}
        return {**os.environ, **kept, **quiet, "HOME": str(profile)}


def _chromium(profile: Path) -> list[str]:
    return ["--headless", f"--user-data-dir={profile}", *flags()]


def _firefox(profile: Path) -> list[str]:
    lines = [f'user_pref("{name}", {_javascript(value)});' for name, value in FIREFOX_SETTINGS.items()]
    (profile / "user.js").write_text("\n".join(lines) + "\n")
    return ["--headless", "--no-remote", "--profile", str(profile)]


def _webkit(_profile: Path) -> list[str]:
    return ["--geometry=500x900"]


_ARGUMENTS = {"chromium": _chromium, "firefox": _firefox, "webkit": _webkit}


def _javascript(value: bool | int | str) -> str:
    return str(value).lower() if isinstance(value, bool) else f'"{value}"' if isinstance(value, str) else str(value)


def installed() -> tuple[list[Engine], dict[str, str]]:
    """The engines that can be measured here; and for each of the others, why not."""
    found, lacking = [], {}
    for name, program, process, why in (
        ("chromium", _first(NAMES, MAC_PATHS), "--type=renderer", "no Chromium or Chrome"),
        ("firefox", _first(FIREFOX_NAMES), "-contentproc", "no Firefox (Debian: firefox-esr)"),
        ("webkit", _mini_browser(), "WebKitWebProcess", "no WebKitGTK MiniBrowser with Xvfb (Debian: webkit2gtk-driver, xvfb)"),
    ):
        if program:
            found.append(Engine(name, program, _version(program), process))
        else:
            lacking[name] = why
    return found, lacking


def _first(names: list[str], paths: list[str] = ()) -> Path | None:
    """The first program of these names on the PATH, or of these files; BRIMBOOK_CHROMIUM goes before Chromium's."""
    named = [os.environ.get("BRIMBOOK_CHROMIUM")] if names is NAMES else []
    candidates = [*named, *map(shutil.which, names), *paths]
    return next((Path(path) for path in candidates if path and Path(path).exists()), None)


def _mini_browser() -> Path | None:
    found = sorted(Path("/").glob(MINI_BROWSERS))
    return found[-1] if found and shutil.which("Xvfb") else None


def _version(program: Path) -> str:
    try:
        asked = subprocess.run([program, "--version"], capture_output=True, text=True, timeout=30)
    except (OSError, subprocess.TimeoutExpired):
        return "of unknown version"
    return asked.stdout.strip().splitlines()[0] if asked.stdout.strip() else "of unknown version"


@contextlib.contextmanager
def screen(engine: Engine) -> Iterator[dict[str, str]]:
    """Environment variables that name a screen: an Xvfb of its own for WebKitGTK, which knows no headless mode."""
    if engine.name != "webkit":
        yield {}
        return
    read, write = os.pipe()
    command = ["Xvfb", "-displayfd", str(write), "-screen", "0", "800x1000x24", "-nolisten", "tcp"]
    server = subprocess.Popen(command, pass_fds=[write], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.close(write)
    try:
        with os.fdopen(read) as said:
            display = said.readline().strip()
        yield {"DISPLAY": f":{display}", "GDK_BACKEND": "x11"}
    finally:
        server.terminate()
        server.wait()

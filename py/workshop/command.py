"""The command line: what may be asked of build.py."""

import argparse
from collections.abc import Sequence


def read(arguments: Sequence[str]) -> argparse.Namespace:
    """What the person asked for: `.what` is build, serve, test or bench; exits on a mistake."""
    if arguments and arguments[0] == "test":
        # Everything after "test" is pytest's own, options included.
        return argparse.Namespace(what="test", for_pytest=list(arguments[1:]))
    parser = argparse.ArgumentParser(prog="build.py", description="Build, serve, test and measure Brimbook.")
    parser.set_defaults(what="build")
    kinds = parser.add_subparsers(dest="what", metavar="build | serve | test | bench")
    kinds.add_parser("build", help="build dist/ (the same as no word at all)")
    serve = kinds.add_parser("serve", help="build dist/ and serve it on this machine")
    serve.add_argument("--port", type=_port, default=8314, help="the first port to try (8314)")
    kinds.add_parser("test", help="build and run the tests; what follows goes to pytest")
    bench = kinds.add_parser("bench", help="build, and time a stock start against ours in the browsers of this machine")
    bench.add_argument("--json", action="store_true", help="print one JSON object instead of a table")
    bench.add_argument("--runs", type=_runs, default=7, help="runs of each condition (7)")
    bench.add_argument("--only", choices=["starts", "reading", "book"],
                       help="only one part: starts, or in Chromium reading a model's file, or a book of many vessels")
    asked = parser.parse_args(arguments)
    asked.what = asked.what or "build"
    return asked


def _port(text: str) -> int:
    if not text.isdigit() or not 1 <= int(text) <= 65535:
        raise argparse.ArgumentTypeError("a port is a number from 1 to 65535")
    return int(text)


def _runs(text: str) -> int:
    if not text.isdigit() or not 1 <= int(text) <= 100:
        raise argparse.ArgumentTypeError("runs are a number from 1 to 100")
    return int(text)

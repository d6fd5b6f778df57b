"""What the workshop tells the person at the terminal."""


class Trouble(Exception):
    """An expected failure, told in one sentence and without a traceback."""


def say(sentence: str) -> None:
    """Print one short line of progress at once."""
    print(sentence, flush=True)

"""A vessel with a first label, worked out, for tests."""

from arithmetic import works_out
from vessels import put, vessel

from brimbook.settings import display_of, whole
from brimbook.work_out import work_out


def answer(record=None, how=None, **texts):
    """A vessel worked out, with a first label of these texts."""
    record = vessel() if record is None else record
    for name, text in texts.items():
        put(record, f"labels.0.{name.replace('__', '.')}", text)
    return work_out(record, display_of(whole(how or {})))


def told(found, name):
    """A figure of the first label whose numbers are worked out again."""
    figure = found.figures[f"labels.0.{name}"]
    works_out(figure.to_plain())
    return figure


def fault(found, name):
    """What is wrong with an entry of the first label."""
    return found.said.fault_at(f"labels.0.{name}")


def weighed(*texts):
    """Finished candles that were weighed."""
    return [{"weight": text} for text in texts]

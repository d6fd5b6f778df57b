"""Timers: what is left, told once a second."""

import pytest
from vessels import ask

NOW = "2026-11-24T10:02:33"


def told(due, now=NOW):
    (only,) = ask("countdown", now=now, due=[due], settings={})
    return only["shown"], only["state"]


@pytest.mark.parametrize(("due", "shown", "state"), [
    ("2026-11-24T10:45", "in 42 min", "running"), ("2026-11-24T12:10", "in 2 h 7 min", "running"),
    ("2026-11-27T10:02", "in 3 d", "running"), ("2026-12-24T10:02", "in 30 d", "running"),
    ("2026-11-24T10:12", "in 9 min 27 s", "soon"), ("2026-11-24T10:03", "in 27 s", "soon"),
    ("2026-11-24T10:02", "now", "due"), ("2026-11-24T10:01", "now", "due"), ("2026-11-24T10:00", "2 min ago", "past"),
    ("2026-11-24T08:00", "2 h ago", "past"), ("2026-11-20T08:00", "4 d ago", "past"),
])
def test_what_is_left(due, shown, state):
    assert told(due) == (shown, state)


@pytest.mark.parametrize(("now", "state"), [
    ("2026-11-24T10:34:59", "running"), ("2026-11-24T10:35:00", "soon"), ("2026-11-24T10:44:59", "soon"),
    ("2026-11-24T10:45:00", "due"), ("2026-11-24T10:47:00", "due"), ("2026-11-24T10:47:01", "past")])
def test_the_states_change_at_their_moment(now, state):
    assert told("2026-11-24T10:45", now)[1] == state


def test_seconds_are_told_in_the_last_ten_minutes_only():
    assert "s" not in told("2026-11-24T10:45", "2026-11-24T10:34:30")[0]
    assert told("2026-11-24T10:45", "2026-11-24T10:35:00")[0] == "in 10 min"
    assert told("2026-11-24T10:45", "2026-11-24T10:35:01")[0] == "in 9 min 59 s"


@pytest.mark.parametrize("due", ["", "soon", "2026-11-24", "2026-11-24T10:45Z", None, 5, [], {}], ids=repr)
def test_what_can_t_be_read_shows_nothing(due):
    assert told(due) == ("", "past")


@pytest.mark.parametrize("now", ["", None, 5, "noon"], ids=repr)
def test_a_clock_that_can_t_be_read_shows_nothing(now):
    assert told("2026-11-24T10:45", now) == ("", "past")


@pytest.mark.parametrize("due", [None, 5, "x", {}], ids=repr)
def test_no_list_is_no_timers(due):
    assert ask("countdown", now=NOW, due=due, settings={}) == []


def test_the_order_is_kept_and_only_fifty_are_worked_out():
    answers = ask("countdown", now=NOW, due=[f"2026-11-24T{11 + row // 60}:{row % 60:02d}" for row in range(80)], settings={})
    assert len(answers) == 80 and answers[0]["shown"] == "in 57 min" and answers[49]["shown"] == "in 1 h 46 min"
    assert {each["shown"] for each in answers[50:]} == {""}

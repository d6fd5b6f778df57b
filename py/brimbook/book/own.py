"""What the maker keeps besides vessels, beside what a file holds of it: materials, wicks, the plan, settings."""

from typing import Any

from brimbook.book.columns import Columns
from brimbook.book.compare import differences
from brimbook.book.salvage import OWN
from brimbook.record import tree

MOST_ITEMS = 5000
_NAMES = {"materials": "My materials", "wicks": "My wicks", "plan": "What to make", "settings": "Settings"}
_ONE, _MANY = {"materials": "material", "wicks": "wick", "plan": "vessel"}, {"materials": "materials", "wicks": "wicks", "plan": "vessels"}
_TOLD = {"decimal": "decimal mark", "mass": "weights", "length": "lengths", "temperature": "temperatures", "paper": "paper",
         "readability": "the scale's steps", "currency": "currency"}
_MOST_TOLD = 3
_LONGEST_SETTING = 40


def compare_own(theirs: dict[str, Any], ours: Any) -> tuple[list[dict[str, Any]], list[str]]:
    """What a file holds of the maker's own beside what is kept, and sentences on what can't be taken [rows and sentences].

    theirs: of the file [record].
    ours: as it is kept [record].

    A row holds the value to keep if it is taken: nothing that is kept is missing from it. Of things that are only in the file
    there is one row, of things that differ another, whose value holds the new ones too.

    >>> rows, _ = compare_own({"wicks": [{"name": "Cotton 6"}]}, {"wicks": []})
    >>> rows[0]["state"], rows[0]["says"], rows[0]["value"]
    ('new', '1 wick that is not among yours: Cotton 6.', [{'name': 'Cotton 6'}])
    """
    kept = ours if isinstance(ours, dict) else {}
    rows, refused = [], []
    for key in OWN:
        if key not in theirs:
            continue
        value = theirs[key]
        if key == "settings" and isinstance(value, dict):
            rows += _settings_rows(value, kept.get(key))
        elif key != "settings" and isinstance(value, list) and len(value) <= MOST_ITEMS:
            good = [item for item in value if isinstance(item, dict) and tree.within_limits(item)]
            rows += _list_rows(key, good, kept.get(key))
            refused += [] if len(good) == len(value) else [f"Some of {_NAMES[key]} in the file can't be read and was left out."]
        else:
            refused.append(f"{_NAMES[key]} in the file can't be read and was left out.")
    return rows, refused


def _row(key: str, state: str, says: str, value: Any) -> dict[str, Any]:
    return {"key": key, "name": _NAMES[key], "state": state, "says": says, "value": value}


def _mark(key: str, item: dict[str, Any]) -> str:
    """By what two things of a list are held to be the same one."""
    name = item.get("id" if key == "plan" else "name")
    return name.strip().casefold() if isinstance(name, str) else ""


def lean(part: Any) -> Any:
    """A part of a record without what says nothing: empty texts, and empty parts except in the middle of a list [record].

    part: a record, or a part of one [record].

    >>> lean({"name": "", "casts": [{}, {"pieces": "2", "left": ""}, {}]})
    {'casts': [{}, {'pieces': '2'}]}
    """
    if isinstance(part, dict):
        kept = {step: lean(branch) for step, branch in part.items()}
        return {step: branch for step, branch in kept.items() if not _says_nothing(branch)}
    if not isinstance(part, list):
        return part
    items = [lean(branch) for branch in part]
    while items and _says_nothing(items[-1]):
        items.pop()
    return items


def _says_nothing(branch: Any) -> bool:
    return branch == "" or branch == {} or branch == []


def _list_rows(key: str, theirs: list[dict[str, Any]], ours: Any) -> list[dict[str, Any]]:
    kept = ours if isinstance(ours, list) else []
    places = {_mark(key, item): place for place, item in enumerate(kept) if isinstance(item, dict) and _mark(key, item)}
    # One without a name has nothing to be known by but itself.
    known = [lean(item) for item in kept if isinstance(item, dict) and not _mark(key, item)]
    added: dict[str, dict[str, Any]] = {}
    nameless, apart = [], {}
    for item in theirs:
        mark = _mark(key, item)
        if not mark:
            nameless += [] if not lean(item) or lean(item) in known else [item]
        elif mark not in places:
            added[mark] = item
        elif lean(kept[places[mark]]) != lean(item):
            apart[places[mark]] = item
    new = [*added.values(), *nameless]
    rows = [_row(key, "new", _new_says(key, new), [*kept, *new])] if new else []
    if apart:
        rows.append(_row(key, "changed", _apart_says(key, kept, apart), [*(apart.get(place, item) for place, item in enumerate(kept)), *new]))
    return rows or [_row(key, "same", "As in the file.", kept)]


def _new_says(key: str, new: list[dict[str, Any]]) -> str:
    counted = f"{len(new)} {_ONE[key] if len(new) == 1 else _MANY[key]}"
    if key == "plan":
        return f"{counted} that your plan does not hold."
    return f"{counted} that {'is' if len(new) == 1 else 'are'} not among yours: {_listed([_called(item) for item in new])}."


def _apart_says(key: str, kept: list[Any], apart: dict[int, dict[str, Any]]) -> str:
    place, item = next(iter(apart.items()))
    first = " ".join(differences(_as_record(key, kept[place]), _as_record(key, item), Columns())[:_MOST_TOLD])
    if key == "plan":
        return f"{len(apart)} of your plan with another count. {first}"
    counted = "1 differs" if len(apart) == 1 else f"{len(apart)} differ"
    return f"{counted}: {_listed([_called(each) for each in apart.values()])}. {first}"


def _as_record(key: str, item: Any) -> dict[str, Any]:
    return {key: [item]}


def _called(item: dict[str, Any]) -> str:
    name = item.get("name")
    return name.strip()[:60] if isinstance(name, str) and name.strip() else "one without a name"


def _listed(names: list[str]) -> str:
    more = [f"and {len(names) - _MOST_TOLD} more"] if len(names) > _MOST_TOLD else []
    return ", ".join([*names[:_MOST_TOLD], *more])


def _settings_rows(theirs: dict[str, Any], ours: Any) -> list[dict[str, Any]]:
    kept = ours if isinstance(ours, dict) else {}
    fit = {name: value for name, value in theirs.items()
           if name in _TOLD and isinstance(value, str) and len(value) <= _LONGEST_SETTING}
    apart = [name for name, value in fit.items() if kept.get(name) != value]
    if not apart:
        return [_row("settings", "same", "As in the file.", kept)]
    told = "; ".join(f"{_TOLD[name]}: {kept.get(name) or 'as usual'} here, {fit[name]} in the file" for name in apart[:_MOST_TOLD])
    return [_row("settings", "changed", f"{told[0].upper()}{told[1:]}.", {**kept, **fit})]

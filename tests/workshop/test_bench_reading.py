"""The part of the bench that reads files: its made-up file, its reckoning, its table; no browser is started."""

import json
import subprocess
import sys

import pytest

from workshop.bench import reading, report
from workshop.bench.processes import own_peak
from workshop.bench.reading_file import bumpy_cup
from workshop.command import read
from workshop.places import PY


def measured(ms, volume=100.0):
    runs = {each: [{"ms": time, "plain": time / 2, "memory": 10.0 * time, "volume": volume}] for each, time in zip(reading.BY, ms)}
    return {"50000": {"triangles": 48_664, "bytes": 2_433_284, "runs": runs}}


def test_the_ratio_is_of_the_page_to_the_reference():
    said = reading.told(measured((30.0, 20.0, 10.0)))["50000"]
    assert said["ratio"] == 3.0 and said["ms"] == {"page": 30.0, "core": 20.0, "reference": 10.0} and said["volumes_agree"]


def test_the_table_tells_all_of_it_and_volumes_that_do_not_agree():
    found = measured((30.0, 20.0, 10.0))
    assert "| 48,664 | 30 | 20 | 10 | 3.0 | 300 | 200 | 100 | 5 |" in reading.table(reading.told(found))
    found["50000"]["runs"]["core"][0]["volume"] = 101.0
    assert "do not agree" in report.markdown({"reading": reading.told(found)})


@pytest.mark.parametrize("count", [5_000, 20_000])
def test_the_made_up_cup_has_about_so_many_triangles(count):
    data = bumpy_cup(count)
    triangles = (len(data) - 84) // 50
    assert int.from_bytes(data[80:84], "little") == triangles and 0.8 * count < triangles <= 1.02 * count


def test_core_and_reference_read_the_same_volume(tmp_path):
    path = tmp_path / "made.stl"
    path.write_bytes(bumpy_cup(2_000))
    said = [json.loads(subprocess.run([sys.executable, "-m", module, str(path)], env={"PYTHONPATH": str(PY)}, check=True,
                                      capture_output=True, text=True).stdout)
            for module in ("workshop.bench.reading_core", "workshop.bench.reading_reference")]
    assert said[0]["volume"] == pytest.approx(said[1]["volume"], rel=1e-9)
    assert said[1]["ms"] > said[1]["plain"] > 0 and all(one["ms"] > 0 and one["memory"] is not None for one in said) or own_peak() is None


def test_the_command_takes_one_part():
    assert read(["bench"]).only is None and read(["bench", "--only", "reading"]).only == "reading"
    with pytest.raises(SystemExit):
        read(["bench", "--only", "lunch"])

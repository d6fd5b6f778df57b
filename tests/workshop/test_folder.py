"""The built page works in a folder of a site, not only at its root."""

from urllib.parse import urlsplit

import pytest

from workshop.phone import Phone
from workshop.serve import Server


@pytest.fixture
def shop(dist, tmp_path, browser):
    """A phone for a site that has the page in its folder shop/bench/."""
    (tmp_path / "shop").mkdir()
    (tmp_path / "shop" / "bench").symlink_to(dist, target_is_directory=True)
    server = Server(tmp_path).start()
    phone = Phone(browser, f"{server.address}shop/bench/")
    yield phone
    phone.close()
    server.stop()


def test_the_page_and_its_core_load_from_a_folder(shop):
    answers = []
    shop.context.on("response", lambda answer: answers.append(answer))
    with shop.page.expect_response("**/image/pages.gz", timeout=60_000):
        shop.open()
    shop.page.wait_for_load_state("load")
    assert [answer.url for answer in answers if answer.status >= 400] == []
    assert {urlsplit(answer.url).path.startswith("/shop/bench/") for answer in answers} == {True}
    shop.check()

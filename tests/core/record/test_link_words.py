"""The words of a version of links never change: one letter more and every old link is lost."""

import hashlib

from brimbook.record.link_words import WORDS_1, WORDS_2, WORDS_3, WORDS_4

SHA256 = "8906d9f1d80b5fee6f4a35f00909352beedfed504153dcd5d115b1cfeb981026"
SHA256_2 = "670d18b08c5afeb38c451f05ec3aa693a4f35aa394fa2cbe43e307ea01ecb5af"

SHA256_3 = "e230b493523ea4a4c757760acb68c51a40370d264f46d1ce24a94860dbbf5f55"

SHA256_4 = "43538b483ad9c46df07c428477640638c47e4f292d59e248405db32f0020fc36"


def test_the_words_of_version_1_are_as_they_were():
    assert hashlib.sha256(WORDS_1).hexdigest() == SHA256


def test_the_words_of_version_2_are_as_they_were():
    assert hashlib.sha256(WORDS_2).hexdigest() == SHA256_2


def test_the_words_of_version_3_are_as_they_were():
    assert hashlib.sha256(WORDS_3).hexdigest() == SHA256_3


def test_the_words_of_version_4_are_as_they_were():
    assert hashlib.sha256(WORDS_4).hexdigest() == SHA256_4


def test_they_are_within_what_deflate_can_see():
    assert len(WORDS_1) < len(WORDS_2) < len(WORDS_3) < len(WORDS_4) <= 32_768 - 262

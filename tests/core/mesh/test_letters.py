"""Numbers as letters."""

import pytest

from brimbook.mesh.letters import ALPHABET, Packer, Unpacker, note, note_letters, opened, sealed
from brimbook.mesh.triangles import ModelError


def test_what_goes_in_comes_out():
    packer = Packer()
    packer.put(5, 3)
    packer.share(2.5, 10.0, 20)
    packer.number(1234.5)
    packer.put(99, 4)
    unpacker = Unpacker(packer.letters())
    assert unpacker.take(3) == 5 and unpacker.share(10.0, 20) == pytest.approx(2.5, abs=1e-5)
    assert unpacker.number() == 1234.5 and unpacker.take(4) == 15
    unpacker.end()


@pytest.mark.parametrize("letters", ["", "A", "AAAAA"])
def test_missing_letters_are_noticed(letters):
    with pytest.raises(ModelError):
        Unpacker(letters).number()


@pytest.mark.parametrize("bits", ["0" + 8 * "1" + 23 * "0", "0" + 8 * "1" + 23 * "1", "1" + 31 * "1", "1" + 7 * "0" + "1" + 23 * "0"],
                         ids=["infinite", "no number", "no number below 0", "below 0"])
def test_numbers_that_make_no_sense_are_refused(bits):
    bits += "0000"
    with pytest.raises(ModelError):
        Unpacker("".join(ALPHABET[int(bits[start:start + 6], 2)] for start in range(0, 36, 6))).number()


def test_letters_left_over_are_noticed():
    unpacker = Unpacker("AB")
    unpacker.take(6)
    with pytest.raises(ModelError):
        unpacker.end()


def test_a_seal_tells_a_changed_letter_and_another_version():
    text = sealed("a", "HELLO")
    assert opened("a", text, 20) == "HELLO"
    for other in (text[:-1], text[:-1] + "P", "b" + text[1:], text + "A"):
        with pytest.raises(ModelError):
            opened("a", other, 20)
    with pytest.raises(ModelError):
        opened("a", text, 9)


def test_notes():
    assert note(note_letters("It's 90° (2 %), so – turn it?")) == "It's 90° (2 %), so – turn it?"
    for letters in ("~", "a~", "a~z", "a b", "ä"):
        with pytest.raises(ModelError):
            note(letters)

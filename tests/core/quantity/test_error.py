"""What is wrong with a text, as a sentence."""

from brimbook.quantity.error import QuantityError


def test_its_message_is_its_sentence():
    error = QuantityError("Type a number.")
    assert error.sentence == "Type a number." and isinstance(error, ValueError)

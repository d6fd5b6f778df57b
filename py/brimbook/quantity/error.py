"""What is wrong with a text that should have been a quantity."""


class QuantityError(ValueError):
    """A text that cannot be understood; its message is a sentence for the maker."""

    @property
    def sentence(self) -> str:
        """What is wrong and what would be right [text]."""
        return str(self)

"""Where pieces are kept, as the command line sees it; `calc.__main__` has the disk."""

from typing import Protocol


class Files(Protocol):
    """Where pieces are kept. Both refuse in a sentence what cannot be read or written."""

    def read(self, name: str) -> str:
        """The text of a file."""

    def write(self, name: str, text: str, new: bool = False) -> None:
        """Put a text in a file, whole or not at all; never over another when it is to be `new`."""

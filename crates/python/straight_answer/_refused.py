"""What cannot be read or asked, as an exception."""

from __future__ import annotations


class Refused(ValueError):
    """What cannot be read or asked, with its place and a remedy."""

    def __init__(self, kind: str, place: str, message: str, remedy: str) -> None:
        super().__init__(kind, place, message, remedy)
        #: Stable name of the kind.
        self.kind = kind
        #: The file, or the field of the request.
        self.place = place
        #: What is wrong, in plain words.
        self.message = message
        #: What to do about it.
        self.remedy = remedy

    def __str__(self) -> str:
        return f"{self.place}: {self.message} {self.remedy}"

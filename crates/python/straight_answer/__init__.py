"""Whether two golf clubs really perform differently, or whether the session cannot say; and what many fittings bring.

The numbers are those of the page, to the last bit. Everything is in yards, mph, rpm, degrees, seconds and millimeters, right
of the target positive; a gap is candidate - baseline. ``unit`` and ``language`` change words, never a number: margins and
promises are given in the same units in which numbers come out.

>>> import straight_answer
>>> shots = "Club,Carry\\nOwn,250\\nOwn,244\\nOwn,252\\nB,256\\nB,262\\nB,259\\n"
>>> report = straight_answer.check(shots)
>>> report["asked"]["measure"]
'carry'
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any, Union

from . import _native
from ._refused import Refused

if TYPE_CHECKING:
    import pandas

__all__ = ["Many", "Refused", "Season", "Session", "check", "many", "read"]

#: A text, the bytes of a file, the path of one, or a frame of shots.
Source = Union[str, bytes, "os.PathLike[str]", "pandas.DataFrame"]


class Session:
    """A session as it was read: shots, and what is worth knowing of the reading."""

    def __init__(self, native: _native.Session) -> None:
        self._native = native
        self._about = json.loads(native.about())

    @property
    def place(self) -> str:
        """Where it was found."""
        return self._native.place

    @property
    def data(self) -> dict[str, Any]:
        """Builds, measures, shots and averages, as the page has them; yards, mph, rpm, degrees."""
        return json.loads(self._native.session())

    @property
    def question(self) -> dict[str, Any] | None:
        """What was asked, where the file says it."""
        return self._about["question"]

    @property
    def problems(self) -> list[dict[str, Any]]:
        """Rows and cells that could not be used, each with its place and a remedy."""
        return self._about["problems"]

    @property
    def notices(self) -> list[dict[str, Any]]:
        """Guesses and things worth knowing."""
        return self._about["notices"]

    @property
    def doubts(self) -> list[dict[str, Any]]:
        """What only the golfer can say, and an answer waits for. Say it in ``hints={"settled": {key: says}}``."""
        return self._about["doubts"]

    def csv(self) -> str:
        """The tool's own CSV, which reads back identical."""
        return self._native.csv()

    def frame(self) -> pandas.DataFrame:
        """A row for each shot: build, round, why it is left out, and each measure in yards, mph, rpm, degrees."""
        import pandas

        data = self.data
        names = [build["name"] for build in data["builds"]]
        rows = [
            {"build": names[shot["build"]], "round": shot["round"], "left_out": shot["left_out"], **shot["values"]}
            for shot in data["shots"]
        ]
        return pandas.DataFrame(rows, columns=["build", "round", "left_out", *data["measures"]])


class Season:
    """A pile of sessions, filled here or in other processes.

    What is kept of a session is what was judged of it, under what it holds: a copy counts once, and seasons put together in
    any order, some of them twice, give the same result to the last bit. It can be pickled.
    """

    def __init__(
        self,
        measure: str = "carry",
        *,
        margin: float | None = None,
        goal: str | None = None,
        sent: str = "not_said",
        rate: float = 0.1,
        names: Mapping[str, str] | None = None,
        claims: Mapping[str, float] | None = None,
        hints: Mapping[str, Any] | None = None,
    ) -> None:
        """``margin`` and ``claims`` are in the unit of the measure (yards for carry). ``sent`` is ``"all"``, ``"picked"`` or
        ``"not_said"``: how the sessions came to be sent. ``rate`` is the part of the list that may be luck. ``names`` says of
        clubs whether they are ``"own"``, ``"new"`` or ``"tried"``; ``claims`` holds what was promised, by the name of the file.
        """
        question = {"measure": measure, "margin": margin, "goal": goal, "sent": sent, "rate": rate}
        about = {"names": dict(names or {}), "claims": dict(claims or {}), "hints": hints and dict(hints)}
        self._native = _native.Season(json.dumps(question), json.dumps(about))

    def add(self, source: Source | Session, place: str | None = None, *, claimed: float | None = None) -> None:
        """Judges one session. What cannot be read is kept with its reason, and stops nothing."""
        try:
            session = source if isinstance(source, Session) else read(source, place=place)
        except Refused as refused:
            self._native.take_unread(refused.place, refused.kind, refused.message, refused.remedy)
            return
        self._native.take(session._native, claimed)

    def add_paths(self, paths: Iterable[str | os.PathLike[str]], *, threads: int | None = None) -> None:
        """Reads and judges files and all that lies in folders, on every core where ``threads`` is left open."""
        self._native.take_paths([os.fspath(path) for path in paths], threads)

    def merge(self, other: Season) -> Season:
        """Puts another one in, and gives itself."""
        self._native.merge(other._native)
        return self

    def answer(self, *, language: str = "en", unit: str = "yards") -> Many:
        """The whole pile, answered."""
        return Many(json.loads(self._native.answer(language, unit)))

    def __len__(self) -> int:
        return len(self._native)

    def __reduce__(self) -> tuple[Any, tuple[str]]:
        return (_unpacked, (self._native.packed(),))


class Many(dict):
    """A pile's answer, as the page's ``many`` gives it; ``frame()`` has a row for each session."""

    def __str__(self) -> str:
        words = self["words"]
        lines = [words[key] for key in ("headline", "brings", "luck", "promised", "sent")] + words["not_pooled"]
        return "\n".join(line for line in lines if line)

    def frame(self) -> pandas.DataFrame:
        """A row for each session: its own answer, its gap and the gap pulled toward what fittings here bring, candidate - baseline."""
        import pandas

        def ends(found: dict[str, Any] | None, name: str) -> dict[str, Any]:
            if found is None:
                return {name: None, f"{name}_low": None, f"{name}_high": None}
            interval = found["interval"]
            return {name: found["value"], f"{name}_low": interval["low"], f"{name}_high": interval["high"]}

        columns = [
            "place", "copies", "baseline", "candidate", "decision", "direction", "matters",
            "gap", "gap_low", "gap_high", "pulled", "pulled_low", "pulled_high",
            "listed_from", "is_listed", "claimed", "not_pooled",
        ]  # fmt: skip
        rows = []
        for one in self["each"]:
            decision = one.get("decision") or {}
            rows.append(
                {
                    "place": one["places"][0],
                    "copies": len(one["places"]) - 1,
                    "baseline": one["baseline"],
                    "candidate": one["candidate"],
                    "decision": decision.get("kind"),
                    "direction": decision.get("direction"),
                    "matters": decision.get("matters"),
                    **ends(one.get("gap"), "gap"),
                    **ends(one.get("pulled"), "pulled"),
                    "listed_from": one.get("listed_from"),
                    "is_listed": one["is_listed"],
                    "claimed": one.get("claimed"),
                    "not_pooled": one.get("not_pooled"),
                }
            )
        return pandas.DataFrame(rows, columns=columns)


def read(
    source: Source,
    *,
    place: str | None = None,
    hints: Mapping[str, Any] | None = None,
    language: str = "en",
    unit: str = "yards",
) -> Session:
    """Reads a session from a text, the bytes of a file, a path, or a frame of shots.

    A ``str`` is the text itself; a path is an ``os.PathLike``. The columns of a frame are headings as in a file, such as
    ``Club``, ``Round``, ``Carry (yd)``. Raises :class:`Refused`.
    """
    text, found = _given(source)
    return Session(_native.read(text, place or found, hints and json.dumps(dict(hints)), language, unit))


def check(
    source: Source | Session,
    *,
    baseline: str | None = None,
    candidate: str | None = None,
    measure: str | None = None,
    margin: float | None = None,
    goal: str | None = None,
    stopping: str | Mapping[str, Any] | None = None,
    language: str = "en",
    unit: str = "yards",
) -> dict[str, Any]:
    """Answers one session: the page's report.

    ``margin`` is the smallest difference that matters, in the unit of the measure (yards for carry). ``stopping`` is
    ``"fixed"``, ``"not_fixed"``, ``"unknown"`` or a plan. What is left open stays as the file says. Raises :class:`Refused`,
    also where something only the golfer knows would change the answer.
    """
    session = source if isinstance(source, Session) else read(source, language=language, unit=unit)
    asked = {
        "baseline": baseline,
        "candidate": candidate,
        "measure": measure,
        "goal": goal,
        "margin": margin,
        "stopping": stopping,
    }
    return json.loads(session._native.check(json.dumps(asked), language, unit))


def many(
    sources: Iterable[str | os.PathLike[str] | tuple[str, Source]] | pandas.DataFrame,
    *,
    by: str | None = None,
    threads: int | None = None,
    language: str = "en",
    unit: str = "yards",
    **asked: Any,
) -> Many:
    """Answers what many sessions bring together.

    ``sources`` are paths of files and folders, pairs of a place and a session, or one frame of all shots whose column ``by``
    names the session. Everything else is what :class:`Season` takes.
    """
    season = Season(**asked)
    if _is_frame(sources):
        if by is None:
            raise TypeError("a frame of many sessions needs `by`, the column that names the session")
        for place, shots in sources.groupby(by, sort=False):
            season.add(shots.drop(columns=by), str(place))
        return season.answer(language=language, unit=unit)
    paths = []
    for source in sources:
        if isinstance(source, tuple):
            season.add(source[1], source[0])
        else:
            paths.append(source)
    season.add_paths(paths, threads=threads)
    return season.answer(language=language, unit=unit)


def _unpacked(packed: str) -> Season:
    season = Season.__new__(Season)
    season._native = _native.Season.unpacked(packed)
    return season


def _is_frame(source: Any) -> bool:
    return hasattr(source, "to_csv") and hasattr(source, "groupby")


def _given(source: Source) -> tuple[str | bytes, str]:
    if _is_frame(source):
        return source.to_csv(index=False), "frame"
    if isinstance(source, (str, bytes)):
        return source, "text"
    place = os.fspath(source)
    try:
        # As much as is read at all, and one byte that says there is more.
        with open(place, "rb") as file:
            return file.read(_native.MOST_BYTES + 1), place
    except OSError as error:
        raise Refused("cannot_open", place, f"{error.strerror or error}.", "See whether it is there, and whether you may read it.") from error

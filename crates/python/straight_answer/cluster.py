"""A pile that outgrows one machine, on engines that exist: the same function for Dask, Spark and Ray.

Each part of a pile becomes a season of its own, a few hundred bytes for each session, and seasons are put together in any
order. A part that is judged twice, because a worker was lost in the middle, counts once.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Any

from . import Season

if TYPE_CHECKING:
    import pandas


def season_of_files(paths: Iterable[str], **asked: Any) -> Season:
    """A season of CSV files, or of Parquet files of which each holds the shots of one session."""
    season = Season(**asked)
    for path in paths:
        if str(path).endswith(".parquet"):
            season.add(_parquet(path), str(path))
        else:
            season.add_paths([path], threads=1)
    return season


def put_together(seasons: Iterable[Season]) -> Season:
    """One season of several."""
    seasons = iter(seasons)
    whole = next(seasons)
    for season in seasons:
        whole.merge(season)
    return whole


def on_dask(client: Any, paths: Iterable[str], *, files_each: int = 200, **asked: Any) -> Season:
    """Judges files on the workers of a ``dask.distributed.Client``, so many at a time."""
    paths = sorted(str(path) for path in paths)
    parts = [paths[at : at + files_each] for at in range(0, len(paths), files_each)]
    futures = client.map(season_of_files, parts, pure=False, **asked)
    # Eight at a time on the workers: no process ever holds more than what it puts together.
    while len(futures) > 1:
        groups = [futures[at : at + 8] for at in range(0, len(futures), 8)]
        futures = [client.submit(put_together, group, pure=False) for group in groups]
    return futures[0].result() if futures else Season(**asked)


def in_pandas(frames: Iterable[pandas.DataFrame], *, by: str = "session", **asked: Any) -> Iterator[pandas.DataFrame]:
    """For Spark's ``DataFrame.mapInPandas(in_pandas, "season binary")``; for Ray ``map_groups(lambda shots: next(in_pandas([shots])))``.

    Takes frames of shots whose column ``by`` names the session (all shots of one in one part: repartition by it), gives one
    season as bytes; :func:`of_rows` puts the rows together.
    """
    import pickle

    import pandas

    # A session may go on in the next frame of the same part.
    shots = pandas.concat(list(frames), ignore_index=True)
    season = Season(**asked)
    for place, own in shots.groupby(by, sort=False):
        season.add(own.drop(columns=by), str(place))
    yield pandas.DataFrame({"season": [pickle.dumps(season)]})


def of_rows(rows: Iterable[bytes]) -> Season:
    """One season of those that :func:`in_pandas` gave."""
    import pickle

    return put_together(pickle.loads(row) for row in rows)


def _parquet(path: str) -> pandas.DataFrame | bytes:
    import pandas

    try:
        return pandas.read_parquet(path)
    except Exception:
        # Read as what it is, so that it is listed with a reason.
        with open(path, "rb") as file:
            return file.read()

"""Judges a folder of CSV or Parquet files with Dask: python dask_season.py FOLDER [SCHEDULER]."""

import sys
from pathlib import Path

from dask.distributed import Client
from straight_answer.cluster import on_dask

if __name__ == "__main__":
    folder, *scheduler = sys.argv[1:]
    client = Client(scheduler[0]) if scheduler else Client(n_workers=2, threads_per_worker=1)
    paths = [str(path) for path in Path(folder).rglob("*") if path.is_file()]
    print(on_dask(client, paths, measure="carry", margin=5).answer())
    client.close()

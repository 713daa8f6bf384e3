"""A pile on two processes of this machine, one of which is killed in the middle; and the same function as Spark and Ray take it."""

import importlib.util
import json
import os
import signal
import sys
import tempfile
import threading
import time
import unittest
from pathlib import Path

from invented import frame, text
from straight_answer import Season, many
from straight_answer.cluster import in_pandas, of_rows, on_dask, season_of_files

SESSIONS = 240


def lacks(package):
    return importlib.util.find_spec(package) is None


def slow_season_of_files(paths, **asked):
    """As long as a worker takes that has more to do."""
    time.sleep(0.05)
    return season_of_files(paths, **asked)


class Workers(unittest.TestCase):
    @unittest.skipIf(lacks("distributed"), "dask.distributed is not installed")
    def test_a_worker_killed_in_the_middle_loses_nothing_and_counts_nothing_twice(self):
        from distributed import Client, LocalCluster
        from straight_answer import cluster as module

        with tempfile.TemporaryDirectory() as folder:
            for number in range(SESSIONS):
                path = Path(folder) / f"{number:04}"
                if number % 2:
                    path.with_suffix(".csv").write_text(text(number, gap=number % 9))
                else:
                    frame(number, gap=number % 9).to_parquet(path.with_suffix(".parquet"))
            (Path(folder) / "broken.parquet").write_bytes(b"PAR1\x00\x00")
            paths = [str(path) for path in Path(folder).iterdir()]
            alone = season_of_files(sorted(paths), margin=5).answer()
            with (
                LocalCluster(n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None) as here,
                Client(here) as client,
            ):
                before = set(client.run(os.getpid).values())
                plain, module.season_of_files = module.season_of_files, slow_season_of_files
                found = []
                try:
                    work = lambda: found.append(on_dask(client, paths, files_each=5, margin=5))
                    working = threading.Thread(target=work)
                    working.start()
                    # Some parts are judged, most are not.
                    while done(client) < 6:
                        time.sleep(0.01)
                    self.assertLess(done(client), SESSIONS // 5)
                    os.kill(min(before), signal.SIGKILL)
                    working.join(timeout=100)
                finally:
                    module.season_of_files = plain
                client.wait_for_workers(2, timeout=30)
                after = set(client.run(os.getpid).values())
        self.assertTrue(found, "the work came to no end")
        self.assertEqual(len(before & after), 1, "one worker was killed, and another took its place")
        self.assertEqual(json.dumps(found[0].answer()), json.dumps(alone))
        self.assertEqual((alone["sessions"], len(alone["unread"])), (SESSIONS, 1))


def done(client):
    return client.run_on_scheduler(
        lambda dask_scheduler: sum(task.state == "memory" for task in dask_scheduler.tasks.values())
    )


class Frames(unittest.TestCase):
    def shots(self):
        import pandas

        return pandas.concat([frame(number).assign(session=f"{number}.csv") for number in range(12)])

    def whole(self):
        return json.dumps(many([(f"{number}.csv", text(number)) for number in range(12)]))

    def test_parts_of_a_frame_are_put_together(self):
        shots = self.shots()
        rows = []
        for part in range(3):
            own = shots[shots["session"].map(hash) % 3 == part]
            # As Spark hands a part over: in frames that end anywhere.
            frames = [own.iloc[at : at + 50] for at in range(0, len(own), 50)]
            if frames:
                rows += [bytes(row) for made in in_pandas(frames) for row in made["season"]]
        self.assertEqual(json.dumps(of_rows(rows).answer()), self.whole())
        self.assertEqual(len(Season()), 0)

    @unittest.skipIf(lacks("pyspark"), "pyspark is not installed")
    def test_spark(self):
        from pyspark.sql import SparkSession

        # Its workers are started anew, and would take any other Python.
        os.environ["PYSPARK_PYTHON"] = sys.executable
        spark = SparkSession.builder.master("local[2]").getOrCreate()
        shots = spark.createDataFrame(self.shots()).repartition(4, "session")
        rows = shots.mapInPandas(in_pandas, "season binary").collect()
        self.assertEqual(json.dumps(of_rows(bytes(row.season) for row in rows).answer()), self.whole())
        spark.stop()

    @unittest.skipIf(lacks("ray"), "ray is not installed")
    def test_ray(self):
        import ray

        ray.init(num_cpus=2, include_dashboard=False, log_to_driver=False)
        groups = ray.data.from_pandas(self.shots()).groupby("session")
        rows = groups.map_groups(lambda shots: next(in_pandas([shots])), batch_format="pandas").take_all()
        self.assertEqual(json.dumps(of_rows(row["season"] for row in rows).answer()), self.whole())
        ray.shutdown()


if __name__ == "__main__":
    unittest.main()

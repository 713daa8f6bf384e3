"""The package as it is called: the page's numbers, frames in and out, refusals as exceptions, seasons put together."""

import json
import pickle
import tempfile
import threading
import time
import unittest
from pathlib import Path

import straight_answer
from invented import frame, text
from straight_answer import Refused, Season, check, many, read

ROOT = Path(__file__).parents[3]


class OneSession(unittest.TestCase):
    def test_a_report_is_that_of_the_page_to_the_last_bit(self):
        compared = 0
        for path in sorted((ROOT / "tests/golden").glob("check_*.json")):
            golden = json.loads(path.read_text())
            session = golden["request"]["session"]
            # A session in JSON of which each shot stands under its build: as the tool's own CSV it is read back identical.
            own = own_csv(session)
            if own is None:
                continue
            question = golden["request"]["question"]
            report = check(own, measure=question["measure"], goal=question.get("goal"), stopping=question["stopping"])
            self.assertEqual(report["answer"], golden["result"]["answer"], path.name)
            self.assertEqual(report["findings"], golden["result"]["findings"], path.name)
            compared += 1
        self.assertGreaterEqual(compared, 3)

    def test_frames_go_in_and_come_out(self):
        of_frame, of_text = read(frame(3)), read(text(3))
        self.assertEqual(of_frame.data, of_text.data)
        out = of_frame.frame()
        self.assertEqual(list(out.columns), ["build", "round", "left_out", "carry", "ball_speed"])
        self.assertEqual(out["carry"].tolist(), frame(3)["Carry (yd)"].tolist())
        self.assertEqual(check(of_frame), check(text(3)))
        self.assertEqual(read(of_frame.csv()).data, of_frame.data)

    def test_files_and_bytes_are_read_alike(self):
        path = ROOT / "demo/fair-12-yards.csv"
        self.assertEqual(check(path), check(path.read_bytes()))
        self.assertEqual(read(path).place, str(path))

    def test_a_refusal_is_an_exception_with_place_and_remedy(self):
        with self.assertRaises(Refused) as raised:
            read(b"\x89PNG\x00\x01", place="picture.png")
        self.assertEqual((raised.exception.kind, raised.exception.place), ("not_text", "picture.png"))
        self.assertTrue(raised.exception.message and raised.exception.remedy)
        with self.assertRaises(Refused) as raised:
            check(text(1), candidate="Nobody's")
        self.assertIn("Own driver, Driver B", raised.exception.remedy)
        with self.assertRaises(Refused) as raised:
            read(Path("nowhere.csv"))
        self.assertEqual(raised.exception.kind, "cannot_open")
        again = pickle.loads(pickle.dumps(raised.exception))
        self.assertEqual((again.kind, str(again)), (raised.exception.kind, str(raised.exception)))
        with self.assertRaises(ValueError):
            check(text(1), language="xx")

    def test_language_and_unit_change_words_and_no_number(self):
        english, spanish = check(text(2), margin=5), check(text(2), margin=5, language="es", unit="meters")
        self.assertEqual(english["answer"]["estimate"]["value"], spanish["answer"]["estimate"]["value"])
        self.assertNotEqual(english["answer"]["words"]["headline"], spanish["answer"]["words"]["headline"])

    def test_the_lock_is_released_while_judging(self):
        season, beats = Season(), []
        done = threading.Event()

        def beat():
            while not done.is_set():
                beats.append(time.perf_counter())
                time.sleep(0.001)

        with tempfile.TemporaryDirectory() as folder:
            for number in range(300):
                (Path(folder) / f"{number}.csv").write_text(text(number, laps=10))
            other = threading.Thread(target=beat)
            other.start()
            start = time.perf_counter()
            season.add_paths([folder], threads=1)
            end = time.perf_counter()
            done.set()
            other.join()
        # Were the lock held, the other thread would not have run at all between the two.
        within = [at for at in beats if start < at < end]
        self.assertGreater(len(within), 3, f"{end - start:.3f} s")


class ManySessions(unittest.TestCase):
    def pairs(self):
        return [(f"{number}.csv", text(number, gap=number % 7)) for number in range(20)]

    def test_however_it_is_put_together_it_is_the_same_to_the_last_bit(self):
        whole = many(self.pairs(), margin=5)
        parts = []
        for first in range(0, 20, 6):
            season = Season(margin=5)
            for place, shots in self.pairs()[first : first + 8]:
                season.add(shots, place)
            parts.append(pickle.loads(pickle.dumps(season)))
        merged = Season(margin=5)
        for part in [*reversed(parts), parts[1]]:
            merged.merge(part)
        self.assertEqual(json.dumps(merged.answer()), json.dumps(whole))
        self.assertEqual(len(merged), 20)
        merged.merge(merged)
        self.assertEqual(len(merged), 20)
        with self.assertRaises(Refused):
            merged.merge(Season(measure="ball_speed"))

    def test_one_frame_of_all_is_the_same_as_each_alone(self):
        import pandas

        frames = [frame(number).assign(session=f"{number}.csv") for number in range(5)]
        of_frame = many(pandas.concat(frames), by="session")
        each = many([(f"{number}.csv", text(number)) for number in range(5)])
        self.assertEqual(of_frame, each)
        table = of_frame.frame()
        self.assertEqual(len(table), 5)
        self.assertTrue((table["pulled_low"] < table["pulled_high"]).all())
        self.assertTrue(str(of_frame).startswith("On average a fitting here brings"))

    def test_nothing_stops_a_folder_and_what_is_refused_is_listed(self):
        with tempfile.TemporaryDirectory() as folder:
            folder = Path(folder)
            for place, shots in self.pairs():
                (folder / place).write_text(shots)
            (folder / "copy.csv").write_text(self.pairs()[0][1])
            (folder / "picture.png").write_bytes(b"\x89PNG\x00\x01")
            (folder / "empty.csv").write_text("")
            found = many([folder, folder / "nowhere.csv"], claims={"3.csv": 9, "4.csv": 7, "5.csv": 12})
        self.assertEqual((found["sessions"], found["copies"], found["claims"]["claims"]), (20, 1, 3))
        kinds = {Path(unread["place"]).name: unread["kind"] for unread in found["unread"]}
        self.assertEqual(kinds, {"picture.png": "not_text", "empty.csv": "empty", "nowhere.csv": "cannot_open"})

    def test_names_are_said_once(self):
        pairs = [
            ("a", text(1, gap=9, names=("Gamer", "Fitted"))),
            ("b", text(2, gap=-9, names=("Fitted", "Gamer"))),
        ]
        found = many(pairs, names={"gamer": "own", "fitted": "new"})
        self.assertEqual({one["baseline"] for one in found["each"]}, {"Gamer"})
        self.assertTrue(all(one["gap"]["value"] > 0 for one in found["each"]))

    def test_what_no_pile_can_answer_is_refused(self):
        with self.assertRaises(Refused) as raised:
            Season(measure="offline")
        self.assertEqual(raised.exception.kind, "nearer_zero")


def own_csv(session):
    """The tool's own CSV of a session in JSON with nothing but shots; none of others."""
    if session.get("summaries") or any(shot.get("left_out") for shot in session["shots"]):
        return None
    measures = session["measures"]
    lines = [["Straight Answer session", "1", session["order"]]]
    lines += [["build", str(at + 1), build["name"]] for at, build in enumerate(session["builds"])]
    lines.append(["columns", "build", "name", "round", "shot", "left out", *measures])
    lines.append(["id", "", "", "", "", "", *measures])
    for shot in session["shots"]:
        values = [shot["values"].get(measure) for measure in measures]
        place = [str(shot["build"] + 1), session["builds"][shot["build"]]["name"]]
        cells = [shot.get("round"), shot.get("number"), None, *values]
        lines.append(["shot", *place, *("" if cell is None else repr(cell) for cell in cells)])
    return "\n".join(",".join(line) for line in lines) + "\n"


if __name__ == "__main__":
    print(straight_answer.__doc__.splitlines()[0])
    unittest.main()

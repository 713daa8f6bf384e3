"""Invented shots whose truth is known: nobody hit them."""

import random


def shots(number, gap=5.0, laps=6, names=("Own driver", "Driver B")):
    """A golfer of this number, hit in turn AB BA, three at a time; the second club carries about this much more."""
    chance = random.Random(number)
    rows = []
    for lap in range(1, laps + 1):
        for name in names if lap % 2 else names[::-1]:
            for _ in range(3):
                carry = 240 + number % 20 + gap * (name == names[1]) + chance.gauss(0, 8)
                rows.append((name, lap, round(carry, 1), round(carry / 1.6 + chance.gauss(0, 1), 1)))
    return rows


def text(number, **more):
    """The same as a file."""
    lines = ["Club,Round,Carry (yd),Ball speed (mph)"]
    lines += [",".join(map(str, row)) for row in shots(number, **more)]
    return "\n".join(lines) + "\n"


def frame(number, **more):
    """The same as a frame."""
    import pandas

    return pandas.DataFrame(shots(number, **more), columns=["Club", "Round", "Carry (yd)", "Ball speed (mph)"])

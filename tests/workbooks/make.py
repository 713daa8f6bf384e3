"""Makes the workbooks of this folder anew: invented shots, seeded, by openpyxl 3.1.5, odfpy 1.4.1 and
msoffcrypto-tool 6.1.0.

    python3 -m venv v && v/bin/pip install openpyxl==3.1.5 odfpy==1.4.1 msoffcrypto-tool==6.1.0
    v/bin/python tests/workbooks/make.py

Not run by any test; the files it makes are in the tree. A made file differs in the time it was made and in the lock's salt, no more.
"""
import datetime
import pathlib
import random
import zipfile

import openpyxl
from msoffcrypto.format.ooxml import OOXMLFile
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import Table, TableCell, TableRow
from odf.text import P

HERE = pathlib.Path(__file__).parent
draw = random.Random(2026)

# Invented: the second club carries 15 yd more, hit in turns of three.
shots = []
for turn in range(1, 5):
    for club in ("Own driver", "Driver B") if turn % 2 else ("Driver B", "Own driver"):
        for _ in range(3):
            carry = round(draw.gauss(240 if club == "Own driver" else 255, 6), 1)
            shots.append((club, turn, carry, round(carry / 1.62, 1), round(draw.gauss(0, 12), 1)))
headings = ["Club", "Round", "Carry (yd)", "Ball speed (mph)", "Offline (yd)"]


def one_sheet():
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Shots"
    sheet.append(headings)
    for shot in shots:
        sheet.append(shot)
    book.save(HERE / "one_sheet.xlsx")


def several_sheets():
    """A sheet for each club without its name in it, notes, an empty sheet, a chart's worth of odd cells."""
    book = openpyxl.Workbook()
    notes = book.active
    notes.title = "Notes"
    notes.append(["Invented session", datetime.date(2026, 5, 3)])
    notes.append(["Bay closed early", True])
    for club in ("Own driver", "Driver B"):
        sheet = book.create_sheet(club)
        sheet.append(["Carry (yd)", "Offline (yd)"])
        for shot in shots:
            if shot[0] == club:
                sheet.append([shot[2], shot[4]])
    book.create_sheet("Empty")
    odd = book.create_sheet("Odd cells")
    odd["A1"], odd["B1"], odd["C1"], odd["D1"], odd["E1"] = "Club", "Time", "Carry (yd)", "Smash", "Note"
    odd["A3"], odd["B3"], odd["C3"], odd["D3"] = "Own driver", datetime.time(14, 5, 22), 251.4, 1.482
    odd["A4"], odd["B4"], odd["C4"], odd["D4"] = "Own driver", datetime.datetime(2026, 5, 3, 14, 6), "=1/0", 0.1 + 0.2
    odd["E3"] = 'tab\there, "quoted",\nsecond line'
    odd["XFD90000"] = "a stray cell"
    book.save(HERE / "several_sheets.xlsx")


def locked():
    with open(HERE / "one_sheet.xlsx", "rb") as plain, open(HERE / "locked.xlsx", "wb") as made:
        OOXMLFile(plain).encrypt("invented", made)


def open_document():
    book = OpenDocumentSpreadsheet()
    table = Table(name="Shots")
    for at, line in enumerate([headings] + shots):
        row = TableRow()
        for value in line:
            if isinstance(value, str):
                cell = TableCell(valuetype="string")
                cell.addElement(P(text=value))
            else:
                cell = TableCell(valuetype="float", value=value)
                cell.addElement(P(text=str(value)))
            row.addElement(cell)
        table.addElement(row)
        if at == 0:
            table.addElement(TableRow(numberrowsrepeated=2))
    last = TableRow()
    for attributes in (
        {"valuetype": "string"},
        {"valuetype": "time", "timevalue": "PT14H05M22.5S"},
        {"valuetype": "date", "datevalue": "2026-05-03T14:05:00"},
        {"valuetype": "boolean", "booleanvalue": "false"},
    ):
        last.addElement(TableCell(**attributes))
    table.addElement(last)
    book.spreadsheet.addElement(table)
    book.spreadsheet.addElement(Table(name="Empty"))
    book.save(str(HERE / "open_document.ods"))


def packed(name, files):
    with zipfile.ZipFile(HERE / name, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for inside, content in files.items():
            archive.writestr(zipfile.ZipInfo(inside), content, zipfile.ZIP_DEFLATED)


one_sheet()
locked()
several_sheets()
open_document()
packed("no_workbook.zip", {"shots.csv": "club,carry\n"})

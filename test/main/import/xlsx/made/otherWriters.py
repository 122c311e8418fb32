"""The same small list by two other writers of workbooks: XlsxWriter (text within the cells, days from 1900 and from 1904)
and openpyxl (days as ISO 8601 text). Made with XlsxWriter 3.2.9 and openpyxl 3.1.5."""

from datetime import date, datetime, time

import openpyxl
import xlsxwriter

HEAD = ["Spindle", "Date", "Force kN", "Time"]
ROWS = [
    ["Mill 3", date(2019, 3, 15), 17.92, time(14, 30)],
    ["Mill 3", datetime(2020, 2, 29, 23, 59, 59), 17.4, None],
    [None, None, None, None],
    [" Bühler & Söhne <2> ", date(2024, 12, 31), 0.1 + 0.2, time(0, 0)],
]


def inline(path, from_1904):
    options = {"constant_memory": True, "date_1904": from_1904, "in_memory": False}
    book = xlsxwriter.Workbook(path, options)
    book.set_properties({"created": datetime(2020, 1, 1)})
    sheet = book.add_worksheet("Checks")
    formats = {date: book.add_format({"num_format": "dd.mm.yyyy"}), time: book.add_format({"num_format": "hh:mm"}),
               datetime: book.add_format({"num_format": "yyyy-mm-dd hh:mm:ss"})}
    for r, row in enumerate([HEAD, *ROWS]):
        for c, cell in enumerate(row):
            if type(cell) in formats:
                sheet.write_datetime(r, c, cell, formats[type(cell)])
            elif cell is not None:
                sheet.write(r, c, cell)
    book.close()


def shared(path):
    book = openpyxl.Workbook()
    book.iso_dates = True
    sheet = book.active
    sheet.title = "Checks"
    for row in [HEAD, *ROWS]:
        sheet.append(row)
    book.save(path)


inline("inline1900.xlsx", False)
inline("inline1904.xlsx", True)
shared("isoDates.xlsx")

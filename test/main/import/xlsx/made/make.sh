#!/bin/sh
# Makes the workbooks of this folder anew, with a general-purpose spreadsheet program (LibreOffice 7.4.7) and two Python libraries.
set -e
cd "$(dirname "$0")"
xlsx="xlsx:Calc MS Excel 2007 XML"
soffice --headless --convert-to "$xlsx" checks.fods from1904.fods
# 59: semicolon, 34: quotes, 76: UTF-8, 1031: German, so that 17,92 is a figure and 15.03.2019 a day
soffice --headless "--infilter=Text - txt - csv (StarCalc):59,34,76,1,,1031,false,true" --convert-to "$xlsx" german.csv
python3 otherWriters.py

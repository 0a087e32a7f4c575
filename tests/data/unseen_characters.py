"""Ranges of characters of the classes Cc, Cf, Zl and Zp and of the property
Default_Ignorable_Code_Point, by the package regex. Run:
python3 unseen_characters.py > unseen_characters.csv"""
import sys
import regex

UNSEEN = regex.compile(r"[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]")
ranges = []
for code in range(sys.maxunicode + 1):
    if 0xD800 <= code < 0xE000 or not UNSEEN.match(chr(code)):
        continue
    if ranges and ranges[-1][1] == code - 1:
        ranges[-1][1] = code
    else:
        ranges.append([code, code])
print(f"# Characters that control, join, direct or hide: classes Cc, Cf, Zl, Zp and Default_Ignorable_Code_Point of the Unicode Standard, by the Python package regex {regex.__version__}")
print("# Made by tests/data/unseen_characters.py. Code points in hexadecimal, both ends included.")
print("from,to")
for first, last in ranges:
    print(f"{first:04X},{last:04X}")

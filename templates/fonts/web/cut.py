"""Cuts the fonts of the web page from those one folder up: the characters of characters.txt,
with the TrueType outlines that browsers print as text, as WOFF2. It takes fonttools and brotli,
from PyPI:

    python3 templates/fonts/web/cut.py
"""

from pathlib import Path

from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont, newTable

# Furthest that an outline may lie from the original, of 2816 units to the em.
LARGEST_ERROR = 1.0
HERE = Path(__file__).parent


def characters():
    for line in (HERE / "characters.txt").read_text(encoding="utf-8").splitlines():
        if line.startswith("U+"):
            first, _, last = line[2:].split()[0].partition("-")
            yield from range(int(first, 16), int(last or first, 16) + 1)


def with_truetype_outlines(font):
    shapes = font.getGlyphSet()
    glyphs = {}
    for name in font.getGlyphOrder():
        pen = TTGlyphPen(shapes)
        shapes[name].draw(Cu2QuPen(pen, LARGEST_ERROR, reverse_direction=True))
        glyphs[name] = pen.glyph()
    table = font["glyf"] = newTable("glyf")
    font["loca"] = newTable("loca")
    table.glyphOrder, table.glyphs = font.getGlyphOrder(), glyphs
    for name, glyph in glyphs.items():
        glyph.recalcBounds(table)
        font["hmtx"][name] = (font["hmtx"][name][0], getattr(glyph, "xMin", 0))
    most = font["maxp"]
    most.tableVersion, most.maxZones = 0x00010000, 1
    for key in ("TwilightPoints", "Storage", "FunctionDefs", "InstructionDefs", "StackElements",
                "SizeOfInstructions", "ComponentElements"):
        setattr(most, f"max{key}", 0)
    font["post"].formatType = 3.0
    for name in ("CFF ", "VORG"):
        if name in font:
            del font[name]
    font.sfntVersion = "\x00\x01\x00\x00"


for weight in ("Regular", "SemiBold"):
    font = TTFont(HERE.parent / f"Inter-{weight}.otf", recalcTimestamp=False)
    subsetter = Subsetter(Options(layout_features=["kern", "tnum"]))
    subsetter.populate(unicodes=characters())
    subsetter.subset(font)
    with_truetype_outlines(font)
    font.flavor = "woff2"
    font.save(HERE / f"Inter-{weight}.woff2")

#!/usr/bin/env -S python3 -B
"""Advance widths of the bundled fonts as C++: --write makes core/sheet/font_table.cpp anew, --check says whether it
still tells what the font files tell. Reads the tables head, hhea, hmtx and cmap as the OpenType standard lays them out."""

import struct
import sys
from pathlib import Path

FONTS = (("regular", "DejaVuSans.ttf"), ("bold", "DejaVuSans-Bold.ttf"))
# Latin, Greek, Cyrillic; punctuation to letterlike; fractions, arrows, signs; shapes and boxes.
RANGES = ((0x20, 0x7F), (0xA0, 0x300), (0x370, 0x530), (0x2000, 0x2060), (0x2070, 0x20C0), (0x2100, 0x2400),
          (0x25A0, 0x2700))


class Font:
    def __init__(self, path):
        self.data = path.read_bytes()
        count = self.number("H", 4)
        self.tables = {}
        for i in range(count):
            tag, _, offset, _ = struct.unpack_from(">4sIII", self.data, 12 + 16 * i)
            self.tables[tag.decode()] = offset
        self.units_per_em = self.number("H", self.tables["head"] + 18)
        self.metrics = self.number("H", self.tables["hhea"] + 34)
        self.glyphs = self.character_map()

    def number(self, kind, offset):
        return struct.unpack_from(">" + kind, self.data, offset)[0]

    def character_map(self):
        """Code point to glyph, from the cmap subtable of format 12."""
        cmap = self.tables["cmap"]
        for i in range(self.number("H", cmap + 2)):
            table = cmap + self.number("I", cmap + 4 + 8 * i + 4)
            if self.number("H", table) == 12:
                break
        else:
            sys.exit("no cmap of format 12")
        glyphs = {}
        for i in range(self.number("I", table + 12)):
            first, last, glyph = struct.unpack_from(">III", self.data, table + 16 + 12 * i)
            for code in range(first, last + 1):
                glyphs[code] = glyph + code - first
        return glyphs

    def advance(self, code):
        """In font units; 65535 where the font has no such character."""
        glyph = self.glyphs.get(code)
        if not glyph:
            return 0xFFFF
        return self.number("H", self.tables["hmtx"] + 4 * min(glyph, self.metrics - 1))

    def missing_advance(self):
        return self.number("H", self.tables["hmtx"])

    def capital_height(self):
        """Top of the outline of H."""
        glyph = self.glyphs[ord("H")]
        loca, wide = self.tables["loca"], self.number("h", self.tables["head"] + 50)
        offset = self.number("I", loca + 4 * glyph) if wide else 2 * self.number("H", loca + 2 * glyph)
        return self.number("h", self.tables["glyf"] + offset + 8)


def rows(values):
    """The values in rows as wide as a line of source may be."""
    line = "   "
    for value in values:
        if len(line) + len(f" {value},") > 99:
            yield line
            line = "   "
        line += f" {value},"
    yield line


def source(root):
    fonts = [(name, Font(root / "resources/font" / file)) for name, file in FONTS]
    size = sum(end - first for first, end in RANGES)
    out = ["// Made by tests/unit/sheet/font_table.py from the fonts in resources/font.",
           "// clang-format off",
           '#include "font_table.h"', "", "namespace fayline::font_table {", ""]
    out.append(f"const std::array<Range, {len(RANGES)}> ranges = {{{{")
    start = 0
    for first, end in RANGES:
        out.append(f"    {{0x{first:04X}, 0x{end:04X}, {start}}},")
        start += end - first
    out += ["}};", ""]
    for name, font in fonts:
        values = [font.advance(code) for first, end in RANGES for code in range(first, end)]
        out.append(f"const Face {name} = {{{font.units_per_em}, {font.capital_height()}, {font.missing_advance()}, {{{{")
        out += list(rows(values))
        out += ["}}};", ""]
    out += ["}  // namespace fayline::font_table", ""]
    header = (root / "core/sheet/font_table.h").read_text()
    if f"characters = {size};" not in header or f"std::array<Range, {len(RANGES)}>" not in header:
        sys.exit(f"font_table.h must say {size} characters in {len(RANGES)} ranges")
    return "\n".join(out)


def main():
    if len(sys.argv) != 3 or sys.argv[1] not in ("--write", "--check"):
        sys.exit(f"usage: {sys.argv[0]} --write|--check SOURCE_TREE")
    root = Path(sys.argv[2])
    target = root / "core/sheet/font_table.cpp"
    if sys.argv[1] == "--write":
        target.write_text(source(root))
    elif target.read_text() != source(root):
        sys.exit(f"{target} does not tell what the fonts tell; make it anew with --write")


if __name__ == "__main__":
    main()

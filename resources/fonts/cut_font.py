#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Cuts a font down to what Stonepenny writes, with tabular digits as its plain ones, and gives it a name of its own.

usage: cut_font.py FONT STYLE OUT      (cut_font.py FONT alone says whether it could be cut, by its exit code)

The same font gives the same bytes. Copyright and licence stay in it.
"""
import sys

from fontTools import subset
from fontTools.ttLib import TTFont

FAMILY = "Stonepenny Sans"  # the font's own name is for the whole of it
RANGES = [
    (0x20, 0x7E), (0xA0, 0x24F),                  # Latin
    (0x2B0, 0x36F),                               # modifiers and marks
    (0x370, 0x3FF), (0x400, 0x52F),               # Greek, Cyrillic
    (0x1E00, 0x1EFF),                             # more Latin
    (0x2000, 0x206F), (0x2070, 0x20CF),           # punctuation, super- and subscripts, currencies
    (0x2100, 0x218F), (0x2190, 0x21FF),           # letterlike, fractions, arrows
    (0x2200, 0x22FF), (0x2300, 0x23FF),           # mathematics, keys
    (0x25A0, 0x27BF),                             # shapes, signs
]
# Not "calt": it turns hyphens, crosses and arrows into drawn variants, which a person who copies a figure did not type.
FEATURES = ["kern", "mark", "mkmk", "ccmp", "locl"]
DIGITS = range(ord("0"), ord("9") + 1)


def tabular_glyphs(font):
    """Plain glyph to tabular one."""
    table = font["GSUB"].table
    lookups = {index for record in table.FeatureList.FeatureRecord if record.FeatureTag == "tnum"
               for index in record.Feature.LookupListIndex}
    return {plain: tabular for index in lookups for part in table.LookupList.Lookup[index].SubTable
            for plain, tabular in getattr(part, "ExtSubTable", part).mapping.items()}


def make_digits_tabular(font):
    tabular = tabular_glyphs(font)
    for table in font["cmap"].tables:
        if not table.isUnicode():
            continue
        for digit in DIGITS:
            table.cmap[digit] = tabular.get(table.cmap[digit], table.cmap[digit])  # tables share maps


    # In some weights they differ by a hair.
    digits = [font.getBestCmap()[digit] for digit in DIGITS]
    width = max(font["hmtx"][glyph][0] for glyph in digits)
    for glyph in digits:
        font["hmtx"][glyph] = (width, font["hmtx"][glyph][1])


def cut(font):
    options = subset.Options()
    options.layout_features = FEATURES
    options.name_IDs = [0, 1, 2, 3, 4, 5, 6, 7, 13, 14, 16, 17]
    options.notdef_outline = True
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=[code for first, last in RANGES for code in range(first, last + 1)])
    cutter.subset(font)


def rename(font, style):
    full, short = f"{FAMILY} {style}", FAMILY.replace(" ", "") + "-" + style.replace(" ", "")
    names = {1: FAMILY if style == "Regular" else full, 2: "Regular", 3: short, 4: full, 6: short, 16: FAMILY, 17: style}
    for record in font["name"].names:
        if record.nameID in names:
            record.string = names[record.nameID]
    for number in (16, 17):
        font["name"].setName(names[number], number, 3, 1, 0x409)
    cff = font["CFF "].cff
    cff.fontNames = [short]
    cff.topDictIndex[0].FullName = full
    cff.topDictIndex[0].FamilyName = FAMILY


def main():
    font = TTFont(sys.argv[1], recalcTimestamp=False)
    if len(sys.argv) == 2:
        tabular = tabular_glyphs(font)
        cmap = font.getBestCmap()
        return 0 if all(cmap[digit] in tabular for digit in DIGITS) and "CFF " in font else 1
    make_digits_tabular(font)
    cut(font)
    rename(font, sys.argv[2])
    font.save(sys.argv[3])
    return 0


if __name__ == "__main__":
    sys.exit(main())

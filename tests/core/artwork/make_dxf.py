# SPDX-License-Identifier: MIT
"""Writes one DXF with ezdxf, the independent writer: python3 make_dxf.py SEED VERSION OUT.

The last line it prints is what is in it as JSON: how many round holes, by diameter in hundredths of a millimetre.
"""
import json
import math
import random
import sys

import ezdxf

seed, version, out = int(sys.argv[1]), sys.argv[2], sys.argv[3]
rng = random.Random(seed)
doc = ezdxf.new(version)
doc.header["$INSUNITS"] = 4
msp = doc.modelspace()
doc.layers.new("STONES", dxfattribs={"color": 5})
expected = {}
places = [(x * 9.0 + 5, y * 9.0 + 5) for x in range(14) for y in range(14)]
rng.shuffle(places)


def note(diameter, times=1):
    key = str(round(diameter * 100))
    expected[key] = expected.get(key, 0) + times


block = doc.blocks.new("HOLE")
block.add_circle((0.5, 0.25), 1.0)
for i in range(150):
    x, y = places[i]
    diameter = rng.choice([2.0, 2.8, 3.1, 3.9, 4.7])
    r = diameter / 2
    kind = i % 7
    attribs = {"layer": "STONES"}
    if kind == 0:
        msp.add_circle((x, y), r, dxfattribs=attribs)
    elif kind == 1 and version != "R12":
        msp.add_lwpolyline([(x - r, y, 1), (x + r, y, 1)], format="xyb", close=True, dxfattribs=attribs)
    elif kind == 2:
        turn = rng.uniform(0, 360)
        cut = rng.uniform(40, 320)
        msp.add_arc((x, y), r, turn, turn + cut, dxfattribs=attribs)
        msp.add_arc((x, y), r, turn + cut, turn + 360, dxfattribs=attribs)
    elif kind == 3 and version != "R12":
        msp.add_ellipse((x, y), major_axis=(0, r), ratio=1, dxfattribs=attribs)
    elif kind == 4:
        turn = rng.uniform(0, 360)
        angle = math.radians(turn)
        cx, cy = 0.5 * r, 0.25 * r
        msp.add_blockref("HOLE", (x - cx * math.cos(angle) + cy * math.sin(angle),
                                  y - cx * math.sin(angle) - cy * math.cos(angle)),
                         dxfattribs={"xscale": r, "yscale": r, "rotation": turn, **attribs})
    elif kind == 5:
        line = msp.add_polyline2d([(x - r, y, 0, 0, -1), (x + r, y, 0, 0, -1)], format="xyseb", dxfattribs=attribs)
        line.close(True)
    elif kind == 6 and version != "R12":
        k = math.sqrt(0.5)
        points = [(r, 0), (r, r), (0, r), (-r, r), (-r, 0), (-r, -r), (0, -r), (r, -r), (r, 0)]
        spline = msp.add_spline(dxfattribs=attribs)
        spline.dxf.degree = 2
        spline.closed = True
        spline.control_points = [(x + px, y + py, 0) for px, py in points]
        spline.knots = [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4]
        spline.weights = [1, k, 1, k, 1, k, 1, k, 1]
    else:
        msp.add_circle((x, y), r, dxfattribs=attribs)
    note(diameter)
for i in range(150, 160):
    x, y = places[i]
    msp.add_polyline2d([(x, y), (x + 3, y), (x + 1, y + 3)]).close(True)
    msp.add_line((x, y), (x + 2, y + 2))
doc.saveas(out)
print(json.dumps(expected))

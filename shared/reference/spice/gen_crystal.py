#!/usr/bin/env python3
"""Single crystal between a winding and a tuned load, by ngspice: writes crystal_filter.csv beside itself.

Crystal: 3 H with its series capacitor at 455.350 kHz, holder neutralised (left out). Source and crystal loss 3500 ohm. Load:
4000 ohm across a circuit of Q 60 at 455.350 kHz, its coil as it is, 2 % more and 2 % less. Volts for 1 V of source.
"""
import math
import pathlib
import subprocess

HERE = pathlib.Path(__file__).parent
F0, HENRY, SOURCE, LOAD, Q = 455350.0, 3.0, 3500.0, 4000.0, 60.0
W = 2 * math.pi * F0
SERIES = 1 / (W * W * HENRY)
COIL, FARAD = LOAD / Q / W, Q / LOAD / W

rows = []
for change in (0.0, 0.02, -0.02):
    cir = f"""crystal filter
V1 a 0 ac 1
R1 a b {SOURCE}
L1 b c {HENRY}
C1 c d {SERIES:.15e}
L2 d 0 {COIL * (1 + change):.15e}
C2 d 0 {FARAD:.15e}
R2 d 0 {LOAD}
.control
set numdgt=10
ac lin 81 {F0 - 2000} {F0 + 2000}
print vm(d)
.endc
.end
"""
    text = subprocess.run(["ngspice", "-b", "/dev/stdin"], input=cir, capture_output=True, text=True).stdout
    for line in text.splitlines():
        part = line.split()
        if len(part) == 3 and part[0].isdigit():
            rows.append((change, float(part[1]), float(part[2])))
with open(HERE / "crystal_filter.csv", "w") as out:
    out.write("# gen_crystal.py, ngspice 39 .ac: volts across the load for 1 V of source\n")
    out.write("load_coil_change,frequency_Hz,load_V\n")
    for row in rows:
        out.write("%g,%.3f,%.9f\n" % row)

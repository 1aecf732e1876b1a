#!/usr/bin/python3
"""Speaks to a generator by PyVISA, an SCPI library that others wrote (python3-pyvisa, python3-pyvisa-py).

    scpi_look.py RESOURCE            prints frequency in Hz, level in dBm, 1 for on, what stands in its error queue
    scpi_look.py RESOURCE COMMAND... sends these first
"""
import sys

import pyvisa

generator = pyvisa.ResourceManager("@py").open_resource(sys.argv[1], read_termination="\n", write_termination="\n", timeout=5000)
for command in sys.argv[2:]:
    generator.write(command)
print("%.0f %.1f %d %s" % (
    float(generator.query(":SOUR:FREQ?")),
    float(generator.query(":SOUR:POW?")),
    int(generator.query(":OUTP:STAT?")),
    generator.query(":SYST:ERR?").strip()))
generator.close()

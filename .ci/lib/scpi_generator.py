#!/usr/bin/python3
"""A simulated signal generator that understands SCPI-1999 (headers by volume 1 section 6.2, several in one message by IEEE 488.2
section 7.3), at a network port and at a pseudo-terminal. It shares nothing with the tool that it tests.

    scpi_generator.py FOLDER

Writes FOLDER/port (its number), makes FOLDER/tty (a link to its terminal), and appends to FOLDER/log what it was told and how it then
stands, one line each: message, frequency in Hz, level in dBm, on or off.
"""
import os
import pty
import re
import socket
import sys
import threading
import tty

FOLDER = sys.argv[1]
LOWEST = {"FREQ": 9e3, "POW": -120.0}
HIGHEST = {"FREQ": 2e9, "POW": 10.0}
STEP = {"FREQ": 1.0, "POW": 0.1}
STATE = {"FREQ": 1e6, "POW": -30.0, "OUTP": 0, "AM:DEPT": 30.0, "AM:INT:FREQ": 1e3, "AM:STAT": 0}
SHORT = {"SOURCE": "SOUR", "FREQUENCY": "FREQ", "POWER": "POW", "OUTPUT": "OUTP", "DEPTH": "DEPT", "INTERNAL": "INT",
         "STATE": "STAT", "SYSTEM": "SYST", "ERROR": "ERR", "REMOTE": "REM", "LOCAL": "LOC", "MINIMUM": "MIN", "MAXIMUM": "MAX"}
LOCK = threading.Lock()
errors = []


def short(header):
    nodes = [SHORT.get(node, node) for node in header.upper().lstrip(":").split(":")]
    if nodes[0] == "SOUR":
        nodes = nodes[1:]
    if nodes[-1] == "STAT" and nodes[0] == "OUTP":
        nodes = nodes[:-1]
    return ":".join(nodes)


def number(name, text):
    word = SHORT.get(text.upper(), text.upper())
    if word in ("MIN", "MAX") and name in LOWEST:
        return (LOWEST if word == "MIN" else HIGHEST)[name]
    if word in ("ON", "OFF"):
        return int(word == "ON")
    value = float(re.sub(r"(?i)\s*(dbm|hz)$", "", text))
    return round(value / STEP[name]) * STEP[name] if name in STEP else value


def told(unit):
    header, _, argument = unit.strip().partition(" ")
    name = short(header.rstrip("?"))
    if header.endswith("?"):
        if name == "*IDN":
            return "EMBER FELL INSTRUMENTS,SG-40,0,1.0"
        if name == "SYST:ERR":
            return errors.pop(0) if errors else '+0,"No error"'
        if name in STATE:
            value = number(name, argument) if argument else STATE[name]
            return "%d" % value if name in ("OUTP", "AM:STAT") else "%+.9E" % value
    elif name in STATE and argument:
        value = number(name, argument)
        if LOWEST.get(name, value) <= value <= HIGHEST.get(name, value):
            STATE[name] = value
        else:
            errors.append('-222,"Data out of range"')
        return None
    elif name == "*CLS":
        errors.clear()
        return None
    elif name in ("SYST:REM", "SYST:LOC"):
        return None
    errors.append('-113,"Undefined header"')
    return None


def message(text, reply):
    with LOCK:
        answers = [answer for answer in map(told, text.split(";")) if answer is not None]
        with open(os.path.join(FOLDER, "log"), "a") as log:
            print(text, "%.0f" % STATE["FREQ"], "%.1f" % STATE["POW"], "on" if STATE["OUTP"] else "off", sep="\t", file=log)
    if answers:
        reply((";".join(answers) + "\n").encode())


def serve(read, reply):
    pending = b""
    for data in iter(read, b""):
        *whole, pending = (pending + data).split(b"\n")
        for line in whole:
            if line.strip():
                message(line.decode("ascii", "replace").strip(), reply)


def at_terminal():
    mine, theirs = pty.openpty()
    tty.setraw(theirs)
    os.symlink(os.ttyname(theirs), os.path.join(FOLDER, "tty"))
    serve(lambda: os.read(mine, 512), lambda answer: os.write(mine, answer))


def at_port():
    listening = socket.create_server(("127.0.0.1", 0))
    with open(os.path.join(FOLDER, "port.new"), "w") as port:
        print(listening.getsockname()[1], file=port)
    os.rename(os.path.join(FOLDER, "port.new"), os.path.join(FOLDER, "port"))
    while True:
        peer = listening.accept()[0]
        threading.Thread(target=serve, args=(lambda p=peer: p.recv(512), peer.sendall), daemon=True).start()


threading.Thread(target=at_terminal, daemon=True).start()
at_port()

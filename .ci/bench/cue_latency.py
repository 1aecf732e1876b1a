"""Measures the delay from a reading to its sound; run by cue-latency.sh, which provides the sound server.

The level rises in smooth stages of 1.5 dB, as a hand turns towards a peak; each makes the tone rise by a quarter of an octave.
Two delays are counted to the moment when the recorded pitch crosses the middle between the tones before and after: from just
before the write of the reading in the middle of the stage, which includes what the peak finder needs to tell a rise from a
spike; and from just before the write of the reading whose record first says that the middle is reached. A stage in which the tones do not stand as they should, because an
announcement sounds over them, is left out.

The recording is taken in pieces of 256 frames, each stamped with the monotonic clock when it was read, and the pitch is counted
in zero crossings over 10 ms: recorder and counting are part of the delay, so the true one is a little shorter.
"""

import json
import math
import os
import statistics
import struct
import subprocess
import sys
import threading
import time

RATE = 48000
PERIOD = 0.02
CHANGES = 34
READINGS_PER_CHANGE = 36
TURNING = 12
FIRST = 0.01
STAGE_DB = 1.5
OCTAVES = STAGE_DB / 6
LIMIT_MEDIAN = 0.100
WINDOW = 480


def record(pieces, recorder):
    while True:
        data = recorder.stdout.read(512)
        if not data:
            return
        pieces.append((time.monotonic(), data))


def collect(stream, bests):
    for line in stream:
        record_read = json.loads(line)
        if record_read["type"] == "reading":
            bests.append(record_read["best"] or 0)


def levels():
    """The readings of all changes, and which of them stands in the middle of each."""
    readings = [FIRST] * 50
    middles = []
    for change in range(CHANGES + 1):
        middles.append(len(readings) + TURNING // 2)
        for i in range(READINGS_PER_CHANGE):
            share = min(1, i / TURNING)
            readings.append(FIRST * 10 ** (STAGE_DB * (change + share) / 20))
    return readings, middles


def play(tool, readings):
    """Writes the readings on their beat and gives the time just before each."""
    times = []
    start = time.monotonic()
    for number, level in enumerate(readings):
        time.sleep(max(0, start + number * PERIOD - time.monotonic()))
        times.append(time.monotonic())
        tool.stdin.write(b"%.7f\n" % level)
        tool.stdin.flush()
    return times


def pitches(pieces):
    """Time and pitch of each window of the recording, on the recorder's frame clock tied to the monotonic one."""
    samples = []
    arrived = []
    for at, data in pieces:
        samples.extend(struct.unpack("<%dh" % (len(data) // 2), data))
        arrived.append((len(samples), at))
    result = []
    position = 0
    for end in range(WINDOW, len(samples), WINDOW // 4):
        while arrived[position][0] < end:
            position += 1
        window = samples[end - WINDOW : end]
        crossings = [
            i + window[i] / (window[i] - window[i + 1])
            for i in range(WINDOW - 1)
            if window[i] < 0 <= window[i + 1]
        ]
        if max(window) > 300 and len(crossings) > 2:
            hertz = RATE * (len(crossings) - 1) / (crossings[-1] - crossings[0])
            result.append((arrived[position][1], hertz))
    return result


def settled(track, begin, end):
    inside = [hertz for at, hertz in track if begin < at < end]
    return statistics.median(inside) if inside else float("nan")


def decided(bests, middle, end, level):
    return next(k for k in range(middle - TURNING, end) if bests[k] >= level)


def delays(track, times, middles, bests):
    """The whole delay of each stage, and the delay from what the records say."""
    result = []
    for change in range(1, CHANGES):
        begin = times[middles[change]]
        end = times[middles[change + 1]]
        before = settled(track, begin - 0.3, begin - 0.13)
        after = settled(track, end - 0.3, end - 0.13)
        middle = math.sqrt(before * after)
        heard = [at for at, hertz in track if begin - 0.1 < at < end and hertz > middle]
        if abs(math.log2(after / before) - OCTAVES) < OCTAVES / 5 and heard:
            level = FIRST * 10 ** (STAGE_DB * (change + 0.5) / 20)
            said = times[decided(bests, middles[change], middles[change + 1], level)]
            result.append((heard[0] - begin, heard[0] - said))
    return result


def measure():
    recorder = subprocess.Popen(
        ["parec", "-d", "out.monitor", "--format=s16le", "--rate=48000", "--channels=1", "--latency-msec=5", "--raw"],
        stdout=subprocess.PIPE,
        bufsize=0,
    )
    pieces = []
    threading.Thread(target=record, args=(pieces, recorder), daemon=True).start()
    tool = subprocess.Popen(
        ["./slugpeak", "watch", "--from", "-", "--cue", "pitch", "--json", "--stay", "--volume", "8"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
    )
    bests = []
    collector = threading.Thread(target=collect, args=(tool.stdout, bests), daemon=True)
    collector.start()
    readings, middles = levels()
    try:
        time.sleep(2)
        times = play(tool, readings)
        time.sleep(0.5)
    finally:
        tool.stdin.close()
        tool.wait(timeout=20)
        recorder.terminate()
    collector.join(20)
    return delays(pitches(pieces), times, middles, bests)


def main():
    found = measure()
    if len(found) < 20:
        print("cue-latency: only %d of %d changes were heard" % (len(found), CHANGES - 1), file=sys.stderr)
        return 1
    for name, which in (("from the reading", 0), ("from its record", 1)):
        sorted_ms = sorted(1000 * each[which] for each in found)
        print(
            "cue-latency: to the sound %s: median %.0f ms, max %.0f ms over %d stages"
            % (name, statistics.median(sorted_ms), sorted_ms[-1], len(sorted_ms))
        )
    if statistics.median(each[1] for each in found) > LIMIT_MEDIAN:
        print("cue-latency: more than %.0f ms" % (1000 * LIMIT_MEDIAN), file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    os.chdir(os.path.dirname(os.path.abspath(__file__)) + "/../..")
    sys.exit(main())

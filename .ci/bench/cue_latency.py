"""Measures the delay from a reading to its sound; run by cue-latency.sh, which provides the sound server.

The level rises in stages of 1.5 dB, as a hand turns towards a peak, with the noise of a usual meter; each makes the tone rise by
a quarter of an octave. The delay is counted from just before the write of the reading in the middle of the stage to the moment
when the recorded pitch crosses the middle between the tones before and after. A stage in which the tones do not stand as they
should, because an announcement sounds over them, is left out.

The recording is taken in pieces of 256 frames, each stamped with the monotonic clock when it was read, and the pitch is counted
in zero crossings over 10 ms: recorder and counting are part of the delay, so the true one is a little shorter.
"""

import math
import os
import random
import statistics
import struct
import subprocess
import sys
import threading
import time

READINGS_PER_SECOND = (20, 50)
RATE = 48000
CHANGES = 34
TURNING_SECONDS = 0.3
CHANGE_SECONDS = 0.8
FIRST = 0.01
STAGE_DB = 1.5
OCTAVES = STAGE_DB / 6
LIMIT_MEDIAN = 0.100
WINDOW = 480
NOISE = 0.0035
SEED = 1


def record(pieces, recorder):
    while True:
        data = recorder.stdout.read(512)
        if not data:
            return
        pieces.append((time.monotonic(), data))


def levels(per_second):
    """The readings of all changes, and which of them stands in the middle of each."""
    turning = round(TURNING_SECONDS * per_second)
    readings = [FIRST] * per_second
    middles = []
    for change in range(CHANGES + 1):
        middles.append(len(readings) + turning // 2)
        for i in range(round(CHANGE_SECONDS * per_second)):
            share = min(1, i / (2 * (turning // 2)))
            readings.append(FIRST * 10 ** (STAGE_DB * (change + share) / 20))
    return readings, middles


def play(tool, readings, per_second):
    """Writes the readings on their beat and gives the time just before each."""
    times = []
    noise = random.Random(SEED)
    start = time.monotonic()
    for number, level in enumerate(readings):
        time.sleep(max(0, start + number / per_second - time.monotonic()))
        times.append(time.monotonic())
        tool.stdin.write(b"%.7f\n" % (level * (1 + noise.gauss(0, NOISE))))
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


def delays(track, times, middles):
    """The delay of each stage that stands as it should, s."""
    result = []
    for change in range(1, CHANGES):
        begin = times[middles[change]]
        end = times[middles[change + 1]]
        before = settled(track, begin - 0.35, begin - 0.17)
        after = settled(track, end - 0.35, end - 0.17)
        middle = math.sqrt(before * after)
        heard = [at for at, hertz in track if begin - 0.1 < at < end and hertz > middle]
        if abs(math.log2(after / before) - OCTAVES) < OCTAVES / 5 and heard:
            result.append(heard[0] - begin)
    return result


def measure(per_second):
    recorder = subprocess.Popen(
        ["parec", "-d", "bench.monitor", "--format=s16le", "--rate=48000", "--channels=1", "--latency-msec=5", "--raw"],
        stdout=subprocess.PIPE,
        bufsize=0,
    )
    pieces = []
    threading.Thread(target=record, args=(pieces, recorder), daemon=True).start()
    tool = subprocess.Popen(
        ["./slugpeak", "watch", "--from", "-", "--cue", "pitch", "--json", "--stay", "--volume", "8"],
        stdin=subprocess.PIPE,
        stdout=subprocess.DEVNULL,
    )
    readings, middles = levels(per_second)
    try:
        time.sleep(2)
        times = play(tool, readings, per_second)
        time.sleep(0.5)
    finally:
        tool.stdin.close()
        tool.wait(timeout=20)
        recorder.terminate()
    return delays(pitches(pieces), times, middles)


def tell(per_second):
    """Measures at one rate and says whether the goal was met."""
    found = measure(per_second)
    if len(found) < 20:
        print("cue-latency: only %d of %d changes were heard" % (len(found), CHANGES - 1), file=sys.stderr)
        return False
    median = statistics.median(found)
    print(
        "cue-latency: %d readings/s: from the reading to its sound: median %.0f ms, max %.0f ms over %d stages"
        % (per_second, 1000 * median, 1000 * max(found), len(found))
    )
    if median > LIMIT_MEDIAN:
        print("cue-latency: more than %.0f ms" % (1000 * LIMIT_MEDIAN), file=sys.stderr)
    return median <= LIMIT_MEDIAN


if __name__ == "__main__":
    os.chdir(os.path.dirname(os.path.abspath(__file__)) + "/../..")
    sys.exit(0 if all([tell(per_second) for per_second in READINGS_PER_SECOND]) else 1)

#!/usr/bin/env bash
# Power cuts, not kills: the log lies on a disk that forgets whatever was not forced. At random moments of a session at 50 readings a
# second what the disk would be left with is looked at: it reads, and at most the last second of what was shown is missing. Then the
# same with a report that replaces an older one: either is there, whole. The seed is the first argument.
set -euo pipefail
cd "$(dirname "$0")/../.."
seed=${1:-1}
RANDOM=$seed
work=$(mktemp -d)
disk=$work/disk
pids=()
cleanup() {
  for pid in "${pids[@]}"; do kill "$pid" 2>/dev/null || true; done
  fusermount3 -u "$disk" 2>/dev/null || umount "$disk" 2>/dev/null || true
  rm -rf "$work"
}
trap cleanup EXIT
fail() { echo "power cut: $*" >&2; exit 1; }

mkdir "$disk"
/usr/bin/python3 .ci/lib/forgetful_disk.py "$disk" 2>"$work"/refused &
pids+=($!)
for _ in $(seq 100); do ! mountpoint -q "$disk" || break; sleep 0.1; done
if ! mountpoint -q "$disk"; then
  echo "power cut: NOT CHECKED, nothing can be mounted here: $(tail -1 "$work"/refused)"
  exit 0
fi
touch "$disk"/.cut
export XDG_STATE_HOME=$work/state
./slugpeak --version >/dev/null

/usr/bin/python3 - "$work" "$seed" <<'PYTHON'
import json, os, random, subprocess, sys, threading, time

work, seed = sys.argv[1], int(sys.argv[2])
chance = random.Random(seed)
disk = work + "/disk"
tool = subprocess.Popen(["./slugpeak", "watch", "--from", "-", "--json", "--log", disk + "/log.jsonl"],
                        stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, bufsize=1)
shown = []


def listen():
    for line in tool.stdout:
        if line.startswith('{"type":"reading"'):
            shown.append(time.monotonic())


def feed():
    try:
        for i in range(1, 1500):
            tool.stdin.write(f"{i}\n")
            tool.stdin.flush()
            time.sleep(0.02)
        tool.stdin.close()
    except BrokenPipeError:
        pass


threading.Thread(target=listen, daemon=True).start()
threading.Thread(target=feed, daemon=True).start()
while len(shown) < 3:
    time.sleep(0.01)
worst = 0.0
for cut in range(12):
    time.sleep(0.3 + 2 * chance.random())
    left = f"{work}/left{cut}"
    before = len(shown)
    now = time.monotonic()
    with open(disk + "/.cut", "w") as order:
        order.write(left)
    lines = open(left + "/log.jsonl", "rb").read().split(b"\n")
    kept = []
    for number, line in enumerate(lines):
        if line:
            try:
                record = json.loads(line)
            except ValueError:
                assert number == len(lines) - 1, f"cut {cut}: line {number + 1} of {len(lines)} is damaged"
                continue
            if record["type"] == "reading":
                kept.append(record["value"])
    assert kept == [float(i + 1) for i in range(len(kept))], f"cut {cut}: readings are missing in the middle"
    missing = now - shown[len(kept)] if len(kept) < before else 0.0
    worst = max(worst, missing)
    assert missing <= 1.0, f"cut {cut}: the last {missing:.2f} s are missing ({len(kept)} of {before} shown)"
    subprocess.run(["./slugpeak", "replay", left + "/log.jsonl", "--json"], check=True, stdout=subprocess.DEVNULL,
                   stderr=subprocess.DEVNULL)
tool.terminate()
tool.wait()
print(f"power cut: 12 cuts in a session, at most {worst:.2f} s missing, the rest reads")
PYTHON

./slugpeak demo --speed 1000 --cue off --view none --log "$work"/demo.jsonl >/dev/null 2>&1 || fail "no demonstration"
./slugpeak report "$work"/demo.jsonl --out "$disk"/page.html 2>/dev/null
for i in $(seq 6); do
  ./slugpeak report "$work"/demo.jsonl --out "$disk"/page.html 2>/dev/null &
  sleep "0.$((RANDOM % 9 + 1))"
  echo "$work/page$i" >"$disk"/.cut
  wait $!
  grep -q '</html>' "$work/page$i"/page.html || fail "the report is neither the old nor the new one"
done
echo "power cut: 6 cuts while a report replaces another, each left a whole one"

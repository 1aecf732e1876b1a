#!/usr/bin/env bash
# The ADC firmware: unit tests on this computer, built for the chip, measured on a simulated chip against its bounds.
set -euo pipefail
cd "$(dirname "$0")/../../hardware-notes/adc-firmware"

make --silent clean
make --silent test
make --silent all
make --silent bench | tee build/bench.txt

# The figures in adc-boards.md are these: the same lines and bounds, and the bits, decibels and volts close to the same. Compilers
# and libraries of mathematics differ in the last digits, and the noise with them.
awk '
  function name(line) { return substr(line, 1, 58) }
  function bound(line) { return substr(line, 82, 20) }
  FNR == NR { if (/^```bench/) inside = 1; else if (/^```/) inside = 0; else if (inside) page[++stated] = $0; next }
  {
    line = page[++measured]
    value = substr($0, 59, 11) + 0
    off = value - substr(line, 59, 11)
    unit = substr($0, 71, 3)
    limit = unit == "bit" ? 0.3 : unit == "dB " ? 4 : unit == "mV " ? 1 + 0.5 * value : 1e9
    if (name($0) != name(line) || bound($0) != bound(line) || off > limit || -off > limit) {
      print "adc-boards.md says:  " line "\nmeasured:            " $0; bad = 1
    }
  }
  END { if (stated != measured || measured < 30) { print "adc-boards.md has " stated " lines, measured " measured; bad = 1 } exit bad }
' ../adc-boards.md build/bench.txt >&2

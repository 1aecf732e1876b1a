#!/usr/bin/env bash
# The ADC firmware: unit tests on this computer, built for the chip, measured on a simulated chip against its bounds.
set -euo pipefail
cd "$(dirname "$0")/../../hardware-notes/adc-firmware"

make --silent clean
make --silent test
make --silent all
make --silent bench

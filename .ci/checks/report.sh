#!/usr/bin/env bash
# The report in a real browser, without a screen: a demonstration and two response curves are logged, reported, and the page is
# looked at. It must show what was done and need nothing from the network.
set -euo pipefail
cd "$(dirname "$0")/../.."
export LC_ALL=C.UTF-8
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

fail() {
  echo "report: $*" >&2
  exit 1
}

./slugpeak demo --speed 100 --cue off --log "$work"/demo.jsonl >/dev/null 2>&1
./slugpeak curve --from sim:plan --speed 100 --span 435..475 --step 1 --log "$work"/before.jsonl >/dev/null 2>&1
./slugpeak curve --from sim:aligned --speed 100 --span 435..475 --step 1 --log "$work"/after.jsonl >/dev/null 2>&1
./slugpeak report "$work"/demo.jsonl "$work"/before.jsonl "$work"/after.jsonl --out "$work"/report.html 2>/dev/null

# The name space of SVG is no address that anybody fetches.
if sed 's|http://www.w3.org/2000/svg||g' "$work"/report.html | grep -qiE 'https?:|//[a-z0-9.-]+/|@import|url\(|src=|<link|<script'; then
  fail "the page wants something from elsewhere"
fi

browse() {
  timeout 90 chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking \
    --disable-component-update --disable-sync --user-data-dir="$work"/profile "$@" "file://$work/report.html"
}

browse --dump-dom >"$work"/dom.html 2>"$work"/browser.log || fail "the browser failed: $(tail -3 "$work"/browser.log)"
for text in 'Alignment report' 'Tarnfield 54A' 'Gain of each adjuster' 'Level over time' 'Response curve' 'T2 top' \
  'generator, kHz' '</svg>'; do
  grep -qF "$text" "$work"/dom.html || fail "the page does not show: $text"
done
[ "$(grep -o 'class="curve first"' "$work"/dom.html | wc -l)" -gt 40 ] || fail "the first curve has too few points"
grep -q 'class="curve second"' "$work"/dom.html || fail "the second curve is missing"

browse --window-size=1000,6000 --screenshot="$work"/report.png >/dev/null 2>&1 || fail "the browser made no picture"
[ "$(head -c 8 "$work"/report.png | od -An -tx1 | tr -d ' \n')" = 89504e470d0a1a0a ] || fail "the picture is no PNG"
[ "$(stat -c %s "$work"/report.png)" -gt 60000 ] || fail "the picture is nearly empty"
./slugpeak report "$work"/demo.jsonl --out "$work"/printed.html --pdf --paper a4 --note serial=20417 --note remarks='new capacitors' 2>/dev/null ||
  fail "the page cannot be printed"
pdftotext -layout "$work"/printed.pdf "$work"/printed.txt
for text in 'serial number' '20417' 'new capacitors' 'Course of the work' 'From the detector back' 'Adjusters'; do
  grep -qF "$text" "$work"/printed.txt || fail "the print does not show: $text"
done
pdfinfo "$work"/printed.pdf | grep -qE 'Page size: +59[45].* x 84[12].*A4' || fail "the print is not on A4: $(pdfinfo "$work"/printed.pdf | grep size)"
./slugpeak report "$work"/before.jsonl "$work"/after.jsonl --out "$work"/compared.html --pdf --paper letter 2>/dev/null ||
  fail "two logs cannot be compared on paper"
pdftotext -layout "$work"/compared.pdf "$work"/compared.txt
for text in 'Then and now' 'width at -6 dB' 'changed' '2 sigma'; do
  grep -qF "$text" "$work"/compared.txt || fail "the comparison on paper does not show: $text"
done
if [ -n "${KEEP_REPORT:-}" ]; then cp "$work"/report.html "$work"/report.png "$work"/printed.pdf "$KEEP_REPORT"/; fi
echo "report: all as it should be"

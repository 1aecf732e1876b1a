#!/usr/bin/env bash
# Hardware notes: every circuit value is simulated and is the one that its page states; figures can be drawn; links lead somewhere.
set -euo pipefail
cd "$(dirname "$0")/../.."
notes=hardware-notes
failed=0
complain() { echo "hardware-notes: $*" >&2; failed=1; }

# A netlist says what it must give:  *! name value tolerance "how the page says it"   (tolerance absolute, or in percent)
check_netlist() {
  local netlist=$1 page values
  page=$(awk '$1 == "*!" && $2 == "page" { print $3 }' "$netlist")
  [ -f "$notes/$page" ] || { complain "$netlist names no page"; return; }
  values=$(timeout 60 ngspice -b "$netlist" 2>/dev/null | awk '
    /THD:/ { for (i = 1; i < NF; i++) if ($i == "THD:") print "thd_pc", $(i + 1) }
    $2 == "=" { sub(/.*\./, "", $1); print tolower($1), $3 }')
  awk -v netlist="$netlist" '
    FNR == NR { value[$1] = $2; next }
    $1 == "*!" && $2 != "page" {
      name = tolower($2); limit = $4 + 0
      if ($4 ~ /%$/) limit = limit / 100 * ($3 < 0 ? -$3 : $3)
      checked++
      off = value[name] - $3
      if (!(name in value)) { print netlist ": no value for " $2; bad = 1 }
      else if (off > limit || -off > limit) { print netlist ": " $2 " is " value[name] ", stated " $3; bad = 1 }
    }
    END { if (!checked) { print netlist ": states nothing"; bad = 1 } exit bad }
  ' <(printf '%s\n' "$values") "$netlist" >&2 || failed=1
  while read -r quoted; do
    grep -qF -- "$quoted" <(tr -s "\n " " " <"$notes/$page") || complain "$page does not say \"$quoted\" ($netlist)"
  done < <(awk '$1 == "*!" && $2 != "page"' "$netlist" | sed -n 's/.*"\(.*\)".*/\1/p')
}

count=0
for netlist in "$notes"/netlists/*.cir; do
  check_netlist "$netlist"
  count=$((count + 1))
done
[ "$count" -ge 21 ] || complain "only $count netlists found"

for figure in "$notes"/figures/*.svg; do
  rsvg-convert --format png "$figure" >/dev/null || complain "$figure cannot be drawn"
done

while IFS=: read -r page link; do
  target=${link%%#*}
  [ -z "$target" ] || [ -e "$(dirname "$page")/$target" ] || complain "$page: link to $target leads nowhere"
done < <(grep -rHoE --include='*.md' '\]\([^)]+\)' "$notes" | sed -E 's/\]\(([^)]*)\)$/\1/' | grep -v '://')

[ "$failed" = 0 ] && echo "hardware notes: $count netlists agree with their pages"
exit "$failed"

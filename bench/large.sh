#!/usr/bin/env bash
# Time and peak memory of reviews of one large plane: 1,000, 10,000 and 100,000 modules.
# Usage: bench/large.sh [MODULES...]        needs bash 5 and Linux's /proc.
set -euo pipefail

home=$(cd "$(dirname "$0")/.." && pwd -P)
work=$home/target/bench
[ $# -gt 0 ] || set -- 1000 10000 100000

"$home/clampwise" --version >/dev/null # builds on first use
mkdir -p "$work"

# A job of one plane: ten times as many columns as rows would be a strip, so rows = columns / 4.
job() {
  awk -v modules="$1" 'BEGIN {
    rows = int(sqrt(modules / 4)); columns = int(modules / rows)
    printf "job: %d modules on one plane\n", rows * columns
    print "site: {codes: {loads: asce-7-16}, wind-speed: 115 mph, exposure: C, risk-category: II, ground-snow: 20 psf}"
    print "loads: {snow: {exposure-factor: \"1.0\", thermal-factor: \"1.2\"}}"
    printf "building: {roof: monoslope, length: %.0f m, width: %.0f m, mean-roof-height: 8 m}\n", columns * 1.8 + 20, rows * 1.2 + 20
    print "panels:"
    print "  roof: {kind: standing-seam, profile: double-lock, metal: steel, thickness: 24 ga, pitch: 16 in, height: 2 in, clips: floating, fixed-point: ridge, substrate: solid-deck}"
    print "planes:"
    printf "  south: {panel: roof, slope: \"1:12\", azimuth: 180 deg, size: %.0f m x %.0f m, seams: {first: 8 in}}\n", columns * 1.8 + 20, rows * 1.2 + 20
    print "fields:"
    print "  A:"
    print "    plane: south\n    module: PV-108-30\n    orientation: landscape\n    attachment: SC-A\n    mid-clamp: MC-30\n    end-clamp: EC-30\n    gap: 12 mm"
    printf "    block: {at: [5 m, 5 m], rows: %d, columns: %d}\n", rows, columns
    print "    attach: {per-edge: 2}"
    print "bonding:\n  jumper: BJ-A\n  lug: LG-A\n  jumpers: [{field: A}]\n  lugs: [{on: A.R1C1}]"
  }'
}

# Highest resident memory of a process, polled while it runs [MB].
peak() {
  local most=0 now
  while now=$(awk '/VmHWM/ {print $2}' "/proc/$1/status" 2>/dev/null) && [ -n "$now" ]; do
    most=$now
    sleep 0.05
  done
  echo $((most / 1024))
}

for modules in "$@"; do
  job "$modules" >"$work/large-$modules.yaml"
  start=${EPOCHREALTIME/[.,]/}
  "$home/clampwise" review --quiet "$work/large-$modules.yaml" >"$work/large-$modules.txt" &
  pid=$!
  memory=$(peak "$pid")
  code=0
  wait "$pid" || code=$?
  ms=$(((${EPOCHREALTIME/[.,]/} - start) / 1000))
  echo "$modules modules: $ms ms, $memory MB at most, exit code $code"
  [ "$code" -le 1 ]
done

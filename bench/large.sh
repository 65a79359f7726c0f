#!/usr/bin/env bash
# Time, processor time and peak memory of reviews of one large plane: 1,000, 10,000 and 100,000 modules, each with
# the keys that loads need and without them, in turn.
# Usage: bench/large.sh [MODULES...]        needs bash 5 and Linux's /proc.
set -euo pipefail

home=$(cd "$(dirname "$0")/.." && pwd -P)
work=$home/target/bench
[ $# -gt 0 ] || set -- 1000 10000 100000

"$home/clampwise" --version >/dev/null # builds on first use
mkdir -p "$work"

# A job of one plane: ten times as many columns as rows would be a strip, so rows = columns / 4.
# Second argument: 1 with loads, 0 without.
job() {
  awk -v modules="$1" -v loads="$2" 'BEGIN {
    rows = int(sqrt(modules / 4)); columns = int(modules / rows)
    printf "job: %d modules on one plane\n", rows * columns
    printf "site: {codes: {loads: asce-7-16}, risk-category: II%s}\n", loads ? ", wind-speed: 115 mph, exposure: C, ground-snow: 20 psf" : ""
    if (loads) print "loads: {snow: {exposure-factor: \"1.0\", thermal-factor: \"1.2\"}}"
    printf "building: {roof: monoslope, length: %.0f m, width: %.0f m, mean-roof-height: 8 m}\n", columns * 1.8 + 20, rows * 1.2 + 20
    print "panels:"
    print "  roof: {kind: standing-seam, profile: double-lock, metal: steel, thickness: 24 ga, pitch: 16 in, height: 2 in, clips: floating, fixed-point: ridge, substrate: open-purlins}"
    print "planes:"
    printf "  south: {panel: roof, slope: \"1:12\", azimuth: 180 deg, size: %.0f m x %.0f m, seams: {first: 8 in}, purlins: {first: 6 in, spacing: 5 ft}}\n", columns * 1.8 + 20, rows * 1.2 + 20
    print "fields:"
    print "  A:"
    print "    plane: south\n    module: PV-108-30\n    orientation: landscape\n    attachment: SC-A\n    mid-clamp: MC-30\n    end-clamp: EC-30\n    gap: 12 mm"
    printf "    block: {at: [5 m, 5 m], rows: %d, columns: %d}\n", rows, columns
    print "    attach: {per-edge: 2}"
    print "bonding:\n  jumper: BJ-A\n  lug: LG-A\n  jumpers: [{field: A}]\n  lugs: [{on: A.R1C1}]"
  }'
}

# Highest resident memory [MB] and processor time [ms] of a process, polled while it runs.
polled() {
  local most=0 now ticks=0 stat
  while now=$(awk '/VmHWM/ {print $2}' "/proc/$1/status" 2>/dev/null) && [ -n "$now" ]; do
    most=$now
    stat=$(cat "/proc/$1/stat" 2>/dev/null) && ticks=$(awk '{print $12 + $13}' <<<"${stat##*) }")
    sleep 0.05
  done
  echo "$((ticks * 1000 / $(getconf CLK_TCK))) ms of processor time, $((most / 1024)) MB at most"
}

# Reviews a job and says what it took.
timed() {
  local start pid used ms code=0
  start=${EPOCHREALTIME/[.,]/}
  "$home/clampwise" review --quiet "$1.yaml" >"$1.txt" &
  pid=$!
  used=$(polled "$pid")
  wait "$pid" || code=$?
  ms=$(((${EPOCHREALTIME/[.,]/} - start) / 1000))
  echo "$ms ms, $used, exit code $code"
  [ "$code" -le 1 ]
}

for modules in "$@"; do
  job "$modules" 1 >"$work/large-$modules.yaml"
  job "$modules" 0 >"$work/large-$modules-without.yaml"
  printf '%s modules with loads: ' "$modules"
  timed "$work/large-$modules"
  printf '%s modules without: ' "$modules"
  timed "$work/large-$modules-without"
done

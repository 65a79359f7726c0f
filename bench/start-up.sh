#!/usr/bin/env bash
# How long a whole review takes, as a multiple of a bare `java Hello`, both run in turn.
# Usage: bench/start-up.sh [JOB] [RUNS]        needs bash 5; fails above 8 times.
set -euo pipefail

home=$(cd "$(dirname "$0")/.." && pwd -P)
job=${1:-$home/examples/barn-junior/job.yaml}
runs=${2:-15}
work=$home/target/bench
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
floor=8

"$home/clampwise" --version >/dev/null # builds on first use
mkdir -p "$work"
cat >"$work/Hello.java" <<'JAVA'
class Hello {
  public static void main(String[] arguments) {
    System.out.println("Hello");
  }
}
JAVA
"${java}c" -d "$work" "$work/Hello.java"

hello() { "$java" -cp "$work" Hello >/dev/null; }
review() { "$home/clampwise" review "$job" >/dev/null || [ $? -eq 1 ]; }

# Milliseconds of one run.
timed() {
  local start=${EPOCHREALTIME/[.,]/}
  "$1"
  echo $(((${EPOCHREALTIME/[.,]/} - start) / 1000))
}

median() { sort -n "$1" | sed -n "$(((runs + 1) / 2))p"; }

hello && review # warm the disk cache
: >"$work/hello.ms"
: >"$work/review.ms"
for ((i = 0; i < runs; i++)); do
  timed hello >>"$work/hello.ms"
  timed review >>"$work/review.ms"
done

hello_ms=$(median "$work/hello.ms")
review_ms=$(median "$work/review.ms")
tenths=$((review_ms * 10 / hello_ms))
echo "java Hello $hello_ms ms, clampwise review $review_ms ms: $((tenths / 10)).$((tenths % 10)) times (median of $runs)"
[ "$tenths" -le $((floor * 10)) ]

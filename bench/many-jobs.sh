#!/usr/bin/env bash
# Throughput over a synthetic repository of many jobs, on one core and on two, without and with kept results, against
# merely parsing the same files; all in turn. Checks that four parts join to the bytes of one run.
# Usage: bench/many-jobs.sh [JOBS] [ROUNDS]        needs bash 5; taskset for one core.
set -euo pipefail

home=$(cd "$(dirname "$0")/.." && pwd -P)
jobs=${1:-1000}
rounds=${2:-3}
work=$home/target/bench/many-jobs
java=${JAVA_HOME:+$JAVA_HOME/bin/}java

cd "$home"
mvn -q -Pquick test-compile dependency:build-classpath -Dmdep.outputFile=target/bench-classpath
./clampwise --version >/dev/null # builds on first use
tests=target/test-classes:target/classes:$(cat target/bench-classpath)
rm -rf "$work"
mkdir -p "$work/repository"
"$java" -cp "$tests" clampwise.proof.JobForest "$work/repository" "$jobs"
export XDG_CACHE_HOME=$work/cache

# Runs on some cores: as many processors, as many threads.
on() { # cores command...
  local cores=$1
  shift
  taskset -c "0-$((cores - 1))" "$@"
}

parse() { # cores
  on "$1" "$java" -Xshare:auto -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "target/test-classes:target/clampwise.jar" \
    clampwise.bench.ParseFloor "$work/repository" "$1" >/dev/null
}
review() { # cores option...
  local cores=$1 code=0
  shift
  on "$cores" ./clampwise review "$@" "$work/repository" >"$work/out" 2>"$work/err" || code=$?
  [ "$code" -eq 1 ] && [ ! -s "$work/err" ]
}
uncached() { review "$1" --no-cache; }
cold() { rm -rf "$XDG_CACHE_HOME" && review "$1"; }
warm() { review "$1"; }

TIMEFORMAT='%3R %3U %3S'
timed() { # name cores
  { time "$1" "$2"; } 2>"$work/time"
  awk -v clock="$work/$1.$2.clock" -v used="$work/$1.$2.used" \
    '{print int($1 * 1000) >> clock; print int(($2 + $3) * 1000) >> used}' "$work/time"
}
median() { sort -n "$1" | sed -n "$(((rounds + 1) / 2))p"; }
times() { echo "$(($1 * 10 / $2 / 10)).$(($1 * 10 / $2 % 10)) times"; }

parse 2 # warm the disk cache
for ((round = 0; round < rounds; round++)); do
  for cores in 1 2; do
    for what in parse uncached cold warm; do
      timed "$what" "$cores"
    done
  done
done
for cores in 1 2; do
  floor=$(median "$work/parse.$cores.clock")
  floor_used=$(median "$work/parse.$cores.used")
  for what in parse uncached cold warm; do
    clock=$(median "$work/$what.$cores.clock")
    used=$(median "$work/$what.$cores.used")
    echo "$cores core(s), $what: $clock ms, $((jobs * 1000 / clock)) jobs/s, $(times "$clock" "$floor") parsing;" \
      "processor $used ms, $(times "$used" "$floor_used")"
  done
done

# Four parts, of which no cache knows anything, joined.
rm -rf "$XDG_CACHE_HOME"
./clampwise review --report "$work/one.sarif" --report "$work/one.xml" "$work/repository" >"$work/one.txt" || [ $? -eq 1 ]
for part in 1 2 3 4; do
  ./clampwise review --no-cache --part "$part/4" --to "$work/part-$part" "$work/repository" >/dev/null
done
./clampwise merge "$work"/part-* --report "$work/all.sarif" --report "$work/all.xml" >"$work/all.txt" || [ $? -eq 1 ]
for kind in txt sarif xml; do
  cmp "$work/one.$kind" "$work/all.$kind"
done
echo "four parts joined: the same bytes as one run (text, SARIF, JUnit XML)"

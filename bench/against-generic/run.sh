#!/usr/bin/env bash
# Holds clampwise against a generic JSON rule engine with a schema check (json-rules-engine, ajv) and against a generic
# YAML linter (Spectral): the same checks on the same files with the same verdicts, or it fails. The ratios it prints
# have to reach 10 (judging), 3 (parsing and judging) and 2 (cold start). See docs/speed.md.
# Usage: bench/against-generic/run.sh [ROUNDS]        needs bash 5, node 20 and npm
set -euo pipefail

here=$(cd "$(dirname "$0")" && pwd -P)
home=$(cd "$here/../.." && pwd -P)
rounds=${1:-20}
times=3
starts=7
work=$home/target/against-generic
java=${JAVA_HOME:+$JAVA_HOME/bin/}java

cd "$home"
./clampwise --version >/dev/null # builds on first use
[ -n "${CLASSPATH_FILE:-}" ] || {
  CLASSPATH_FILE=$home/target/bench/classpath
  mkdir -p target/bench
  mvn -q -B -Pquick test-compile dependency:build-classpath -Dmdep.outputFile="$CLASSPATH_FILE"
}
(cd "$here" && npm ci --ignore-scripts --no-audit --no-fund --silent)
rm -rf "$work" && mkdir -p "$work/sheets"

ids=$(node --input-type=module -e "import {rules} from '$here/rules.mjs'; console.log(rules.map(rule => rule.id).join())")
ours() { "$java" -XX:+UseSerialGC -cp "target/test-classes:target/classes:$(cat "$CLASSPATH_FILE")" clampwise.rulebook.AgainstGeneric "$@"; }
ours write "$ids" "$work/schema.json" "$work/sheets"
echo "$(ls "$work/sheets" | wc -l) files, $(cat "$work"/sheets/*.yaml | grep -c 'subject:') subjects, $(tr ',' '\n' <<<"$ids" | wc -l) checks"

# Warm, in turn; processor time of the processes.
for ((i = 0; i < times; i++)); do
  ours judge "$ids" "$work/sheets" "$work/clampwise.verdicts" "$rounds" >>"$work/clampwise.ms"
  node "$here/judge.mjs" "$work/schema.json" "$work/sheets" "$work/generic.verdicts" "$rounds" >>"$work/generic.ms"
  cmp "$work/clampwise.verdicts" "$work/generic.verdicts"
done
for id in ${ids//,/ } schema; do
  grep -q "^[^ ]* $id " "$work/clampwise.verdicts" || { echo "$id never fires" >&2; exit 1; }
done
echo "$(wc -l <"$work/clampwise.verdicts") verdicts, the same on both sides"

median() { sort -n | sed -n "$((($1 + 1) / 2))p"; }
of() { grep "^$2 " "$work/$1.ms" | cut -d' ' -f2 | median "$times"; }
ratio() { # name, theirs, ours, least
  awk -v name="$1" -v theirs="$2" -v ours="$3" -v least="$4" 'BEGIN {
    printf "%s: %s ms against %s ms, %.1f times (at least %s)\n", name, theirs, ours, theirs / ours, least
    exit theirs / ours < least }'
}
failed=0
echo "parsing alone: $(of generic parse) ms against $(of clampwise parse) ms"
ratio "judging" "$(of generic judge)" "$(of clampwise judge)" 10 || failed=1
ratio "parsing and judging" "$(of generic whole)" "$(of clampwise whole)" 3 || failed=1

# Cold, in turn: the linter on the sheet of a job with these checks, clampwise on the job itself with all its checks.
node "$here/ruleset.mjs" "$work/schema.json" >"$work/ruleset.json"
lint() { "$here/node_modules/.bin/spectral" lint --ruleset "$work/ruleset.json" --format json --quiet "$@"; }
lint "$work"/sheets/*.yaml >"$work/spectral.json" || [ $? -eq 1 ]
node "$here/linted.mjs" "$work/spectral.json" "$work/sheets" | sort >"$work/spectral.verdicts"
cmp "$work/clampwise.verdicts" "$work/spectral.verdicts"
echo "the same verdicts by the linter"
now() { echo "${EPOCHREALTIME/[.,]/}"; }
for ((i = 0; i <= starts; i++)); do
  a=$(now)
  lint "$work/sheets/barn-junior.yaml" >/dev/null || [ $? -eq 1 ]
  b=$(now)
  ./clampwise review examples/barn-junior/job.yaml >/dev/null || [ $? -eq 1 ]
  c=$(now)
  [ "$i" -eq 0 ] || { echo $(((b - a) / 1000)) >>"$work/lint.start"; echo $(((c - b) / 1000)) >>"$work/clampwise.start"; }
done
ratio "cold start" "$(median $starts <"$work/lint.start")" "$(median $starts <"$work/clampwise.start")" 2 || failed=1
exit $failed

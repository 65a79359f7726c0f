#!/usr/bin/env bash
# What only the finished program can show, and so no test of its classes: own rules compiled beside it, kept and taken
# again, and a review in a place without network. Run after mvn package.
set -euo pipefail
cd "$(dirname "$0")/../.."
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export HOME=$home XDG_CACHE_HOME=$home/cache XDG_CONFIG_HOME=$home/config
unset CLAMPWISE_OWN_RULES

fail() {
  echo "packaged.sh: $1" >&2
  exit 1
}
own() { ./clampwise review --lines --own-rules examples/own-rules examples/barn/job.yaml; }

first=$(own)
grep -q '\[own-gap-below-15-mm\]' <<<"$first" || fail "own rules find nothing"
kept=$(ls "$home/cache/clampwise/own-rules")
[ -n "$kept" ] || fail "compiled rules are not kept"
[ "$(stat -c %a "$home/cache/clampwise/own-rules")" = 700 ] || fail "others may look into what is kept"
[ "$(own)" = "$first" ] || fail "kept rules find something else"
[ "$(ls "$home/cache/clampwise/own-rules")" = "$kept" ] || fail "kept rules are compiled again"
./clampwise rules test examples/own-rules >"$home/test" || fail "the examples of own rules fail"

if unshare -n true 2>/dev/null; then
  unshare -n ./clampwise review --fail-on never --own-rules examples/own-rules --report "$home/r.html" --report "$home/r.sarif" \
    examples/barn/job.yaml examples/packing-hall/job.yaml >/dev/null || fail "a review needs a network"
fi
echo "packaged.sh: own rules and a review without network as they should be"

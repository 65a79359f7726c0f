#!/usr/bin/env bash
# A repository of jobs under the gate, from the day it is adopted to the day an accepted deviation runs
# out. Everything happens in a folder of its own, which is named at the end.
#
#   examples/gate/story.sh            uses the clampwise of this checkout
#   CLAMPWISE="..." story.sh          uses another command
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
read -r -a clampwise <<<"${CLAMPWISE:-$here/../../clampwise}"
folder=$(mktemp -d)
cd "$folder"

say() { printf '\n== %s\n' "$*"; }
review() { # expected exit code, arguments
  local expected=$1 code=0
  shift
  "${clampwise[@]}" review --quiet --lines "$@" >out.txt || code=$?
  if [ "$code" != "$expected" ]; then
    echo "exit code $code, expected $expected"
    cat out.txt
    exit 1
  fi
}
only() { # the one rule that fails the run
  local failing
  failing=$(grep -E ': (error|warning): ' out.txt | sed -E 's/.*\[([a-z0-9-]+)\]$/\1/' | sort -u)
  if [ "$failing" != "$1" ]; then
    echo "expected only $1 to fail the run:"
    cat out.txt
    exit 1
  fi
}

say "A repository with the debts of years"
git init -q -b main .
mkdir -p jobs/barn jobs/workshop
cp "$here/../barn-junior/job.yaml" jobs/barn/job.yaml
cp "$here/../workshop-ribs/job.yaml" jobs/workshop/job.yaml
printf 'top: yes\nfail-on: error\n' >clampwise-policy.yaml
review 1 jobs
echo "$(grep -c ': error: ' out.txt) errors, and nobody can mend them all today"

say "It adopts clampwise: what stands is recorded"
"${clampwise[@]}" record --on 2026-03-02 jobs
review 0 jobs
git add -A
git -c user.name=senior -c user.email=senior@example.org commit -qm "Adopt clampwise"

say "The junior takes another mid clamp for the workshop, which was clean"
sed -i.bak 's/MC-35/MC-40/' jobs/workshop/job.yaml
rm jobs/workshop/job.yaml.bak
git diff --stat
review 1 --on 2026-03-09 jobs
only frame-outside-mid-clamp-range
grep ': error: ' out.txt
code=0
"${clampwise[@]}" compare HEAD jobs >out.txt || code=$?
[ "$code" = 1 ]
grep -A1 'New (1)' out.txt

say "The senior accepts it with a reason, for a time"
"${clampwise[@]}" accept --on 2026-03-09 jobs/workshop/job.yaml frame-outside-mid-clamp-range \
  --reason "the frames get the 5 mm liner of sheet S-7" --by "senior designer" --until 2026-06-30
review 0 --on 2026-03-09 jobs
review 0 --on 2026-06-30 jobs
grep '1 accepted deviation' out.txt
"${clampwise[@]}" review --lines --on 2026-06-30 jobs/workshop/job.yaml |
  grep 'accepted by senior designer until 2026-06-30'

say "The deviation runs out"
review 1 --on 2026-07-01 jobs
only frame-outside-mid-clamp-range
grep ': error: ' out.txt
("${clampwise[@]}" review --lines --on 2026-07-01 jobs/workshop/job.yaml || true) | grep deviation-expired

say "A debt is solved and leaves the record"
before=$(grep -c 'rule:' clampwise-debts.yaml)
sed -i.bak 's/MC-35/MC-30/' jobs/barn/job.yaml
rm jobs/barn/job.yaml.bak
"${clampwise[@]}" record --on 2026-07-01 jobs
after=$(grep -c 'rule:' clampwise-debts.yaml)
[ "$after" -lt "$before" ]
echo "$before debts before, $after now"

say "Done in $folder"

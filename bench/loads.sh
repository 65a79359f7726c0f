#!/bin/sh
# What loads add to a warm review: processor time of the same job with and without its loads.
# Usage: bench/loads.sh [EXAMPLE...]
set -eu
cd "$(dirname "$0")/.."
mkdir -p target/bench
mvn -q -Pquick test-compile dependency:build-classpath -Dmdep.outputFile=target/bench/classpath
[ $# -gt 0 ] || set -- barn barn-junior
exec java -cp "target/test-classes:target/classes:$(cat target/bench/classpath)" clampwise.bench.WithoutLoads "$@"

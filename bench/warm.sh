#!/bin/sh
# How long a review takes in a program that is warm (JMH). Arguments go to JMH.
set -eu
cd "$(dirname "$0")/.."
mkdir -p target/bench
mvn -q -Pquick test-compile dependency:build-classpath -Dmdep.outputFile=target/bench/classpath
exec java -cp "target/test-classes:target/classes:$(cat target/bench/classpath)" \
  org.openjdk.jmh.Main WarmReview "$@"

#!/usr/bin/env bash
# Simulates runs whose truth is known, learns from them, and writes how often the intervals hold it
# to docs/learning-study.md. Takes a minute or two for 200 runs; works twice.
#   scripts/learning-study.sh [RUNS]
set -euo pipefail

home="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)"
runs="${1:-200}"
cd "$home"
mvn -q -Pquick -pl science test-compile -DskipTests=false -Dmaven.test.skip=false
list="$(mktemp)"
trap 'rm -f "$list"' EXIT
mvn -q -pl science dependency:build-classpath -Dmdep.outputFile="$list" -Dmdep.includeScope=test
{
  echo "# How often learned intervals hold the truth"
  echo
  echo "$runs simulated runs of one probed vial: parameters drawn from the beliefs, 40 readings with"
  echo "0.1 K of noise and an unknown offset, the end of ice known to 1 %. Written by"
  echo "\`scripts/learning-study.sh\`; the same numbers every time."
  echo
  java -cp "science/target/classes:science/target/test-classes:$(cat "$list")" \
    org.firnline.learning.run.CoverageStudy "$runs"
} >docs/learning-study.md
cat docs/learning-study.md

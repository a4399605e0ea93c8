#!/usr/bin/env bash
# Reads a million rows of forty channels in a heap of 512 MiB, and five million values with their
# review, and writes the times to docs/large-log.md. Needs 700 MB in bench/target; works twice.
set -euo pipefail

home="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)"
cd "$home"
mvn -B -q -Pquick -pl bench -am package
load="$(cut -d ' ' -f 1 /proc/loadavg 2>/dev/null || echo unknown)"
rows="$(java -Xmx512m -XX:+UseSerialGC -cp bench/target/firnline-bench.jar \
  org.firnline.bench.LargeLog bench/target/large)"
{
  echo "# Large logs"
  echo
  echo "Written by \`./firnline large-log\`: each file is read once from disk, streamed, by a fresh Java with"
  echo "\`-Xmx512m\`. Load before: $load on $(nproc) cores; day: $(date +%F). The data is invented."
  echo "*Computed* is the time of the reading thread alone, without garbage collection and without waiting for a core."
  echo
  echo "| what | file | rows kept | most heap used | computed | took | at most | |"
  echo "|---|---|---|---|---|---|---|---|"
  echo "$rows"
} | tee docs/large-log.md

#!/usr/bin/env bash
# Throws damaged and invented files at the log reader.
#   scripts/fuzz.sh [seconds]        with the fuzzer Jazzer, 600 s unless said otherwise
#   scripts/fuzz.sh layouts [count]  a known run in that many layouts, 20000 unless said otherwise
# Ends with an error on a crash, an input that takes longer than 20 s, or more than 1 GiB of memory;
# the input is then kept in science/target/fuzz. Writes docs/fuzzing.md.
set -euo pipefail

home="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)"
work="$home/science/target/fuzz"
page="$home/docs/fuzzing.md"
mkdir -p "$work/corpus"
cd "$home"

if [ "${1:-}" = layouts ]; then
  exec mvn -B -q -pl science test -Dtest=LayoutAxesTest -Dsurefire.failIfNoSpecifiedTests=false \
    -DargLine="-Dfirnline.layouts=${2:-20000}"
fi

seconds="${1:-600}"
mvn -B -q -Pfuzz -pl science test-compile
mvn -B -q -Pfuzz -pl science dependency:build-classpath -Dmdep.outputFile="$work/classpath"
classes="science/target/classes:science/target/test-classes:$(cat "$work/classpath")"

# Seeds: every layout of the tests, and one of each packed form.
cp science/src/test/resources/logs/layouts/*.txt "$work/corpus/"
java -cp "$classes" org.firnline.logs.FuzzSeeds "$work/corpus"

began="$(date -u +%FT%H:%MZ)"
set +e
nice -n 15 java -Xmx768m -cp "$classes" com.code_intelligence.jazzer.Jazzer \
  --target_class=org.firnline.review.LogReaderFuzz \
  --instrumentation_includes='org.firnline.logs.**' \
  --reproducer_path="$work" \
  -artifact_prefix="$work/" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=1536 \
  -max_len=8192 -print_final_stats=1 "$work/corpus" >"$work/log.txt" 2>&1
code=$?
set -e

stat_of() { sed -n "s/^stat::$1: *//p" "$work/log.txt" | tail -n 1; }
coverage="$(grep -o 'cov: [0-9]*' "$work/log.txt" | tail -n 1 | cut -d ' ' -f 2)"
{
  echo "# Fuzzing the log reader"
  echo
  echo "Written by \`./firnline fuzz\`; the target is \`LogReaderFuzz\`: read, account for every line, review."
  echo "The fuzzer is Jazzer, guided by coverage of \`org.firnline.logs\`, beginning with every layout of the tests"
  echo "and one of each packed form. An input may take 20 s; Java has a heap of 768 MiB, the process 1.5 GiB."
  echo
  echo "| | |"
  echo "|---|---|"
  echo "| began (UTC) | $began |"
  echo "| asked for | $seconds s |"
  echo "| inputs tried | $(stat_of number_of_executed_units) |"
  echo "| inputs a second, at low priority | $(stat_of average_exec_per_sec) |"
  echo "| edges reached | ${coverage:-unknown} |"
  echo "| slowest input | $(stat_of slowest_unit_time_sec) s |"
  echo "| most memory | $(stat_of peak_rss_mb) MiB |"
  echo "| crash, hang or memory beyond the limit | $([ "$code" = 0 ] && echo none || echo "yes, exit code $code") |"
} >"$page"
cat "$page"
[ "$code" = 0 ] || tail -n 40 "$work/log.txt"
exit "$code"

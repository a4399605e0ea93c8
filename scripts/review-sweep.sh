#!/usr/bin/env bash
# Reviews many simulated runs against the truth behind them: scripts/review-sweep.sh [RUNS]
# The table goes to science/target/review-sweep.txt and to the screen.
set -euo pipefail
cd "$(dirname "$0")/.."
runs="${1:-200}"
mvn -q -pl science test -Dtest=SimulatedTruthTest -Dfirnline.sweep.runs="$runs" -Djacoco.skip=true
cat science/target/review-sweep.txt

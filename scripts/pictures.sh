#!/usr/bin/env bash
# Takes the pictures of docs/pictures from the demo laboratory, in a scratch folder.
# Needs chromium on the PATH; works twice.
set -euo pipefail

home="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)"
port="${1:-8391}"
scratch="$(mktemp -d)"
"$home/firnline" demo --data "$scratch/demo" --port "$port" >"$scratch/demo.log" 2>&1 &
demo=$!
trap 'kill "$demo" 2>/dev/null || true; rm -rf "$scratch"' EXIT

for _ in $(seq 120); do
  if grep -q "http://localhost:$port/" "$scratch/demo.log"; then break; fi
  sleep 1
done

shoot() { # name, path, width, height
  chromium --headless=new --no-sandbox --disable-gpu --no-first-run --hide-scrollbars \
    --disable-background-networking --disable-component-update --disable-sync \
    --user-data-dir="$scratch/browser" --virtual-time-budget=8000 --window-size="$3,$4" \
    --screenshot="$home/docs/pictures/$1.png" "http://localhost:$port/$2" >/dev/null 2>&1
}

mkdir -p "$home/docs/pictures"
shoot today-wide "" 1280 640
shoot today-narrow "" 390 900
shoot plan-wide plan 1280 1180
shoot plan-narrow plan 390 1500
shoot run-wide runs/3 1280 1180
shoot run-narrow runs/3 390 1500
shoot run-beside "runs/3?with=4&at=primary+drying" 1280 1180

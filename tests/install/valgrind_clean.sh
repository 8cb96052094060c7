#!/usr/bin/env bash
# Every verb of the command line over the demonstration's files and the examples, each watched by Valgrind: no wrong read or write, no leak.
# valgrind_clean.sh PROGRAM, from the root of the sources
set -euo pipefail
program=$(realpath "$1")
record=$(mktemp -d /var/tmp/gritwright-valgrind-XXXXXX)
trap 'rm -rf "$record"' EXIT
examples=docs/file-format/examples
said=$record/said
runs=0
watched() {
  local code=0
  valgrind -q --leak-check=full --show-leak-kinds=definite,indirect --errors-for-leak-kinds=definite,indirect --error-exitcode=99 "$program" "$@" >"$said" 2>&1 || code=$?
  # 0 to 5 are the program's own answers: a refusal is watched as well.
  [ $code -le 5 ] || { echo "gritwright $*: exit $code" >&2; tail -n 40 "$said" >&2; exit 1; }
  runs=$((runs + 1))
}

watched --version
for file in demo-data/sieve_tests/*.csv; do watched grade "$file" --band 2-6; done
watched grade demo-data/sieve_tests/p_02_1.csv --range --laboratory --explain --json
watched screen demo-data/sieve_tests/p_02_1.csv --at 6.3 --at 2
for file in demo-data/mixes/*.json; do watched mix "$file" --pot demo-data/containers/tray_01.json; done
watched mix demo-data/mixes/junipers.json --depth-cm 12 --range --seasons 3 --units us
for file in demo-data/containers/*.json; do watched pot "$file" --mix demo-data/mixes/broadleaf.json; done
for file in $examples/design*.json; do watched design "$file"; done
for file in $examples/root_mass_plan*.json; do watched roots "$file" --stopped down=2; done
watched batch $examples/day.json --explain
watched batch $examples/season.json
for file in $examples/pot_test*.json; do watched calibrate "$file"; done
watched catalogue check
watched catalogue show zeolite
workbook=(--workbook "$record/a.gritwright")
watched log import demo-data/nursery.json "${workbook[@]}"
watched log add "buds late" --about A-12 "${workbook[@]}"
watched log list bag --words akadama "${workbook[@]}"
watched log show A-12 "${workbook[@]}"
watched log trace A-12 "${workbook[@]}"
watched log trace --shared "${workbook[@]}"
watched log export --output "$record/all.json" "${workbook[@]}"
watched log check "${workbook[@]}"
watched mix README.md
watched log check --workbook README.md
for file in tests/fixtures/spoiled/mix/*; do watched mix "$file"; done
for file in tests/fixtures/spoiled/container/*; do watched pot "$file"; done
for file in tests/fixtures/spoiled/design_problem/*; do watched design "$file"; done
for file in tests/fixtures/spoiled/record/*; do watched log import "$file" "${workbook[@]}"; done
echo "$runs runs of the command line, none with a fault of memory."

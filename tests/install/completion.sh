#!/usr/bin/env bash
# What the completion offers for words typed so far: completion.sh PROGRAM. An installed one is loaded by bash itself; here it is called as bash would.
set -u
program=$(realpath "$1")
source "$(dirname "${BASH_SOURCE[0]}")/../../src/cli/linux/gritwright.bash"
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cd "$folder"
mkdir "my sieves"
touch "my sieves/ä 1.csv" log

failed=0
offers() { # expected typed...
  local expected=$1
  shift
  COMP_WORDS=("$program" "$@")
  COMP_CWORD=$#
  COMPREPLY=()
  _gritwright
  local offered="${COMPREPLY[*]}"
  [ "$offered" = "$expected" ] && return
  echo "after '$*': '$offered' instead of '$expected'" >&2
  failed=1
}

complete -p gritwright >/dev/null
offers "grade screen mix pot design roots batch calibrate log catalogue" ""
offers "grade" gr
offers "add list show trace export import check" log ""
offers "import" log im
offers "list show check" catalogue ""
offers "--seed --strict" grade --s
offers "metric us" pot tray.json --units ""
offers "my sieves" grade my
offers "my sieves/ä 1.csv" grade "my sieves/"
offers "log" log import l
offers "" nonsense x
exit $failed

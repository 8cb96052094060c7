#!/usr/bin/env bash
# Builds the programs a second time, in another folder, from a copy of the sources and without a compiler cache, packs them and compares
# with the packages given: same_twice.sh PACKAGE...
set -euo pipefail
root=$(realpath "$(dirname "${BASH_SOURCE[0]}")/../..")
again=$(mktemp -d /var/tmp/gritwright-again-XXXXXX)
trap 'rm -rf "$again"' EXIT
mkdir "$again/sources"
(cd "$root" && tar -c --exclude=./build --exclude=./.git .) | tar -x --touch -C "$again/sources"
export CCACHE_DISABLE=1
cmake --preset release -S "$again/sources" -D BUILD_TESTING=OFF -D GRITWRIGHT_BENCHMARKS=OFF >/dev/null
cmake --build "$again/sources/build/release" >/dev/null
(cd "$again/sources/build/release" && cpack >/dev/null)
for package in "$@"; do
  cmp "$package" "$again/sources/build/release/$(basename "$package")"
  sha256sum "$package"
done
echo "Two builds in two folders made the same packages."

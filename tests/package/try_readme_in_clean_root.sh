#!/usr/bin/env bash
# Follows the README on a bare Debian 12: both commands, with the sources as the last commit has them.
# Takes as long as a build from nothing and the network; not one of the tests that always run.
#
#   try_readme_in_clean_root.sh [what ctest takes, e.g. -R "passes|package"]
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
arguments=("$@")
# shellcheck source=tests/package/clean_root.sh
source "$here/clean_root.sh"
make_clean_root
mkdir "$root/home/quilter/bastewright"
git -C "$here/../.." archive HEAD | tar -x -C "$root/home/quilter/bastewright"

echo "== bash src/start.sh"
inside bash /home/quilter/bastewright/src/start.sh
ls -l "$root/home/quilter/bastewright/build/demo"
echo "== bash tests/run.sh $*"
inside bash /home/quilter/bastewright/tests/run.sh "$@"
echo "Both worked."

#!/usr/bin/env bash
# A hundredth of the campaign of faults, some two minutes; the whole of it is run by hand (DEVELOPERS.md).
set -euo pipefail
cd "$(dirname "$0")/../.."
mvn -B -q -P faults -pl cli -am -DskipTests -DskipITs -Djacoco.skip -Dfaults.share=0.01 verify

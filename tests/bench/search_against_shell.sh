#!/usr/bin/env bash
# The search for persons against the sqlite3 shell (package sqlite3) on the same records: the program
# searches for every name keystroke of the stream, then the shell runs the bare index query of each,
# all in one process with prepared pages.
#   search_against_shell.sh BENCH_PROGRAM RECORDS.sqlite
set -euo pipefail
program=$1 records=$2
sql=$(mktemp)
trap 'rm -f "$sql"' EXIT
"$program" "$records" --sql "$sql"
printf 'the same as bare queries in the sqlite3 shell: '
TIMEFORMAT='%R s elapsed, %U s worked'
time sqlite3 -readonly "$records" < "$sql" > /dev/null

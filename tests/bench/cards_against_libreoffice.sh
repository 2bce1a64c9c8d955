#!/usr/bin/env bash
# Prints 200 cards, and has LibreOffice print a text document of the same words and pictures, in one
# run: wall time and peak memory of both. Needs libreoffice-writer and time beside the build with
# -DLEADLINE_BENCH=ON. Usage: cards_against_libreoffice.sh BUILD_FOLDER
set -euo pipefail
bench="$1/tests/bench/leadline_cards_bench"
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8

"$bench" --fodt "$folder/cards.fodt" 2>/dev/null
measure() {  # name, command...
  local name=$1
  shift
  /usr/bin/time -f '%e %M' -o "$folder/time" "$@" >/dev/null 2>&1
  read -r seconds kilobytes <"$folder/time"
  printf '%-12s %8s s %8d MB\n' "$name" "$seconds" "$((kilobytes / 1024))"
}
measure leadline "$bench" --pdf "$folder/leadline.pdf"
measure libreoffice soffice --headless -env:UserInstallation="file://$folder/profile" \
  --convert-to pdf --outdir "$folder" "$folder/cards.fodt"
# Once more: the first start made LibreOffice's settings.
measure "again" soffice --headless -env:UserInstallation="file://$folder/profile" \
  --convert-to pdf --outdir "$folder" "$folder/cards.fodt"
for file in leadline cards; do
  printf '%s: %s pages, %s words, %s bytes\n' "$file" \
    "$(pdfinfo "$folder/$file.pdf" | awk '/^Pages/ {print $2}')" \
    "$(pdftotext "$folder/$file.pdf" - | wc -w)" "$(stat -c %s "$folder/$file.pdf")"
done

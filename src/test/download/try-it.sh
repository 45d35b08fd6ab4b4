#!/bin/sh
# Unpacks the download into an empty root, with no Java and nothing of the machine in it but a shell and the C library,
# and takes advice there. Run as root: src/test/download/try-it.sh target/underfoot-VERSION-linux-x64.tar.gz
set -eu
archive=$1
chroot=$(command -v chroot)
root=$(mktemp -d)
trap 'umount "$root/proc" && rm -rf "$root"' EXIT
mkdir -p "$root/bin" "$root/tmp" "$root/home" "$root/dev" "$root/proc"
mount -t proc proc "$root/proc" # programs find their libraries by it
: >"$root/dev/null"
for tool in sh cat mv rm dirname readlink; do
  path=$(readlink -f "$(command -v "$tool")")
  cp "$path" "$root/bin/$tool"
  ldd "$path"
done | sed -n 's/.*=> //; s/^[[:space:]]*//; s/ (0x.*//p' | sort -u >"$root/tmp/libraries"
tar -xzf "$archive" -C "$root/home"
home=$(basename "$archive" .tar.gz)
ldd "$root/home/$home/runtime/bin/java" "$root/home/$home/runtime/lib/server/libjvm.so" |
  sed -n 's/.*=> //; s/^[[:space:]]*//; s/ (0x.*//p' >>"$root/tmp/libraries"
ldd "$root/home/$home/runtime/lib/libzip.so" "$root/home/$home/runtime/lib/libnio.so" |
  sed -n 's/.*=> //; s/^[[:space:]]*//; s/ (0x.*//p' >>"$root/tmp/libraries"
sort -u "$root/tmp/libraries" | while read -r library; do
  case $library in
    /*)
      mkdir -p "$root$(dirname "$library")"
      cp -L "$library" "$root$library"
      ;;
  esac
done
run() {
  env -i PATH=/bin HOME=/home "$chroot" "$root" /bin/sh -c "cd /home/$home && ./underfoot $*"
}
if env -i PATH=/bin "$chroot" "$root" /bin/sh -c 'command -v java'; then
  echo "there is a Java in the root; nothing is shown by this" >&2
  exit 1
fi
set +e
for scenario in "$root/home/$home"/scenarios/kitchen-*.yaml; do
  name=$(basename "$scenario")
  run advise "scenarios/$name" --json >"$root/tmp/out" 2>"$root/tmp/err"
  code=$?
  if [ "$code" -ne 0 ] && [ "$code" -ne 4 ]; then
    echo "$name: ended with $code" >&2
    cat "$root/tmp/err" >&2
    exit 1
  fi
  grep -q '"verdict"' "$root/tmp/out" || { echo "$name: no verdict" >&2; exit 1; }
  echo "$name: advised"
done

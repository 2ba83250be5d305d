# SPDX-License-Identifier: EPL-2.0
# session.sh LAUNCHER PROGRAM JOB READER PAGE...   the window and its reader on a bus of their own
launcher=$1 program=$2 job=$3 reader=$4
shift 4
export GDK_BACKEND=x11
"$launcher" --launch-immediately &
bus=$!
sleep 1
"$program" "$job" &
window=$!
/usr/bin/python3 "$reader" 240 "$@"
status=$?
kill "$window"
wait "$window"
kill "$bus"
exit "$status"

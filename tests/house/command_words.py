"""What scripts and workflows call: is every program there, and does it take these words?

A line of a script is looked at by its first words; of a pipe or a list each part. What a shell itself does is taken as given.
"""

import json
import re
import shlex
import subprocess

import yaml

# What stands on the machines that run them: Debian's own tools, the shell's, and the host's command line.
PLAIN_TOOLS = set("apt-get git bash printf head tr echo gh gzip base64 zip cp [ if then else fi { } rm mkdir tar exit cd set case esac".split())
OPTION = re.compile(r"--[a-z][a-z-]*")
INSIDE = re.compile(r"\$\(((?:[^()]|\((?:[^()]|\([^()]*\))*\))*)\)")


def runs_of(workflow):
    """(step, script) of each `run` of a workflow."""
    return [(f"{job} step {place}", step["run"])
            for job, body in workflow["jobs"].items() for place, step in enumerate(body["steps"], 1) if "run" in step]


def split_line(line):
    """The commands of one line, what stands in $(...) as commands of their own."""
    inner = []
    line = INSIDE.sub(lambda match: inner.append(match[1]) or "x", line)
    part = []
    for word in [*shlex.shlex(line, posix=True, punctuation_chars="|&;<>"), ";"]:
        if word.strip("|&;"):
            part.append(word)
        elif part:
            yield part
            part = []
    for command in inner:
        yield from split_line(command)


def parts_of(script):
    """The commands of a script as lists of words."""
    for line in script.replace("\\\n", " ").splitlines():
        if line.strip() and not line.strip().startswith("#"):
            yield from split_line(line)


def option_faults(words, known):
    return [f"{' '.join(words)}: no option {option}" for word in words[2:] for option in OPTION.findall(word.split("=")[0]) if option not in known]


class Project:
    def __init__(self, root, program):
        self.root = root
        self.program = program
        self.presets = json.loads((root / "CMakePresets.json").read_text(encoding="utf-8"))
        self.helps = {}

    def help_of(self, command):
        if command not in self.helps:
            run = subprocess.run([self.program, command, "--help"], capture_output=True, text=True, check=False)
            common = subprocess.run([self.program, "--help"], capture_output=True, text=True, check=True)
            self.helps[command] = set(OPTION.findall(run.stdout + common.stdout)) if run.stdout != common.stdout else None
        return self.helps[command]

    def benchleaf_faults(self, words):
        if len(words) < 2 or self.help_of(words[1]) is None:
            return [f"{' '.join(words)}: no such command"]
        return option_faults(words, self.help_of(words[1]))

    def preset_faults(self, words):
        """`cmake --workflow --preset X`, `cmake --preset X`, `cmake --build --preset X`, `ctest --preset X`."""
        if "--preset" not in words:
            return [f"{' '.join(words)}: names no preset"]
        name = words[words.index("--preset") + 1]
        kind = {"--workflow": "workflowPresets", "--build": "buildPresets"}.get(words[1], "configurePresets")
        kind = "testPresets" if words[0] == "ctest" else kind
        known = [one["name"] for one in self.presets[kind] if not one.get("hidden")]
        return [] if name in known else [f"{' '.join(words)}: no preset {name} among {kind}"]

    def script_faults(self, words):
        """A script of the project says in its own first lines what it takes."""
        path = self.root / words[0]
        if not path.is_file() or not path.stat().st_mode & 0o111:
            return [f"{' '.join(words)}: {words[0]} is no program of the project"]
        lines = re.findall(rf"^#   {re.escape(words[0])}(.*)$", path.read_text(encoding="utf-8"), re.M)
        forms = [re.split(r" {2,}", line[1:] if line[:2] != "  " else "")[0] for line in lines]
        given = words[1:]
        fits = any(given == form.split() or form.startswith("[") and len(given) <= 1 for form in forms)
        return [] if fits else [f"{' '.join(words)}: takes {forms}"]

    def faults(self, words):
        words = [word for word in words if word not in ("if", "then", "!", "step", "else")]
        while words and re.fullmatch(r"[A-Za-z_]+=.*", words[0], re.S):
            words = words[1:]
        if not words:
            return []
        if words[0] == "bash" and len(words) > 1 and words[1].startswith(".ci/"):
            words = words[1:]
        if words[0] in ("benchleaf", "$program"):
            return self.benchleaf_faults(words)
        if words[0] in ("cmake", "ctest"):
            return self.preset_faults(words)
        if words[0].startswith(".ci/"):
            return self.script_faults(words)
        return [] if words[0] in PLAIN_TOOLS else [f"{' '.join(words)}: {words[0]} is not known"]


def workflow_faults(project, texts):
    """Of workflows by file name: their commands, and the names by which one takes up what another leaves."""
    found = []
    workflows = {name: yaml.safe_load(text) for name, text in texts.items()}
    names = {flow["name"] for flow in workflows.values()}
    left, taken = set(), set()
    looked = 0
    for file, flow in workflows.items():
        for step, script in runs_of(flow):
            for words in parts_of(script):
                looked += 1
                found += [f"{file}: {step}: {fault}" for fault in project.faults(words)]
        for job in flow["jobs"].values():
            for step in job["steps"]:
                uses = step.get("uses", "")
                if uses and not re.search(r"@[0-9a-f]{40}$", uses):
                    found.append(f"{file}: {uses} is not pinned by commit")
                (left if "upload-artifact" in uses else taken if "download-artifact" in uses else set()).add(step.get("with", {}).get("name"))
        events = flow.get("on", flow.get(True))  # YAML 1.1 reads the key as a truth value
        for wanted in (events.get("workflow_run", {}) if isinstance(events, dict) else {}).get("workflows", []):
            if wanted not in names:
                found.append(f"{file}: waits for {wanted}, which no workflow is called")
    found += [f"nobody leaves the artifact {name}" for name in sorted(taken - left)]
    return found, looked

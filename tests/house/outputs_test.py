"""What programs read of Benchleaf is as its schemas say: every JSON output, facts.jsonl and the package that describes it.

Arguments: the program, the content, the schema. Validated by Debian's python3-jsonschema (JSON Schema, draft 7). The rules of a
data package are those of the Data Package standard, version 1: https://specs.frictionlessdata.io/data-package/ and
/data-resource/, /table-schema/, recalled, not read anew.
"""

import copy
import hashlib
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

import jsonschema

ASKED = {
    "check": [["check", "--json"]],
    "rules": [["check", "--rules", "--json"]],
    "find": [["find", "--json", *words.split()] for words in ("393", "7.9x5.4", "bleach vinegar", "swallowed", "393 364", "helicopter")],
    "calculators": [["reckon", "--json"]],
    "reckon": [
        ["reckon", "--json", *words.split()]
        for words in ("gasket-fit seat=24mm series=round-0-7", "cell-swap cell=393", "gasket-fit", "no-such", "scratch-ladder scratch=nail-catches")
    ],
}
TYPES = {"string": str, "number": (int, float), "boolean": bool, "array": list}  # of a Table Schema, as JSON has them


class Outputs(unittest.TestCase):
    program, content, schema = None, None, None

    def shape(self, name):
        text = (pathlib.Path(self.schema) / "outputs" / f"{name}.schema.json").read_text(encoding="utf-8")
        jsonschema.Draft7Validator.check_schema(json.loads(text))
        return jsonschema.Draft7Validator(json.loads(text))

    def run_program(self, *words):
        run = subprocess.run([self.program, "--content", self.content, "--schema", self.schema, "--quiet", *words],
                             capture_output=True, text=True, check=False)
        self.assertIn(run.returncode, (0, 1), run.stderr)
        return run.stdout

    def held(self, name, value):
        self.assertEqual([error.message for error in self.shape(name).iter_errors(value)], [], name)

    def refused(self, name, value):
        """A schema that takes anything shows nothing."""
        more = copy.deepcopy(value)
        more["no-such-key"] = 1
        self.assertFalse(self.shape(name).is_valid(more), name)
        for key in self.shape(name).schema["required"]:
            less = copy.deepcopy(value)
            del less[key]
            self.assertFalse(self.shape(name).is_valid(less), f"{name} without {key}")

    def test_each_output_is_as_its_schema_says(self):
        for name, calls in ASKED.items():
            for words in calls:
                with self.subTest(words):
                    value = json.loads(self.run_program(*words))
                    self.held(name, value)
                    self.refused(name, value)

    def test_a_plan_and_changes_are_as_their_schemas_say(self):
        watches = sorted((pathlib.Path(self.content) / "watch").glob("*.yaml"))
        self.assertGreaterEqual(len(watches), 3)
        with tempfile.TemporaryDirectory() as folder:
            for watch in watches[:3]:
                value = json.loads(self.run_program("ticket", "--json", "--to", folder, str(watch)))
                self.held("ticket", value)
                self.refused("ticket", value)
        other = pathlib.Path(__file__).resolve().parents[1] / "command" / "states"
        run = subprocess.run([self.program, "--schema", self.schema, "--quiet", "changes", "--json", str(other / "content"), str(self.content)],
                             capture_output=True, text=True, check=False)
        self.assertEqual(run.returncode, 1, run.stderr)
        value = json.loads(run.stdout)
        self.assertTrue(value["stated"])
        self.held("changes", value)
        self.refused("changes", value)

    def test_facts_and_the_package_that_describes_them(self):
        with tempfile.TemporaryDirectory() as folder:
            run = subprocess.run([self.program, "--schema", self.schema, "--quiet", "bind", self.content, "--only", "facts", "--to", folder],
                                 capture_output=True, text=True, check=False)
            self.assertEqual(run.returncode, 0, run.stderr)
            bound = pathlib.Path(folder) / "handbook"
            data = (bound / "facts.jsonl").read_bytes()
            package = json.loads((bound / "datapackage.json").read_text(encoding="utf-8"))
        facts = [json.loads(line) for line in data.decode("utf-8").splitlines()]
        self.assertGreater(len(facts), 5000)
        shape = self.shape("fact")
        self.assertEqual([error.message for fact in facts for error in shape.iter_errors(fact)], [])
        self.refused("fact", facts[0])
        self.assertEqual(package_faults(package, data, facts), [])
        # the checks refuse what is wrong
        self.assertNotEqual(package_faults(package, data + b"\n", facts), [])
        self.assertNotEqual(package_faults({**package, "name": "Two Words"}, data, facts), [])
        self.assertNotEqual(package_faults(package, data, [{**facts[0], "derived": "no"}, *facts[1:]]), [])
        self.assertNotEqual(package_faults(package, data, [*facts, facts[0]]), [])


def package_faults(package, data, facts):
    """What is wrong with a package of one table by the standard, and with the table by its schema."""
    faults = []
    if not re.fullmatch(r"[a-z0-9._/-]+", package.get("name", "")):
        faults.append("name")
    for licence in package.get("licenses", []):
        if not ("name" in licence or "path" in licence):
            faults.append("licence")
    (resource,) = package["resources"]
    if not re.fullmatch(r"[a-z0-9._/-]+", resource["name"]) or resource["path"] != "facts.jsonl":
        faults.append("resource")
    if resource["bytes"] != len(data) or resource["hash"] != "sha256:" + hashlib.sha256(data).hexdigest():
        faults.append("size or hash")
    fields = {field["name"]: field for field in resource["schema"]["fields"]}
    if resource["schema"]["primaryKey"] not in fields:
        faults.append("primary key")
    ids = [fact["id"] for fact in facts]
    if len(set(ids)) != len(ids):
        faults.append("ids")
    for fact in facts:
        for key, value in fact.items():
            if key not in fields:
                faults.append(f"no field {key}")
            elif value is not None and not isinstance(value, TYPES[fields[key]["type"]]):
                faults.append(f"{fact['id']} {key}")
            elif "enum" in fields[key].get("constraints", {}) and value not in fields[key]["constraints"]["enum"]:
                faults.append(f"{fact['id']} {key}")
    return faults


if __name__ == "__main__":
    Outputs.program, Outputs.content, Outputs.schema = sys.argv[1:4]
    unittest.main(argv=sys.argv[:1])

"""The HTML of a bound folder is valid for two checkers of others, and no link of it is dead.

usage: html_check.py FOLDER valid|every|links|scripts    valid: all pages by one checker, the first of each template and every fourth
                                                         page by the other, which is slow; every: all pages by both; scripts: their
                                                         size together
"""

import json
import pathlib
import sys

import tools

CONFIGURATION = pathlib.Path(__file__).with_name("html-validate.json")
LARGEST_SCRIPTS = 3_200_000  # bytes; a page that asks loads them from a stick or a slow line
# What lies in assets/ beside the pages is allowed by 'self' in browsers that open a file; this checker judges by the specification
# alone. That the browser runs it, browser_check.mjs shows.
OWN_ASSETS = ".*external (stylesheet|script) .(\\.\\./)?assets/.* blocked by .(style|script)-src. directive.*"


def a_fourth(documents):
    """Style sheets, the first page of each folder, and every fourth page."""
    first = {path.parent: path for path in reversed(documents)}
    return [path for place, path in enumerate(documents) if path.suffix == ".css" or path == first[path.parent] or place % 4 == 0]


def validity_faults(site, every):
    pages = tools.node("html-validate/bin/html-validate.mjs", "--config", CONFIGURATION, "--formatter", "text", f"{site}/**/*.html")
    found = lines_of("html-validate", pages)
    # named one by one: in a folder the checker reads every file as HTML, a script too
    documents = sorted(path for path in site.rglob("*") if path.suffix in (".html", ".css"))
    documents = documents if every else a_fourth(documents)
    nu = tools.run("java", "-jar", tools.CHECKERS / "vnu-jar" / "build" / "dist" / "vnu.jar", "--Werror", "--also-check-css",
                   "--filterpattern", OWN_ASSETS, "--format", "gnu", *documents)
    return found + lines_of("vnu", nu)


def single_faults(file):
    """The book in one file; its policy names what is inside by hash, which the Nu checker does not work out and the browser does."""
    page = tools.node("html-validate/bin/html-validate.mjs", "--config", CONFIGURATION, "--formatter", "text", file)
    nu = tools.run("java", "-jar", tools.CHECKERS / "vnu-jar" / "build" / "dist" / "vnu.jar", "--Werror",
                   "--filterpattern", ".*Inline (style|script) violates Content Security Policy.*hash.*", "--format", "gnu", file)
    return lines_of("html-validate", page) + lines_of("vnu", nu)


def lines_of(tool, process):
    """What a checker said; a checker that failed without a word is a fault too."""
    said = [f"{tool}: {line}" for line in (process.stdout + process.stderr).splitlines() if line.strip()]
    if process.returncode != 0 and not said:
        said = [f"{tool}: exit {process.returncode}"]
    return said if process.returncode != 0 else []


def link_faults(site):
    """(faults, number of links looked at); fragments are followed too."""
    crawl = tools.node("linkinator/build/src/cli.js", site, "--recurse", "--check-fragments", "--format", "JSON")
    try:
        links = json.loads(crawl.stdout[crawl.stdout.index("{"):])["links"]
    except (ValueError, KeyError):
        return [f"linkinator: {crawl.stdout} {crawl.stderr}"], 0
    found = list(dict.fromkeys(f'dead link {link["url"]} on {link.get("parent")}' for link in links if link["state"] == "BROKEN"))
    if crawl.returncode != 0 and not found:
        found = [f"linkinator: exit {crawl.returncode}: {crawl.stderr.strip()}"]
    return found, len(links)


def script_faults(site):
    scripts = sorted(site.rglob("*.js"))
    size = sum(path.stat().st_size for path in scripts)
    print(f"{len(scripts)} scripts, {size} bytes")
    found = [] if site / "assets" / "program.js" in scripts else ["no program.js"]
    return found + ([f"scripts of {size} bytes, at most {LARGEST_SCRIPTS}"] if size > LARGEST_SCRIPTS else []), len(scripts)


def main(folder, what):
    site = folder / "html"
    if what == "scripts":
        found, scripts = script_faults(site)
        tools.finish(found, f"{scripts} scripts")
    pages = len(list(site.rglob("*.html")))
    found = [] if pages > 100 else [f"only {pages} pages"]
    if what != "links":
        found += validity_faults(site, what == "every") + single_faults(site.parent / "handbook.html")
        tools.finish(found, f"{pages} pages")
    dead, links = link_faults(site)
    found += dead if links >= pages else [*dead, f"only {links} links on {pages} pages"]
    tools.finish(found, f"{links} links on {pages} pages")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), sys.argv[2])

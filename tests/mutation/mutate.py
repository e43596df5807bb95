#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Plants small mistakes in the code that makes money, one at a time, and says which of them the core tests let pass.

    cmake -S . -B build-dev -G Ninja -DCMAKE_BUILD_TYPE=None -DCMAKE_CXX_FLAGS=-O0
    tests/mutation/mutate.py build-dev                       a sample of 300 mistakes over all the files
    tests/mutation/mutate.py build-dev --file 'core/pricing/*.cpp' --sample 0       every mistake in some files
    tests/mutation/mutate.py build-dev --again build-dev/mutation/report.json       what survived before, once more

Needs a build folder of Ninja's, configured without unity, and Python 3.9; builds the test programs that it runs. The
same seed and the same code give the same sample; a smaller one is the beginning of a larger. Interrupted, it tells what
it has found so far. It never writes into the tree: each mistake is made in a copy under
BUILD/mutation, compiled with the flags of the file it stands for, linked in front of the libraries of the core test
programs and run, quick tests first. A mistake is caught when a program fails, crashes or takes far longer than it
should. Warnings are no errors here: what only the compiler would have complained about must be caught by a test.

Mistakes that make no other program are listed in equal.txt beside this script, each with its reason, and do not count:
    file | line of code | what -> what instead (with #2 where it is the second such place of the line) | reason
An entry is found by its text, not by a line number; one that no longer fits anything is reported.
"""

import argparse
import fnmatch
import json
import os
import random
import re
import shlex
import signal
import subprocess
import sys
import threading
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
FILES = ["core/needs/*.cpp", "core/planning/*.cpp", "core/costing/*.cpp", "core/pricing/*.cpp", "core/units/apportion.cpp",
         "core/supply/kit_yield.cpp", "core/supply/odds.cpp", "tests/reference/purchase_check.cpp"]
NO_COSTING_SUITES = ("core_artwork", "core_layout", "core_base")
QUICK = 0.25  # seconds a test may take to be run first
SEED_OF_TESTS = "20261129"

TOKEN = re.compile(r"""
      (?P<skip>//[^\n]*|/\*.*?\*/|^[ \t]*\#[^\n]*|R"\((?:.*?)\)"|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])+'(?!\d))
    | (?P<number>\b\d[\d'.]*(?:e-?\d+)?\w*)
    | (?P<word>[A-Za-z_]\w*)
    | (?P<mark><=>|->|::|\+\+|--|<<=|>>=|[-+*/%&|^!=<>]=|&&|\|\||<<|>>|\.\.\.|[-+*/%<>=!&|^~?:;,.(){}\[\]])
    """, re.X | re.S | re.M)

# Only where a space stands on both sides: so are binary operators written here, and templates and references are not.
BINARY = {"+": ["-"], "-": ["+"], "*": ["/"], "/": ["*"], "%": ["/"], "<": ["<=", ">="], "<=": ["<", ">"],
          ">": [">=", "<="], ">=": [">", "<"], "==": ["!="], "!=": ["=="], "&&": ["||"], "||": ["&&"],
          "+=": ["-=", "="], "-=": ["+=", "="]}
UNARY = {"++": ["--"], "--": ["++"]}
WORDS = {"min": ["max"], "max": ["min"], "true": ["false"], "false": ["true"], "ceiling": ["floor"],
         "floor": ["ceiling"], "roundedHalfUp": ["roundedHalfEven"], "roundedHalfEven": ["roundedHalfUp"],
         "front": ["back"], "back": ["front"], "break": ["continue"], "continue": ["break"]}
NOT_A_CALL = {"if", "for", "while", "switch", "return", "catch", "sizeof", "static_assert", "min", "max", "explicit",
              "operator", "alignas", "noexcept", "decltype",
              "term", "how"}  # a name and its value: never of one type
PARAMETER = re.compile(r"\s*(const\b.*|[\w:<>]+[&*]?\s+\w+)(\s*=.*)?\s*")
NO_STATEMENT = {"return", "using", "namespace", "const", "constexpr", "auto", "static", "case", "default", "break",
                "continue", "throw", "if", "else", "for", "while", "do", "switch", "struct", "class", "enum", "public",
                "private", "protected", "template", "try", "catch", "explicit", "friend", "inline", "typedef", "goto"}


class Token:
    __slots__ = ("kind", "text", "start", "end")

    def __init__(self, kind, text, start):
        self.kind, self.text, self.start, self.end = kind, text, start, start + len(text)


def tokens_of(text):
    return [Token(m.lastgroup, m.group(), m.start()) for m in TOKEN.finditer(text) if m.lastgroup != "skip"]


def closing(tokens, i):
    """The place of the bracket that closes the one at i, or none."""
    pairs = {"(": ")", "{": "}", "[": "]"}
    depth, opening, close = 0, tokens[i].text, pairs[tokens[i].text]
    for j in range(i, len(tokens)):
        if tokens[j].text == opening:
            depth += 1
        elif tokens[j].text == close:
            depth -= 1
            if depth == 0:
                return j
    return None


def edits_of(text):
    """All mistakes: (start, end, instead, what, what instead)."""
    tokens = tokens_of(text)
    edits = []

    def put(token, instead):
        edits.append((token.start, token.end, instead, token.text, instead))

    for i, token in enumerate(tokens):
        spaced = text[token.start - 1:token.start].isspace() and text[token.end:token.end + 1].isspace()
        before = tokens[i - 1].text if i else ""
        after = tokens[i + 1].text if i + 1 < len(tokens) else ""
        if token.kind == "mark":
            if spaced and token.text in BINARY:
                for instead in BINARY[token.text]:
                    put(token, instead)
            elif token.text == "|" and spaced:  # a flag forgotten
                left, right = tokens[i - 1], tokens[i + 1]
                if left.kind == right.kind == "word":
                    what = f"{left.text} | {right.text}"
                    edits.append((left.start, right.end, right.text, what, right.text))
                    edits.append((left.start, right.end, left.text, what, left.text))
            elif token.text in UNARY:
                for instead in UNARY[token.text]:
                    put(token, instead)
            elif token.text == "!" and after != "=":
                put(token, "")
        elif token.kind == "number":
            plain = token.text.replace("'", "")
            if plain in ("0", "1"):
                put(token, "1" if plain == "0" else "0")
                if plain == "1":
                    put(token, "2")
            elif plain.isdigit():
                put(token, str(int(plain) + 1))
        elif token.kind == "word":
            if token.text in WORDS and (after in "(<;" or token.text in ("true", "false")):
                for instead in WORDS[token.text]:
                    put(token, instead)
            elif token.text == "if" and after == "(":
                end = closing(tokens, i + 1)
                inside = text[tokens[i + 1].end:tokens[end].start]
                if ";" not in inside and not inside.lstrip().startswith(("auto ", "const ")):
                    what = "if (" + " ".join(inside.split()) + ")"
                    edits.append((tokens[i + 1].end, tokens[end].start, f"!({inside})", what, "negated"))
                    edits.append((tokens[i + 1].end, tokens[end].start, f"false && ({inside})", what, "never"))
                elif ";" in inside:  # if (auto ok = …; !ok): the `!` is a mistake of its own
                    pass
        # Swapped arguments.
        if token.text == "(" and i and tokens[i - 1].kind == "word" and before not in NOT_A_CALL:
            end = closing(tokens, i)
            if end is not None and end > i + 1:
                commas, depth = [], 0
                for j in range(i, end + 1):
                    if tokens[j].text in "([{":
                        depth += 1
                    elif tokens[j].text in ")]}":
                        depth -= 1
                    elif tokens[j].text == "," and depth == 1:
                        commas.append(j)
                if len(commas) == 1 and "[&" not in text[token.end:tokens[end].start]:
                    one = text[token.end:tokens[commas[0]].start]
                    two = text[tokens[commas[0]].end:tokens[end].start].lstrip()
                    if one.strip() != two.strip() and "\n" not in one and not PARAMETER.fullmatch(one):
                        edits.append((token.end, tokens[end].start, f"{two}, {one}", f"{before}({one}, {two})",
                                      "arguments swapped"))
        # A statement left out.
        if before in (";", "{", "}", ")") or before == "else":
            edit = statement_at(text, tokens, i)
            if edit:
                edits.append(edit)
    # A function of no result left at once.
    for match in re.finditer(r"^[ \t]*void (\w+)\([^;{]*\)(?: const)? \{\n", text, re.M):
        at = match.end() - 1
        edits.append((at, at, " return;", match.group(1), "returns at once"))
    return edits


def statement_at(text, tokens, i):
    """An assignment or a call that stands as a statement of its own from token i on."""
    first = tokens[i]
    if first.kind != "word" or first.text in NO_STATEMENT:
        return None
    if i and tokens[i - 1].text == ")" and not re.search(r"\b(if|for|while)\b", text[text.rfind("\n", 0, first.start) - 120:first.start]):
        return None
    depth, seen = 0, False
    for j in range(i, len(tokens)):
        mark = tokens[j].text
        if mark in ("(", "[", "{"):
            depth += 1
            seen = seen or mark == "("
        elif mark in (")", "]", "}"):
            depth -= 1
            if depth < 0:
                return None
        elif depth == 0 and mark in ("=", "+=", "-=", "*=", "/=", "++", "--", "<<"):
            seen = True
        elif depth == 0 and mark == ";":
            if not seen:
                return None
            what = " ".join(text[first.start:tokens[j].end].split())
            return (first.start, tokens[j].start, "", what if len(what) < 70 else what[:67] + "...", "left out")
        elif depth == 0 and not seen:
            joined = tokens[j].kind in ("word", "number") and j > i and tokens[j - 1].kind == "word"
            if joined or (mark in ("*", "&", "<", ">", ":", "?") and mark != "::"):
                return None  # a declaration, a label or an expression of several things
    return None


class Mutant:
    def __init__(self, file, text, edit, number):
        start, end, instead, self.what, self.instead = edit
        self.file, self.start, self.end, self.text = file, start, end, instead
        self.line = text.count("\n", 0, start) + 1
        lines = text.split("\n")
        self.code = lines[self.line - 1].strip()
        self.number = number
        last = text.count("\n", 0, end) + 1
        self.old = lines[self.line - 1:last]
        self.new = (text[:start] + instead + text[end:]).split("\n")[self.line - 1:last + instead.count("\n") - text[start:end].count("\n")]

    def key(self):
        again = f" #{self.number}" if self.number > 1 else ""
        return (self.file, self.code, f"{self.what} -> {self.instead or 'nothing'}{again}")

    def __str__(self):
        return f"{self.file}:{self.line}  {self.key()[2]}"


def mutants_of(file):
    text = (ROOT / file).read_text(encoding="utf-8")
    found, seen = [], {}
    for edit in edits_of(text):
        line = text.count("\n", 0, edit[0]) + 1
        same = (line, edit[3], edit[4])
        seen[same] = seen.get(same, 0) + 1
        found.append(Mutant(file, text, edit, seen[same]))
    return found


class Build:
    """What Ninja knows: how a file is compiled, and how a test program is linked."""

    def __init__(self, folder):
        self.folder = Path(folder).resolve()
        self.work = self.folder / "mutation"
        self.work.mkdir(exist_ok=True)
        database = json.loads(self.ninja("-t", "compdb"))
        self.compiles = {os.path.relpath(os.path.join(e["directory"], e["file"]), ROOT): e for e in database
                         if e["file"].endswith(".cpp") and " -c " in e["command"]}
        targets = [line.split(":")[0] for line in self.ninja("-t", "targets", "all").splitlines()]
        self.programs = [t for t in targets if re.fullmatch(r"tests/core/\w+/core_\w+_tests", t)
                         and not os.path.basename(t).startswith(NO_COSTING_SUITES)]
        self.links = {p: self.ninja("-t", "commands", p).splitlines()[-1] for p in self.programs}

    def ninja(self, *words):
        done = subprocess.run(["ninja", "-C", str(self.folder), *words], capture_output=True, text=True)
        if done.returncode != 0:
            sys.exit(f"ninja {' '.join(words)} failed in {self.folder}:\n{done.stdout[-3000:]}{done.stderr[-2000:]}")
        return "\n".join(line for line in done.stdout.splitlines() if not line.startswith("ninja: Entering"))

    def programs_of(self, file):
        output = self.compiles[file]["output"]
        query = self.ninja("-t", "query", output)
        archives = re.findall(r"^\s+(\S+\.a)$", query.split("outputs:")[-1], re.M)
        used = [p for p in self.programs if any(re.search(rf"(^|\s){re.escape(a)}(\s|$)", self.links[p]) for a in archives)]
        room = os.path.basename(os.path.dirname(file))
        return sorted(used, key=lambda p: (f"/{room}/" not in p, "supply" in p, p))

    def compile_words(self, file):
        """The compiler and its flags, without input, output and the dependency file."""
        words, out, skip = shlex.split(self.compiles[file]["command"]), [], False
        for word in words:
            if skip:
                skip = False
            elif word in ("-o", "-MF", "-MT", "-c"):
                skip = True
            elif word not in ("-MD", "-Werror") and os.path.basename(word) != "ccache":
                out.append(word)
        return out + ["-w"]

    def link_words(self, program, object_file, output):
        part = next(p for p in self.links[program].split(" && ") if f" -o {program}" in p)
        words = shlex.split(part)
        words[words.index("-o") + 1] = str(output)
        first = next(i for i, w in enumerate(words) if w.endswith(".o"))
        return words[:first] + [str(object_file)] + words[first:]


def run(words, folder, seconds, env=None):
    try:
        done = subprocess.run(words, cwd=folder, timeout=seconds, env=env, stdout=subprocess.PIPE,
                              stderr=subprocess.STDOUT)
        return done.returncode, done.stdout.decode(errors="replace")
    except subprocess.TimeoutExpired:
        return None, ""


class Bench:
    """Runs mutants; knows how long the tests take when nothing is wrong."""

    def __init__(self, build, options):
        self.build, self.options = build, options
        self.env = dict(os.environ, STONEPENNY_SEED=SEED_OF_TESTS)
        self.stages = {}   # program -> [(filter, seconds)]
        self.headers = {}  # file -> the prefix header that is compiled already
        self.lock = threading.Lock()

    def measure(self, programs):
        self.build.ninja(*programs)
        for program in programs:
            report = self.build.work / (os.path.basename(program) + ".json")
            code, out = run([str(self.build.folder / program), f"--gtest_output=json:{report}",
                             f"--gtest_filter={self.options.tests}"], self.build.folder, 900, self.env)
            if code not in (0, 1):
                sys.exit(f"{program} does not run as it is:\n{out[-3000:]}")
            suites = json.loads(report.read_text())["testsuites"]
            every = {f"{s['name']}.{t['name']}": t for s in suites for t in s["testsuite"]}
            failing = [n for n, t in every.items() if "failures" in t]
            for name in failing:
                print(f"left out, it fails as it is: {name}", flush=True)
            times = {n: float(t["time"].rstrip("s")) for n, t in every.items() if n not in failing}
            slow = {n: t for n, t in times.items() if QUICK <= t <= self.options.slow}
            left_out = [n for n, t in times.items() if t > self.options.slow]
            none = ":".join([*slow, *left_out, *failing])
            without = ":" if "-" in self.options.tests else "-"
            self.stages[program] = [(f"{self.options.tests}{without}{none}" if none else self.options.tests,
                                     sum(t for t in times.values() if t < QUICK))]
            if slow:
                self.stages[program].append((":".join(slow), sum(slow.values())))
            for name in left_out:
                print(f"left out: {name}, {times[name]:.1f} s", flush=True)

    def prefix_of(self, file):
        """The includes of a file, compiled once for all its mutants."""
        with self.lock:
            if file in self.headers:
                return self.headers[file]
            words = self.build.compile_words(file)
            header = self.build.work / (file.replace("/", "_") + ".h")
            includes = [l for l in (ROOT / file).read_text(encoding="utf-8").splitlines() if l.startswith("#include")]
            header.write_text("\n".join(includes) + "\n")
            done = None
            if "-include" not in words:
                done = subprocess.run(words + ["-x", "c++-header", str(header), "-o", str(header) + ".gch"],
                                      cwd=self.build.folder, capture_output=True)
            self.headers[file] = header if done and done.returncode == 0 else None
            return self.headers[file]

    def judge(self, mutant, programs):
        """(verdict, by what)."""
        place = self.build.work / f"worker{threading.get_ident()}"
        place.mkdir(exist_ok=True)
        text = (ROOT / mutant.file).read_text(encoding="utf-8")
        source = place / os.path.basename(mutant.file)
        source.write_text(text[:mutant.start] + mutant.text + text[mutant.end:], encoding="utf-8")
        made = place / "mutant.o"
        prefix = self.prefix_of(mutant.file)
        words = self.build.compile_words(mutant.file) + (["-include", str(prefix)] if prefix else [])
        code, out = run(words + ["-c", str(source), "-o", str(made)], self.build.folder, 300)
        if code != 0:
            return "not compilable", out.strip().splitlines()[0] if out.strip() else ""
        for stage in (0, 1):
            for program in programs:
                if stage >= len(self.stages[program]):
                    continue
                tests, seconds = self.stages[program][stage]
                binary = place / os.path.basename(program)
                if stage == 0:
                    code, out = run(self.build.link_words(program, made, binary), self.build.folder, 300)
                    if code != 0:
                        return "not compilable", "does not link: " + out[-200:]
                code, out = run([str(binary), "--gtest_fail_fast", "--gtest_brief=1", f"--gtest_filter={tests}"],
                                self.build.folder, 15 + 8 * seconds, self.env)
                if code is None:
                    return "caught", "takes too long"
                if code != 0:
                    failed = re.search(r"\[  FAILED  \] ([\w/.]+)", out)
                    return "caught", failed.group(1) if failed else f"{os.path.basename(program)} ends with {code}"
        return "survived", ""


def equal_ones():
    found = {}
    file = Path(__file__).with_name("equal.txt")
    for line in file.read_text(encoding="utf-8").splitlines() if file.exists() else []:
        if line.strip() and not line.startswith("#"):
            # The code may hold bars itself: the file is before the first, what is replaced and why behind the last two.
            name, rest = line.split(" | ", 1)
            code, change, reason = rest.rsplit(" | ", 2)
            found[(name.strip(), code.strip(), change.strip())] = reason.strip()
    return found


def chosen(options):
    patterns = options.file or FILES
    every = subprocess.run(["git", "-C", str(ROOT), "ls-files", "--cached", "--others", "--exclude-standard"],
                           capture_output=True, text=True).stdout.split()
    files = sorted(f for f in every if any(fnmatch.fnmatch(f, p) for p in patterns) and (ROOT / f).exists())
    mutants = [m for f in files for m in mutants_of(f)]
    if options.again:
        before = {tuple(s["key"]) for s in json.loads(Path(options.again).read_text())["survivors"]}
        return files, [m for m in mutants if m.key() in before]
    random.Random(options.seed).shuffle(mutants)
    return files, mutants[:options.sample] if options.sample else mutants


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("build", help="a build folder made by CMake for Ninja")
    parser.add_argument("--file", action="append", help="pattern of files instead of all that make money")
    parser.add_argument("--sample", type=int, default=300, help="how many mistakes; 0: every one")
    parser.add_argument("--seed", type=int, default=1, help="of the sample")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--slow", type=float, default=5, help="tests that take more seconds are left out")
    parser.add_argument("--tests", default="*", help="filter of the tests to run, as GoogleTest takes it")
    parser.add_argument("--again", help="a report: only what survived there")
    parser.add_argument("--report", help="where to write what came out (BUILD/mutation/report.json)")
    parser.add_argument("--list", action="store_true", help="show the mistakes and stop")
    options = parser.parse_args()
    files, mutants = chosen(options)
    if options.list:
        for m in mutants:
            print(m)
        return 0
    build = Build(options.build)
    bench = Bench(build, options)
    missing = [f for f in files if f not in build.compiles]
    if missing:
        sys.exit(f"{build.folder} does not compile {', '.join(missing)} by itself: configure it without unity.")
    programs = {f: build.programs_of(f) for f in {m.file for m in mutants}}
    bench.measure(sorted({p for used in programs.values() for p in used}))
    equal, used = equal_ones(), set()
    results, began = [], time.time()
    stop = threading.Event()
    for name in (signal.SIGINT, signal.SIGTERM):
        signal.signal(name, lambda *_: stop.set())

    def one(m):
        if stop.is_set():
            return
        if m.key() in equal:
            used.add(m.key())
            verdict, by = "equal", equal[m.key()]
        else:
            verdict, by = bench.judge(m, programs[m.file])
        with bench.lock:
            results.append((m, verdict, by))
            if verdict == "survived":
                print(f"survived: {m}", flush=True)
            if len(results) % 25 == 0:
                print(f"{len(results)} of {len(mutants)}, {time.time() - began:.0f} s", flush=True)

    with ThreadPoolExecutor(options.jobs) as pool:
        for done in [pool.submit(one, m) for m in mutants]:
            done.result()
    return told(options, build, files, results, equal, used, time.time() - began)


def told(options, build, files, results, equal, used, seconds):
    order = {f: i for i, f in enumerate(files)}
    results.sort(key=lambda r: (order[r[0].file], r[0].start, r[0].instead))
    print(f"\n{'file':44}{'caught':>8}{'survived':>10}{'equal':>8}{'not compilable':>16}")
    total = {}
    for file in files:
        count = {}
        for m, verdict, _ in results:
            if m.file == file:
                count[verdict] = count.get(verdict, 0) + 1
                total[verdict] = total.get(verdict, 0) + 1
        if count:
            print(f"{file:44}{count.get('caught', 0):8}{count.get('survived', 0):10}{count.get('equal', 0):8}"
                  f"{count.get('not compilable', 0):16}")
    caught, survived = total.get("caught", 0), total.get("survived", 0)
    share = 100 * caught / max(1, caught + survived)
    print(f"{'all':44}{caught:8}{survived:10}{total.get('equal', 0):8}{total.get('not compilable', 0):16}")
    print(f"{share:.1f} % of {caught + survived} mistakes caught, seed {options.seed}, {seconds:.0f} s\n")
    survivors = [m for m, verdict, _ in results if verdict == "survived"]
    for m in survivors:
        print(f"{m}")
        for line in m.old:
            print(f"  - {line.strip()}")
        for line in m.new:
            print(f"  + {line.strip()}")
    every = {m.key() for f in files for m in mutants_of(f)}
    for key in equal:
        if key[0] in files and key not in every:
            print("equal.txt names what is no longer there: " + " | ".join(key))
    report = Path(options.report) if options.report else build.work / "report.json"
    report.write_text(json.dumps({
        "seed": options.seed, "caught": caught, "survived": survived, "share": share, "seconds": seconds,
        "survivors": [{"key": m.key(), "line": m.line, "old": m.old, "new": m.new} for m in survivors],
        "all": [{"key": m.key(), "line": m.line, "verdict": v, "by": by} for m, v, by in results]}, indent=1))
    return 0


if __name__ == "__main__":
    sys.exit(main())

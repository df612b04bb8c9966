// In: the cases of tests/cases. Out: each as a folder to run the program in, and what the program says about it.
//
// files.txt holds many tiny files in one. Each begins after a line `=== PATH`; a word after the path says what is special:
//   bytes     \xHH is a byte, and {N*TEXT} is TEXT (in it, \n ends a line) N times: for what an editor would not keep
//   link TO   a symbolic link
//   gone      no such file, where the schema has one
// A path that ends in / is an empty folder. What lies in overlay and overlay-2 is laid over the content.

#include "prove/case_folder.h"

#include <sys/wait.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <optional>
#include <sstream>
#include <stdexcept>

#include <nlohmann/json.hpp>

namespace benchleaf::test {

namespace fs = std::filesystem;
using nlohmann::json;

namespace {

const fs::path kCases = "tests/cases";

Case read_case(const fs::path& path) {
  Case one;
  one.path = path;
  std::istringstream lines(read_bytes(path / "expect.txt"));
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind("pass ", 0) != 0) {
      one.findings += line + "\n";
      continue;
    }
    std::istringstream words(line);
    std::string word;
    Case::Pass pass;
    words >> word >> pass.rule >> pass.file;
    one.passes.push_back(std::move(pass));
  }
  return one;
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size())) {
    text.replace(at, what.size(), with);
  }
  return text;
}

/// The text of a part marked `bytes`.
std::string unfolded(const std::string& text) {
  std::string bytes;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text.compare(i, 2, "\\x") == 0) {
      bytes += static_cast<char>(std::stoi(text.substr(i + 2, 2), nullptr, 16));
      i += 3;
      continue;
    }
    const std::size_t star = text.find('*', i), end = text.find('}', i);
    const bool repeat = text.at(i) == '{' && star != std::string::npos && end != std::string::npos && star < end &&
                        text.find_first_not_of("0123456789", i + 1) == star && star > i + 1;
    if (!repeat) {
      bytes += text.at(i);
      continue;
    }
    const std::string unit = replaced(text.substr(star + 1, end - star - 1), "\\n", "\n");
    for (int times = std::stoi(text.substr(i + 1, star)); times > 0; --times) bytes += unit;
    i = end;
  }
  return bytes;
}

void write(const fs::path& path, const std::string& bytes) {
  fs::create_directories(path.parent_path());
  std::ofstream(path, std::ios::binary) << bytes;
}

/// One part of files.txt: its head line without `=== `, and the lines below it.
void write_part(const fs::path& root, const std::string& head, const std::string& text) {
  std::istringstream words(head);
  std::string name, how, more;
  words >> name >> how >> more;
  const fs::path path = root / name;
  if (name.back() == '/') {
    fs::create_directories(path);
  } else if (how == "link") {
    fs::create_directories(path.parent_path());
    fs::create_symlink(more, path);
  } else if (how == "gone") {
    fs::remove(path);
  } else if (how == "bytes") {
    write(path, unfolded(text));
  } else if (how.empty()) {
    write(path, text);
  } else {
    throw std::runtime_error("files.txt: unknown word " + how);
  }
}

void write_parts(const fs::path& root, const fs::path& list) {
  std::istringstream lines(read_bytes(list));
  std::optional<std::string> head;
  std::string text;
  auto finish = [&] {
    if (head) write_part(root, *head, text);
    text.clear();
  };
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind("=== ", 0) == 0) {
      finish();
      head = line.substr(4);
    } else {
      text += line + "\n";
    }
  }
  finish();
}

std::string place(const json& where) {
  return where.at("file").get<std::string>() + ":" + std::to_string(where.at("line").get<int>()) + ":" +
         std::to_string(where.at("column").get<int>());
}

std::string finding_text(const json& finding) {
  std::string text = place(finding) + " " + finding.at("severity").get<std::string>() + " " +
                     finding.at("rule").get<std::string>() + ": " + finding.at("message").get<std::string>() + "\n";
  const std::string hint = finding.at("hint");
  if (!hint.empty()) text += "  hint: " + hint + "\n";
  for (const auto& note : finding.at("notes")) text += "  " + place(note) + " " + note.at("text").get<std::string>() + "\n";
  return text;
}

/// Exit code of the program, run in `folder`.
int run(const fs::path& folder, const std::string& words) {
  const std::string command = "cd '" + folder.string() + "' && '" BENCHLEAF_PROGRAM "' " + words;
  const int status = std::system(command.c_str());
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace

std::string read_bytes(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::vector<Case> all_cases() {
  std::vector<Case> list;
  for (const auto& entry : fs::directory_iterator(kCases)) {
    if (fs::exists(entry.path() / "expect.txt")) list.push_back(read_case(entry.path()));
  }
  std::sort(list.begin(), list.end(), [](const Case& one, const Case& other) { return one.path < other.path; });
  return list;
}

CaseFolder::CaseFolder(const Case& one) {
  fs::create_directories(path() / "content");
  fs::copy("schema", path() / "schema", fs::copy_options::recursive);
  if (fs::exists(one.path / "content")) fs::copy(one.path / "content", path() / "content", fs::copy_options::recursive);
  if (fs::exists(one.path / "files.txt")) write_parts(path(), one.path / "files.txt");
  const bool headless = fs::exists(one.path / "headless");
  if (!headless && !fs::exists(path() / "content/handbook.yaml")) {
    fs::copy(kCases / "handbook.yaml", path() / "content/handbook.yaml");
  }
}

std::string CaseFolder::overlays() const {
  std::string words;
  for (const char* name : {"overlay", "overlay-2"}) {
    if (fs::exists(path() / name)) words += std::string(" --overlay ") + name;
  }
  return words;
}

std::string CaseFolder::check() const {
  const int code = run(path(), "check --json --quiet" + overlays() + " >findings.json");
  std::string text = "exit " + std::to_string(code) + "\n";
  const json findings = json::parse(read_bytes(path() / "findings.json"));
  for (const auto& finding : findings.at("findings")) text += finding_text(finding);
  return text;
}

int CaseFolder::bind(const std::string& folder) const {
  return run(path(), "bind --quiet --to '" + folder + "'" + overlays() + " 2>bind.txt");
}

}  // namespace benchleaf::test

// In: questions of a page. Out: what the page's program, run by node, and the library that it is built of answer.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "command/run_program.h"
#include "read/disk_files.h"
#include "read/shapes.h"
#include "support/catch.h"
#include "web/program.h"

namespace benchleaf::test {

using Question = nlohmann::ordered_json;

/// A tree of a file as the page's form has it.
inline Question question_of(const model::Node& node) {
  if (node.type == model::NodeType::sequence) {
    Question list = Question::array();
    for (const model::Node& item : node.items) list.push_back(question_of(item));
    return list;
  }
  if (node.type == model::NodeType::mapping) {
    Question object = Question::object();
    for (const model::Member& member : node.members) object[member.key] = question_of(member.value);
    return object;
  }
  if (node.type == model::NodeType::boolean) return node.text == "true";
  if (node.type == model::NodeType::integer) return std::stoll(node.text);
  return node.type == model::NodeType::null ? Question() : Question(node.text);
}

/// An object as a tree, as the page's script hands it over.
inline model::Node node_of(const Question& value) {
  model::Node node;
  node.type = value.is_object()    ? model::NodeType::mapping
              : value.is_array()   ? model::NodeType::sequence
              : value.is_boolean() ? model::NodeType::boolean
              : value.is_number()  ? model::NodeType::integer
              : value.is_null()    ? model::NodeType::null
                                   : model::NodeType::string;
  if (value.is_string()) node.text = value.get<std::string>();
  if (value.is_boolean() || value.is_number()) node.text = value.dump();
  if (value.is_array()) {
    for (const Question& item : value) node.items.push_back(node_of(item));
  }
  if (value.is_object()) {
    for (const auto& [key, inner] : value.items()) node.members.push_back({key, {}, node_of(inner)});
  }
  return node;
}

/// What `bind` writes for the page.
inline std::string page_data(const std::vector<model::PublishedTable>& tables, const model::KnowledgeBase& records) {
  const DiskFiles schema("schema");
  return web::page_lines(tables, records, *read::shape_tree(schema, "watch"), *read::shape_tree(schema, "stock"));
}

/// What the page's program answers, asked by the script of the pages.
inline std::vector<std::string> page_answers(const std::filesystem::path& work, const std::string& data,
                                             const std::vector<Question>& questions) {
  constexpr std::string_view kParting = "====\n";
  std::filesystem::remove_all(work);
  std::filesystem::create_directories(work);
  std::ofstream(work / "data.txt", std::ios::binary) << data;
  std::ofstream lines(work / "questions.txt", std::ios::binary);
  for (const Question& one : questions) lines << one.dump() << "\n";
  lines.close();
  const std::string root = std::filesystem::current_path().string();
  const Ran ran = run_program(work,
                              "'" + root + "/tests/web/page_answers.cjs' '" BENCHLEAF_SCRIPT "' '" + root +
                                  "/src/html/assets/ask.js' data.txt questions.txt",
                              {}, BENCHLEAF_NODE);
  INFO(ran.err);
  CHECK(ran.code == 0);
  std::vector<std::string> answers;
  std::string_view rest = ran.out;
  for (std::size_t at = rest.find(kParting); at != std::string_view::npos; at = rest.find(kParting)) {
    answers.emplace_back(rest.substr(0, at));
    rest.remove_prefix(at + kParting.size());
  }
  REQUIRE(answers.size() == questions.size());
  return answers;
}

}  // namespace benchleaf::test

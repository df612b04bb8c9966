// In: the body of a block `bench` that asks a calculator. Out: its questions, row by row.

#include "derive/page_answers.h"

#include "base/ascii.h"
#include "model/request_words.h"

namespace benchleaf::derive {
namespace {

using model::word_of;

/// Adds the inputs of a mapping; false where it is none.
bool give(const model::Node& mapping, bench::Inputs& inputs) {
  for (const auto& member : mapping.members) {
    if (!member.value.is_scalar()) return false;
    inputs.insert_or_assign(member.key, bench::Given{member.value.text, model::Trust::given, {}});
  }
  return mapping.type == model::NodeType::mapping;
}

std::optional<PageQuestion> question_of(const model::Node& row, const bench::Inputs& with, PageAnswers& answers) {
  PageQuestion question;
  question.inputs = with;
  if (!give(row, question.inputs)) return std::nullopt;
  std::vector<std::string> keys;
  for (const auto& member : row.members) {
    keys.push_back(member.key);
    question.values.push_back(member.value.text);
    question.slug += (question.slug.empty() ? "" : "-") + base::parted_words(member.value.text, '-');
  }
  if (answers.rows.empty()) answers.keys = keys;
  if (keys != answers.keys || question.slug.empty()) return std::nullopt;
  return question;
}

}  // namespace

std::string PageAnswers::fact_id(const std::string& page, const PageQuestion& row, const std::string& column) const {
  return page + "#" + calculator + "." + name + "." + row.slug + "." + column;
}

std::optional<PageAnswers> read_page_answers(const model::Node& body) {
  if (word_of(body, "show") != "reckoned") return std::nullopt;
  PageAnswers answers;
  answers.name = word_of(body, "name");
  answers.calculator = word_of(body, "calculator");
  bench::Inputs with;
  const model::Node* shared = body.find("with");
  if (shared != nullptr && !give(*shared, with)) return std::nullopt;
  const model::Node* columns = body.find("columns");
  const model::Node* rows = body.find("rows");
  if (columns == nullptr || rows == nullptr) return std::nullopt;
  for (const auto& column : columns->items) answers.columns.push_back(column.text);
  for (const auto& row : rows->items) {
    auto question = question_of(row, with, answers);
    if (!question) return std::nullopt;
    answers.rows.push_back(std::move(*question));
  }
  if (answers.name.empty() || answers.columns.empty() || answers.rows.empty()) return std::nullopt;
  return answers;
}

}  // namespace benchleaf::derive

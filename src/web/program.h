#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "compose/uses.h"
#include "derive/derive.h"
#include "model/fact.h"
#include "query/answer.h"
#include "query/bench_names.h"
#include "web/page_library.h"

namespace benchleaf::web {

/// What the page runs: the program of the terminal without files and without a terminal. What one question needs is worked out
/// when it is asked for the first time.
class Program {
 public:
  /// `lines` as `page_lines` writes them.
  explicit Program(std::string_view lines);

  /// Answers a request, a tree in the lines of read/node_lines.h, as the command of the same name prints it:
  ///   ask: reckon, name, inputs: {key: value}, form: text or json; without a name the list of calculators
  ///   ask: form, name: what the form of a calculator asks, see web/calculator_form.h
  ///   ask: find, query: words (JSON, see query/answer.h)
  ///   ask: ticket, watch: {...}, stock: {...} or nothing (JSON, see web/ticket_answer.h)
  ///   ask: label-form: what the form for labels asks, see web/label_form.h
  ///   ask: labels, orders: [...], ... (JSON, see web/label_answer.h)
  /// Whatever is wrong is said in the answer.
  std::string answer(std::string_view request);

 private:
  const model::FactBase& figures();
  const derive::Derived& derived();
  std::string found(const model::Node& request);
  std::string reckoned(const model::Node& request);
  std::string ticket(const model::Node& request, std::string_view lines);
  std::string labels(const model::Node& request);
  const query::BenchNames& names();

  PageLibrary library_;
  std::optional<model::FactBase> figures_;
  std::optional<derive::Derived> derived_;
  std::optional<query::BenchNames> names_;
  std::optional<compose::Uses> uses_;
  std::optional<derive::Relations> relations_;
  std::optional<query::Answerer> answerer_;
};

}  // namespace benchleaf::web

// One voice: each question of tests/spec/one-voice.tsv is put to every output that answers it, and each answers with the code
// that the file gives: the terminal's look-up and calculators, the program of the page, the charts, the book, the plan of a
// ticket.
#include <array>
#include <cctype>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "bench/compatibility.h"
#include "compose/charts/chart.h"
#include "derive/bench_figures.h"
#include "query/answer.h"
#include "query/bench_names.h"
#include "read/disk_files.h"
#include "read/node_lines.h"
#include "read/shapes.h"
#include "support/catch.h"
#include "ticket/planned.h"
#include "web/program.h"

using namespace benchleaf;
using nlohmann::json;
using test::real_book;

namespace {

struct Question {
  std::string query, kind, of, code, decided;
};

/// What each output says, by its name.
using Voices = std::map<std::string, std::string>;

std::vector<std::string> parts_of(const std::string& text, char sign) {
  std::vector<std::string> parts;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, sign);) parts.push_back(part);
  return parts;
}

std::vector<Question> questions() {
  std::vector<Question> list;
  std::ifstream file("tests/spec/one-voice.tsv");
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line[0] == '#') continue;
    const auto parts = parts_of(line, '\t');
    REQUIRE(parts.size() == 5);
    list.push_back({parts[0], parts[1], parts[2], parts[3], parts[4]});
  }
  return list;
}

const char* code_of(model::Verdict verdict) {
  return verdict == model::Verdict::use ? "ok" : verdict == model::Verdict::with_limits ? "with-care" : "never";
}

const char* code_of(bench::Effect effect) {
  switch (effect) {
    case bench::Effect::ok: return "ok";
    case bench::Effect::with_care: return "with-care";
    case bench::Effect::never: return "never";
    case bench::Effect::not_known: break;
  }
  return "not-known";
}

// The terminal and the page.

json from_terminal(const std::string& query) {
  static const query::World kWorld{real_book().records, real_book().tables, real_book().derived.relations};
  static const query::Answerer kAnswerer(kWorld);
  return json::parse(query::answer(kAnswerer, query));
}

model::Node text_node(const std::string& text) {
  model::Node node;
  node.type = model::NodeType::string;
  node.text = text;
  return node;
}

model::Node object_node(const std::map<std::string, std::string>& members) {
  model::Node node;
  node.type = model::NodeType::mapping;
  for (const auto& [key, text] : members) node.members.push_back({key, {}, text_node(text)});
  return node;
}

json from_page(const model::Node& request) {
  static const test::DiskFiles kSchema("schema");
  static web::Program program(web::page_lines(real_book().tables.published, real_book().records,
                                              *read::shape_tree(kSchema, "watch"), *read::shape_tree(kSchema, "stock")));
  return json::parse(program.answer(read::node_lines(request)));
}

json found_by_page(const std::string& query) { return from_page(object_node({{"ask", "find"}, {"query", query}})); }

using Words = std::map<std::string, std::string>;

json reckoned_by_page(const std::string& name, const Words& words) {
  model::Node request = object_node({{"ask", "reckon"}, {"name", name}, {"form", "json"}});
  request.members.push_back({"inputs", {}, object_node(words)});
  return from_page(request);
}

bench::Result reckoned(const std::string& name, const Words& words) {
  static const model::FactBase kFigures = derive::bench_figures(real_book().records, real_book().tables);
  static const query::BenchNames kNames(real_book().records, real_book().tables);
  bench::Inputs inputs;
  for (const auto& [key, text] : words) inputs[key] = {text, model::Trust::given, {}};
  return bench::reckon(name, inputs, bench::Context{real_book().tables, kFigures, &kNames});
}

std::string printed_output(const bench::Result& result, const char* name) {
  const bench::Output* output = result.find(name);
  return output == nullptr ? "none" : base::to_terminal(output->printed);
}

std::string printed_output(const json& result, const char* name) {
  for (const json& output : result.at("outputs")) {
    if (output.at("name") == name) return base::to_terminal(output.at("printed").get<std::string>());
  }
  return "none";
}

/// The verdict on two records, whichever is named first.
std::string verdict_in(const json& answers, const std::string& one, const std::string& other) {
  for (const char* list : {"before", "hits", "others"}) {
    for (const json& hit : answers.at(list)) {
      if (!hit.value("pair", false)) continue;
      for (const json& verdict : hit.at("verdicts")) {
        const std::string a = hit.at("record"), b = verdict.at("record");
        if ((a == one && b == other) || (a == other && b == one)) return verdict.at("code");
      }
    }
  }
  return "none";
}

std::string first_record(const json& answers) { return answers.at("hits").empty() ? "none" : answers.at("hits")[0].at("record"); }

std::string size_in(const json& answers) {
  return answers.at("hits").empty() ? "none" : base::to_terminal(answers.at("hits")[0].value("size", std::string()));
}

std::string procedure_in(const json& answers, const std::string& symptom) {
  for (const json& hit : answers.at("hits")) {
    if (hit.at("record") != symptom || !hit.contains("causes")) continue;
    for (const json& cause : hit.at("causes")) {
      if (cause.at("procedure") != "") return cause.at("procedure");
    }
  }
  return "none";
}

// The charts.

const std::vector<model::SheetSet>& charts() {
  static report::Findings findings;
  static const auto kCharts = compose::make_charts(real_book().records, real_book().tables, real_book().derived, findings);
  return kCharts;
}

template <class Block, class Visit>
void visit_blocks(const Visit& visit) {
  for (const auto& chart : charts()) {
    for (const auto& side : chart.sides) {
      for (const auto& panel : side.panels) {
        for (const auto& block : panel.blocks) {
          if (const auto* one = std::get_if<Block>(&block)) visit(*one, chart.id + ", " + panel.title);
        }
      }
    }
  }
}

std::string in_small_letters(std::string text) {
  for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

template <class Record>
std::string head_of(const Record& record) {
  return in_small_letters(record.short_name.empty() ? record.title : record.short_name);
}

/// Cells of all matrices in the row and column with these heads.
void add_matrices(Voices& voices, const std::string& row_head, const std::string& column_head) {
  visit_blocks<model::Matrix>([&](const model::Matrix& matrix, const std::string& where) {
    for (const auto& row : matrix.rows) {
      if (in_small_letters(model::plain_text(row.head)) != row_head) continue;
      for (std::size_t i = 0; i < matrix.columns.size(); ++i) {
        if (in_small_letters(model::plain_text(matrix.columns[i])) != column_head) continue;
        voices["chart " + where] = row.cells[i] ? code_of(*row.cells[i]) : "not-known";
      }
    }
  });
}

/// `7.9 × 5.4` of a chart as `7.9 x 5.4 mm`.
std::string plain_size(const std::string& set) {
  std::string size;
  for (std::size_t i = 0; i < set.size();) {
    const auto byte = static_cast<unsigned char>(set[i]);
    const std::size_t length = byte < 0x80 ? 1 : byte < 0xE0 ? 2 : 3;
    if (set.compare(i, length, "\u00D7") == 0)
      size += " x ";
    else if (length == 1 && (std::isdigit(byte) != 0 || byte == '.'))
      size += set[i];
    i += length;
  }
  return size + " mm";
}

/// What the chart by number prints beside a number.
void add_number_row(Voices& voices, const std::string& number) {
  visit_blocks<model::Table>([&](const model::Table& table, const std::string& where) {
    if (where != "cells, By number") return;
    for (const auto& row : table.rows) {
      if (model::plain_text(row.cells[0].runs) == number)
        voices["chart " + where] = plain_size(model::plain_text(row.cells[1].runs));
    }
  });
}

// The book.

/// Verdicts of an entry by what they are about.
void add_verdicts(const model::Runs& names, const model::Runs& verdicts, std::map<std::string, std::string>& found) {
  for (const model::Run& run : verdicts) {
    if (run.kind != model::Run::Kind::verdict) continue;
    for (const model::Run& name : names) {
      if (!name.target.empty()) found[name.target] = code_of(run.verdict);
    }
  }
}

std::map<std::string, std::string> verdicts_of(const model::Entry& entry) {
  std::map<std::string, std::string> found;
  for (const auto& block : entry.blocks) {
    if (const auto* paragraph = std::get_if<model::Paragraph>(&block->what))
      add_verdicts(paragraph->runs, paragraph->runs, found);
    if (const auto* table = std::get_if<model::Table>(&block->what)) {
      for (const auto& row : table->rows) {
        if (row.cells.size() > 1) add_verdicts(row.cells[0].runs, row.cells[1].runs, found);
      }
    }
  }
  return found;
}

void add_book_verdict(Voices& voices, const std::string& one, const std::string& other) {
  for (const auto& [own, far] : {std::pair(one, other), std::pair(other, one)}) {
    const model::Entry* entry = test::entry_of(real_book().book, own);
    if (entry == nullptr) continue;
    const auto found = verdicts_of(*entry);
    const auto verdict = found.find(far);
    if (verdict != found.end()) voices["book, " + own] = verdict->second;
  }
}

/// The first procedure that an entry's table of causes leads to.
std::string first_procedure(const std::string& anchor) {
  const model::Entry* entry = test::entry_of(real_book().book, anchor);
  if (entry == nullptr) return "none";
  for (const auto& block : entry->blocks) {
    const auto* table = std::get_if<model::Table>(&block->what);
    if (table == nullptr || table->name != "causes") continue;
    for (const auto& row : table->rows) {
      for (const auto& cell : row.cells) {
        for (const auto& run : cell.runs) {
          if (run.target.rfind("procedure/", 0) == 0) return run.target;
        }
      }
    }
  }
  return "none";
}

// Kinds of questions.

void ask_pair(const Question& question, Voices& voices) {
  const auto ids = parts_of(question.of, '+');
  const model::RecordRef liquid(model::Kind::chemistry, ids[0]), material(model::Kind::material, ids[1]);
  voices["terminal"] = verdict_in(from_terminal(question.query), liquid.text(), material.text());
  voices["page"] = verdict_in(found_by_page(question.query), liquid.text(), material.text());
  add_matrices(voices, head_of(real_book().records.chemistries.at(ids[0])), head_of(real_book().records.materials.at(ids[1])));
  add_book_verdict(voices, liquid.text(), material.text());
  voices["steps of a ticket"] = code_of(bench::compatibility({real_book().records, real_book().tables}, liquid, material).effect);
}

void ask_mix(const Question& question, Voices& voices) {
  const auto ids = parts_of(question.of, '+');
  const model::RecordRef one(model::Kind::chemistry, ids[0]), other(model::Kind::chemistry, ids[1]);
  voices["terminal"] = verdict_in(from_terminal(question.query), one.text(), other.text());
  voices["page"] = verdict_in(found_by_page(question.query), one.text(), other.text());
  const auto& liquids = real_book().records.chemistries;
  add_matrices(voices, head_of(liquids.at(ids[0])), head_of(liquids.at(ids[1])));
  add_matrices(voices, head_of(liquids.at(ids[1])), head_of(liquids.at(ids[0])));
  add_book_verdict(voices, one.text(), other.text());
}

void ask_number(const Question& question, Voices& voices) {
  const auto& cell = real_book().records.cells.at(question.of);
  voices["terminal"] = first_record(from_terminal(question.query));
  voices["page"] = first_record(found_by_page(question.query));
  static const query::BenchNames kNames(real_book().records, real_book().tables);
  voices["calculators"] = kNames.resolve(question.query, {"cell"}).record;
  const model::Entry* entry = test::entry_of(real_book().book, cell.reference());
  REQUIRE(entry != nullptr);
  voices["book"] = model::plain_text(entry->key) == question.query ? entry->anchor : model::plain_text(entry->key);
}

void ask_size(const Question& question, Voices& voices) {
  const auto& cell = real_book().records.cells.at(question.of);
  voices["terminal"] = size_in(from_terminal(question.query));
  voices["page"] = size_in(found_by_page(question.query));
  add_number_row(voices, cell.trade_number.empty() ? cell.designation : cell.trade_number);
  const auto fact = [&](const char* path) {
    const model::Fact* found = real_book().derived.facts.find(cell.reference() + "#" + path);
    return found == nullptr ? std::string("none") : base::to_terminal(found->printed);
  };
  voices["book"] = parts_of(fact("size.diameter"), ' ')[0] + " x " + fact("size.height");
}

void ask_symptom(const Question& question, Voices& voices) {
  const model::RecordRef symptom(model::Kind::symptom, question.of);
  voices["terminal"] = procedure_in(from_terminal(question.query), symptom.text());
  voices["page"] = procedure_in(found_by_page(question.query), symptom.text());
  voices["book"] = first_procedure(symptom.text());
  model::Watch watch = test::bare_watch("one-voice");
  watch.symptoms = {symptom};
  report::Findings findings;
  const ticket::Plan plan = test::plan_of(watch, nullptr, findings);
  const ticket::PlanJob* job = plan.job(model::RecordRef(question.code));
  voices["ticket"] = job == nullptr ? "none" : job->procedure.text();
}

/// A watch with an acrylic crystal of which nothing but the scratch is in question.
model::Watch scratched(const std::string& nail) {
  model::Watch watch = test::bare_watch("one-voice");
  watch.crystal = model::RecordRef(model::Kind::crystal, "acrylic-press-fit");
  watch.crystal_size = model::Watch::CrystalSize{test::quantity("30 mm"), std::nullopt, test::quantity("2 mm")};
  watch.nail = nail == "nail-catches" ? "catches" : nail;
  return watch;
}

/// The grade that stands behind these words on the charts and in the page on polishing.
std::string grade_after(const std::string& text, const std::string& words) {
  const std::size_t at = text.find(words);
  if (at == std::string::npos) return {};
  const std::size_t grade = text.find('P', at + words.size());
  return grade == std::string::npos ? "none" : text.substr(grade, text.find_first_not_of("0123456789", grade + 1) - grade);
}

void ask_scratch(const Question& question, Voices& voices) {
  voices["terminal"] = printed_output(reckoned("scratch-ladder", {{"scratch", question.of}}), "start");
  voices["page"] = printed_output(reckoned_by_page("scratch-ladder", {{"scratch", question.of}}), "start");
  report::Findings findings;
  const ticket::Plan plan = test::plan_of(scratched(question.of), nullptr, findings);
  voices["ticket"] = plan.rungs.empty() ? "none" : plan.rungs.front();
  const bool felt = question.of == "nail-catches";
  visit_blocks<model::Table>([&](const model::Table& table, const std::string& where) {
    for (const auto& row : table.rows) {
      const std::string said = grade_after(model::plain_text(row.cells.back().runs), felt ? "Nail catches: " : "Only seen: ");
      if (!said.empty()) voices["chart " + where] = said;
    }
  });
  for (const auto& step : real_book().records.procedures.at("polish-a-crystal").steps) {
    const std::string said = grade_after(step.text, felt ? "the nail catches starts with " : "only seen starts with ");
    if (!said.empty()) voices["book"] = said;
  }
}

void ask_gasket(const Question& question, Voices& voices) {
  const Words words = {{"seat", question.of}, {"series", "round-0-7"}};
  voices["terminal"] = printed_output(reckoned("gasket-fit", words), "size");
  voices["page"] = printed_output(reckoned_by_page("gasket-fit", words), "size");
  model::Watch watch = test::bare_watch("one-voice");
  watch.gasket = model::RecordRef(model::Kind::gasket, "round-0-7");
  watch.gasket_seat = test::quantity(question.of);
  report::Findings findings;
  const ticket::Plan plan = test::plan_of(watch, nullptr, findings);
  voices["ticket"] = plan.gaskets.empty() ? "none" : base::to_terminal(plan.gaskets.front().size.printed);
  const std::string seat = parts_of(question.of, ' ')[0];
  const model::Fact* fact = real_book().derived.facts.find("page/gaskets#gasket-fit.sizes." + seat + "-mm.size");
  if (fact != nullptr) voices["book"] = base::to_terminal(fact->printed);
}

void ask_leak(const Question& question, Voices& voices) {
  model::Watch watch = test::bare_watch("one-voice");
  watch.cells_found = {model::RecordRef(model::Kind::cell, "sr754w")};
  watch.residues = {model::RecordRef(model::Kind::residue, "silver-black-film")};
  const std::string year = parts_of(question.of, ' ')[1];
  watch.crust = model::Watch::Crust{"black", "at the cell contact", year};
  report::Findings findings;
  const ticket::Plan plan = test::plan_of(watch, nullptr, findings);
  const std::array<const char*, 2> kLeaks = {"clear-a-silver-leak", "lift-an-old-leak"};
  for (const char* id : kLeaks) {
    const ticket::PlanJob* job = test::job_of(plan, id);
    if (job != nullptr && job->state != ticket::PlanJob::State::not_this_watch) voices["ticket"] += job->procedure.text();
  }
}

struct Kind {
  void (*ask)(const Question&, Voices&);
  std::size_t least;  ///< outputs that answer it
};

const std::map<std::string, Kind> kKinds = {
    {"pair", {ask_pair, 5}},       {"mix", {ask_mix, 2}},         {"number", {ask_number, 4}}, {"size", {ask_size, 3}},
    {"symptom", {ask_symptom, 4}}, {"scratch", {ask_scratch, 5}}, {"gasket", {ask_gasket, 4}}, {"leak", {ask_leak, 1}}};

}  // namespace

TEST_CASE("every output answers a question of the bench with one code") {
  const auto list = questions();
  CHECK(list.size() >= 150);
  std::size_t asked = 0;
  for (const Question& question : list) {
    INFO(question.query << ", decided in " << question.decided);
    const Kind& kind = kKinds.at(question.kind);
    Voices voices;
    kind.ask(question, voices);
    CHECK(voices.size() >= kind.least);
    for (const auto& [output, code] : voices) {
      INFO(output);
      CHECK(code == question.code);
    }
    asked += voices.size();
  }
  CHECK(asked >= 500);
}

#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "derive/relations.h"
#include "model/knowledge_base.h"
#include "model/tables.h"

namespace benchleaf::query {

/// What a query is answered from.
struct World {
  const model::KnowledgeBase& records;
  const model::Tables& tables;
  const derive::Relations& relations;
};

/// The printed page of the A4 handbook on which a record stands, or empty.
using PageOf = std::function<std::string(const std::string&)>;

/// A cell of the same size, as an answer names it.
struct AnswerPeer {
  std::string record;
  std::string title;   ///< `309 SR754SW`
  std::string system;  ///< words: `silver oxide-zinc`
  bool same_system = false;
  std::string trust;
  std::string code;     ///< in its place, as cell-swap has it: use, with-care, bench-test-only, never; none where it does not fit
  std::string verdict;  ///< the same in words
  std::string why;
};

/// What a liquid or an abrasive does to a material, or to a second liquid, seen from either side.
struct AnswerVerdict {
  std::string record;   ///< the other side
  std::string title;    ///< its title
  std::string code;     ///< never, with-care, not-known, ok
  std::string verdict;  ///< the same in words: `never`, `with care`, `rinse between`
  std::string why;      ///< with the condition, or empty
  std::string trust;    ///< empty where it is not known
};

/// What may be behind a symptom.
struct AnswerCause {
  std::string cause, test, cure;
  std::string procedure;  ///< `procedure/ID`, or empty
  std::string stop;       ///< where to stop and whom to ask, or empty
};

/// One record that answers a query, in the words of the terminal.
struct Answer {
  std::string record;      ///< empty for a liquid that is not on file
  std::string title;       ///< `393 SR754W`, `Isopropyl alcohol on polarising film`
  std::string kind;        ///< of the record; `calculator`; empty for a liquid that is not on file
  std::string provenance;  ///< `Replaced by NAME` where an overlay has the record, or empty
  std::string page;        ///< printed page of the A4 handbook, or empty
  // Of a cell; empty for every other kind and where the record does not say.
  std::string size;     ///< `7.9 x 5.4 mm`
  std::string voltage;  ///< `1.55 V`
  std::string system;
  std::string drain;
  std::string capacity;
  std::vector<AnswerPeer> peers;
  std::string summary;                  ///< of any other kind: one sentence of its record
  std::string shown;                    ///< the sentence that was hit, where it was no name
  bool pair = false;                    ///< whether the verdicts are those of the one pair that was asked about
  std::vector<AnswerVerdict> verdicts;  ///< of a liquid, an abrasive, a material or a part: bans first
  std::vector<AnswerCause> causes;      ///< of a symptom: cheap tests first
  std::string first_aid;                ///< of a caution
};

/// A line of two cells side by side.
struct ComparedLine {
  std::string what;  ///< `drain`
  std::string one, other;
  bool same = false;
};

/// What a query brings: answers, best first; where there is none, the nearest names.
struct Answers {
  std::string query;
  bool danger = false;                 ///< somebody may be hurt: the first hits are what to do
  std::vector<Answer> before;          ///< cautions that are read before anything else
  std::vector<Answer> hits;            ///< as good as it gets
  std::vector<ComparedLine> compared;  ///< of the first two hits, where two cells were asked for
  std::vector<Answer> others;          ///< found by part of the words, or a little smaller than the size that was asked for
  std::string others_head;             ///< why they are named
  std::vector<std::string> left_out;   ///< words that nothing on file has
  std::vector<std::string> nearest;
};

/// Answers queries from one state of the content. Made once; what is long to make is made when a query first needs it. Refers to
/// the world, which must outlive it.
class Answerer {
 public:
  explicit Answerer(const World& world, PageOf page_of = {});
  ~Answerer();
  Answerer(Answerer&&) noexcept;

  Answers answer(std::string_view query) const;

 private:
  class Parts;
  std::unique_ptr<Parts> parts_;
};

/// One line of JSON with its line end, the same at the terminal and in the page.
std::string answers_json(const Answers& answers);

/// Both in one: what the page asks.
std::string answer(const Answerer& answerer, std::string_view query);

}  // namespace benchleaf::query

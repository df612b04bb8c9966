#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "command/workbench.h"
#include "compose/search/search.h"

namespace benchleaf::command {

/// A cell of the same size, as an answer names it.
struct AnswerPeer {
  std::string record;
  std::string title;   ///< `309 SR754SW`
  std::string system;  ///< words: `silver oxide-zinc`
  bool same_system = false;
  std::string trust;
};

/// What a liquid or an abrasive does to a material, seen from either side.
struct AnswerVerdict {
  std::string record;   ///< the other side
  std::string title;    ///< its title
  std::string verdict;  ///< never, with care, not known, no harm
  std::string why;      ///< with the condition, or empty
  std::string trust;    ///< empty where it is not known
};

/// One record that answers a query, in the words of the terminal.
struct Answer {
  std::string record;
  std::string title;  ///< `393 SR754W`
  std::string kind;
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
  std::vector<AnswerVerdict> verdicts;  ///< of a liquid, an abrasive, a material or a part: bans first
};

/// What `find` found: answers, best first; where there is none, the nearest names.
struct Answers {
  std::string query;
  std::vector<Answer> hits;    ///< as good as it gets
  std::vector<Answer> others;  ///< found by part of a word, or a little smaller than the size that was asked for
  std::string others_head;     ///< why they are named
  std::vector<std::string> nearest;
};

/// Looks a query up. `page_of` gives the printed page of an anchor.
Answers look_up(const Workbench& bench, const compose::SearchIndex& index, const std::string& query,
                const std::function<std::string(const std::string&)>& page_of);

/// Verdicts of a liquid or abrasive on all materials, or of all of them on a material or on what a part is made of.
std::vector<AnswerVerdict> verdicts_about(const Workbench& bench, const std::string& record);

/// What comes of two liquids, or of a liquid and a residue, as far as anything is known: the gravest of it.
std::vector<AnswerVerdict> verdict_of_mixing(const Workbench& bench, const std::string& one, const std::string& other);

/// `alcohol on acrylic`, `bleach and vinegar`: a liquid or abrasive, and the material, part, residue or second liquid that the
/// query names, in either order.
struct AskedPair {
  std::string agent;
  std::string target;
};
std::optional<AskedPair> asked_pair(const Workbench& bench, const compose::SearchIndex& index, const std::string& query);

std::string answers_text(const Answers& answers);
std::string answers_json(const Answers& answers);

}  // namespace benchleaf::command

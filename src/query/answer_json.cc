// In: answers. Out: their JSON, the same at the terminal and in the page: without the page of a book that only the terminal
// knows.
#include "bench/json_text.h"
#include "query/answer.h"

namespace benchleaf::query {

namespace {

using Json = bench::JsonText;

void add_texts(Json& json, std::string_view name, const std::vector<std::string>& texts) {
  json.key(name).open_array();
  for (const std::string& text : texts) json.text(text);
  json.close();
}

void add_peers(Json& json, const Answer& answer) {
  json.key("same_size").open_array();
  for (const AnswerPeer& peer : answer.peers) {
    json.open_object().member("record", peer.record).member("title", peer.title).member("system", peer.system);
    json.key("same_system").flag(peer.same_system).member("trust", peer.trust);
    json.member("code", peer.code).member("verdict", peer.verdict).member("why", peer.why).close();
  }
  json.close();
}

void add_verdicts(Json& json, const Answer& answer) {
  json.key("verdicts").open_array();
  for (const AnswerVerdict& verdict : answer.verdicts) {
    json.open_object().member("record", verdict.record).member("title", verdict.title).member("code", verdict.code);
    json.member("verdict", verdict.verdict).member("why", verdict.why).member("trust", verdict.trust).close();
  }
  json.close();
}

void add_causes(Json& json, const Answer& answer) {
  json.key("causes").open_array();
  for (const AnswerCause& cause : answer.causes) {
    json.open_object().member("cause", cause.cause).member("test", cause.test).member("cure", cause.cure);
    json.member("procedure", cause.procedure).member("stop", cause.stop).close();
  }
  json.close();
}

void add_answer(Json& json, const Answer& answer) {
  json.open_object().member("record", answer.record).member("title", answer.title).member("kind", answer.kind);
  if (!answer.provenance.empty()) json.member("provenance", answer.provenance);
  if (answer.kind == "cell") {
    json.member("size", answer.size).member("voltage", answer.voltage).member("system", answer.system);
    json.member("drain", answer.drain).member("capacity", answer.capacity);
    add_peers(json, answer);
  } else {
    json.member("summary", answer.summary);
    if (!answer.shown.empty()) json.member("shown", answer.shown);
    json.key("pair").flag(answer.pair);
    add_verdicts(json, answer);
    if (!answer.causes.empty()) add_causes(json, answer);
    if (!answer.first_aid.empty()) json.member("first_aid", answer.first_aid);
  }
  json.close();
}

void add_answers(Json& json, std::string_view name, const std::vector<Answer>& answers) {
  json.key(name).open_array();
  for (const Answer& answer : answers) add_answer(json, answer);
  json.close();
}

}  // namespace

std::string answers_json(const Answers& answers) {
  Json json;
  json.open_object().member("query", answers.query);
  json.key("danger").flag(answers.danger);
  add_answers(json, "before", answers.before);
  add_answers(json, "hits", answers.hits);
  json.key("compared").open_array();
  for (const ComparedLine& line : answers.compared) {
    json.open_object().member("what", line.what).member("one", line.one).member("other", line.other);
    json.key("same").flag(line.same).close();
  }
  json.close();
  add_answers(json, "others", answers.others);
  json.member("others_head", answers.others_head);
  add_texts(json, "left_out", answers.left_out);
  add_texts(json, "nearest", answers.nearest);
  return json.close().done();
}

std::string answer(const Answerer& answerer, std::string_view query) { return answers_json(answerer.answer(query)); }

}  // namespace benchleaf::query

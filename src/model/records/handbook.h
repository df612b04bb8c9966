#pragma once

#include <map>
#include <string>
#include <vector>

#include "model/book.h"
#include "model/record.h"

namespace benchleaf::model {

/// content/handbook.yaml: what the book is called and how it is divided.
struct Handbook {
  struct Chapter {
    std::string id;
    int number = 0;
    std::string title;
    std::string tab;
    std::string door;  ///< words on the start page that lead here, or empty
    std::string door_line;
    References pages;  ///< `page/ID`
    std::vector<Kind> kinds;
    std::string part;  ///< `A`, `B`, or `screen` for what paper does without; empty: `A`
    base::Span span;
  };

  base::FileId file = base::kNoFile;
  base::Span span;  ///< of the title
  std::string title;
  std::string subtitle;
  std::string edition;
  std::string date;  ///< 2026-11
  std::string language = "en-GB";
  int format = 1;
  std::vector<std::string> papers;
  std::string standing_line;
  std::string scope;
  std::string promise;
  std::string not_replaced;  ///< and what comes first in an accident
  std::string answers;
  std::string signs;
  std::map<Verdict, std::string> verdicts;  ///< what each says to the reader; empty: the book does not explain them
  std::string signal_words;
  std::vector<Chapter> chapters;
  Node root;
  std::vector<std::string> unusable;
  std::vector<ReferencePlace> references;
};

}  // namespace benchleaf::model

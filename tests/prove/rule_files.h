#pragma once

#include <map>
#include <string>
#include <utility>

#include "derive/derive.h"
#include "prove/prove.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/shapes.h"
#include "read/table_reader.h"
#include "support/catch.h"

namespace benchleaf::test {

using FileTexts = std::map<std::string, std::string>;

/// Every file below a folder, by its path.
inline FileTexts texts_below(const std::string& folder) {
  const DiskFiles files{folder};
  FileTexts texts;
  const auto entries = files.list();
  for (const auto& entry : entries.value()) texts.emplace(entry.path, files.read(entry.path).value());
  return texts;
}

/// Files in memory run through read, derive and prove, as `check` does.
struct Checked {
  base::FileTable files;
  report::Findings findings;
  model::Tables tables;
  model::KnowledgeBase base;
  derive::Derived derived;

  /// Reads the schema once, so that many contents can be checked with it.
  struct Schema {
    explicit Schema(FileTexts texts = texts_below("schema")) : source("schema", std::move(texts)) {
      shapes = read::load_shapes(source, files, findings);
      REQUIRE_FALSE(findings.has_errors());
      tables = read::read_tables(source, shapes, files, findings);
      renamed = read::read_renamed(source, shapes, files, findings);
    }
    read::MemoryFiles source;
    base::FileTable files;
    report::Findings findings;
    read::Shapes shapes;
    model::Tables tables;
    read::Renamed renamed;
  };

  /// Without files the overlay is none.
  Checked(const Schema& schema, FileTexts content, FileTexts overlay = {})
      : files(schema.files), findings(schema.findings), tables(schema.tables) {
    read::Additions additions{{}, schema.renamed};
    const read::MemoryFiles over("overlay", std::move(overlay));
    if (!over.list()->empty()) additions.overlays.push_back(&over);
    base = read::read_content(read::MemoryFiles("content", std::move(content)), schema.shapes, files, findings, additions);
    derived = derive::derive(base, tables, findings);
    prove::prove(base, tables, derived, findings);
    findings.sort(files);
  }

  /// `content/cell/a.yaml:4:19`.
  std::string place(const base::Span& where) const {
    const std::string path = where.file == base::kNoFile ? std::string() : files.path(where.file);
    return path + ":" + std::to_string(where.line) + ":" + std::to_string(where.column);
  }
};

}  // namespace benchleaf::test

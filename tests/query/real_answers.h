// In: the real schema and content. Out: what is answered from them, as `find` answers, from an index that is made once.
#pragma once

#include <string>

#include "derive/cell_relations.h"
#include "query/answer.h"
#include "query/name_index.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/shapes.h"
#include "read/table_reader.h"

namespace benchleaf::test {

/// Records and tables as `find` reads them.
struct RealContent {
  RealContent() {
    const DiskFiles schema("schema"), content("content");
    const read::Shapes shapes = read::load_shapes(schema, files, findings);
    tables = read::read_tables(schema, shapes, files, findings);
    records = read::read_content(content, shapes, files, findings);
    relations = derive::cell_relations(records, tables);
  }

  query::World world() const { return {records, tables, relations}; }

  base::FileTable files;
  report::Findings findings;
  model::Tables tables;
  model::KnowledgeBase records;
  derive::Relations relations;
};

inline const RealContent& real_content() {
  static const RealContent kContent;
  return kContent;
}

inline const query::Answerer& real_answers() {
  static const query::Answerer kAnswerer(real_content().world());
  return kAnswerer;
}

}  // namespace benchleaf::test

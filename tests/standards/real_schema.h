#pragma once

#include "model/knowledge_base.h"
#include "model/tables.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/shapes.h"
#include "read/table_reader.h"
#include "support/catch.h"

namespace benchleaf::test {

/// The published tables of this project, and its records on demand.
struct RealSchema {
  RealSchema() : schema("schema"), shapes(read::load_shapes(schema, files, findings)) {
    tables = read::read_tables(schema, shapes, files, findings);
    REQUIRE_FALSE(findings.has_errors());
  }

  model::KnowledgeBase content() {
    model::KnowledgeBase base = read::read_content(DiskFiles("content"), shapes, files, findings);
    REQUIRE_FALSE(findings.has_errors());
    return base;
  }

  base::FileTable files;
  report::Findings findings;
  DiskFiles schema;
  read::Shapes shapes;
  model::Tables tables;
};

}  // namespace benchleaf::test

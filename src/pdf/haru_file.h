#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "pdf/file_output.h"
#include "pdf/syntax.h"

namespace benchleaf::pdf {

/// A libharu document: page tree, page dictionaries, content streams, outlines, catalog, information dictionary and whatever
/// further dictionaries and streams are put into it. Only haru_file.cc knows libharu.
///
/// Entries of a dictionary come as PDF text (`/Type /Font /W [...]`) and are printed behind those that libharu keeps itself:
/// an entry of its own costs libharu 256 bytes and more, and its reals have the seven digits of a float.
class HaruFile {
 public:
  HaruFile();
  ~HaruFile();
  HaruFile(const HaruFile&) = delete;
  HaruFile& operator=(const HaruFile&) = delete;

  enum class Packing { none, flate };

  ObjectNumber add_dictionary(std::string entries);
  /// A stream with its bytes, packed here if so asked.
  ObjectNumber add_stream(std::string entries, std::string_view bytes, Packing packing);
  /// A page behind the last one with the bytes of its content, packed already by deflated(). Boxes and
  /// resources are entries of its own or of the page tree.
  ObjectNumber add_page(std::string_view packed_content);
  /// An item behind the last one of `parent` (0: of the top level), closed, with /Title and /Dest as entries.
  ObjectNumber add_outline(ObjectNumber parent, std::string entries);

  void set_entries(ObjectNumber number, std::string entries);
  ObjectNumber catalog() const;
  /// The root of the pages, whose entries all of them inherit.
  ObjectNumber page_tree() const;
  ObjectNumber info() const;
  /// The first number that no object of this document has.
  ObjectNumber next_number() const;

  void write(FileOutput& out);
  /// Words for the first error that libharu reported, or empty.
  std::string error() const;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace benchleaf::pdf

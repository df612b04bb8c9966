// In: the values of numbered objects. Out: the bytes of the file, with the table of their offsets.
#include "pdf/file_output.h"

#include <utility>

namespace benchleaf::pdf {

namespace {

/// The second line tells transfer programs that the file is binary; PDF/A-1 wants four bytes above 127 there.
constexpr std::string_view kHeader = "%PDF-1.4\n%\xE2\xE3\xCF\xD3\n";

void append_padded(std::string& out, std::size_t value, std::size_t width) {
  std::string digits = std::to_string(value);
  out.append(width > digits.size() ? width - digits.size() : 0, '0');
  out += digits;
}

}  // namespace

FileOutput::FileOutput() : bytes_(kHeader), offsets_(1, 0) {}

void FileOutput::begin(ObjectNumber number) {
  const std::size_t at = static_cast<std::size_t>(number);
  if (at >= offsets_.size()) offsets_.resize(at + 1, 0);
  offsets_.at(at) = bytes_.size();
  append_integer(bytes_, number);
  bytes_ += " 0 obj\n";
}

void FileOutput::end() { bytes_ += "\nendobj\n"; }

/// Free entries form a ring from entry 0; with none, it points at itself.
void FileOutput::append_table() {
  std::vector<std::size_t> free;
  for (std::size_t i = 0; i < offsets_.size(); ++i) {
    if (offsets_[i] == 0) free.push_back(i);
  }
  bytes_ += "xref\n0 ";
  append_integer(bytes_, static_cast<std::int64_t>(offsets_.size()));
  bytes_ += '\n';
  std::size_t passed = 0;  // of the free ones
  for (const std::size_t offset : offsets_) {
    if (offset != 0) {
      append_padded(bytes_, offset, 10);
      bytes_ += " 00000 n \n";
      continue;
    }
    ++passed;
    append_padded(bytes_, passed < free.size() ? free[passed] : 0, 10);
    bytes_ += " 65535 f \n";
  }
}

std::string FileOutput::finish(const Trailer& trailer) {
  const std::size_t table = bytes_.size();
  append_table();
  bytes_ += "trailer\n<< /Size ";
  append_integer(bytes_, static_cast<std::int64_t>(offsets_.size()));
  bytes_ += " /Root ";
  append_reference(bytes_, trailer.root);
  bytes_ += " /Info ";
  append_reference(bytes_, trailer.info);
  bytes_ += " /ID [<";
  bytes_ += trailer.id;
  bytes_ += "> <";
  bytes_ += trailer.id;
  bytes_ += ">] >>\nstartxref\n";
  append_integer(bytes_, static_cast<std::int64_t>(table));
  bytes_ += "\n%%EOF\n";
  return std::move(bytes_);
}

}  // namespace benchleaf::pdf

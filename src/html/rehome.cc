// In: finished markup of a page, as Element wrote it: every attribute in double quotes. Out: the same as part of a longer page.
#include "html/rehome.h"

#include <algorithm>

namespace benchleaf::html {

namespace {

constexpr std::string_view kBetween = "__";
constexpr int kDeepest = 6;

/// Copies tags and text, changing what names a place.
class Rehoming {
 public:
  Rehoming(std::string_view content, std::string_view page_path, int deeper)
      : rest_(content), path_(page_path), deeper_(deeper) {}

  std::string run() {
    while (!rest_.empty()) {
      take(rest_.find('<'));
      if (!rest_.empty()) tag();
    }
    return std::move(out_);
  }

 private:
  void take(std::size_t count) {
    out_ += rest_.substr(0, count);
    rest_.remove_prefix(std::min(count, rest_.size()));
  }

  void tag() {
    take(rest_.substr(0, 2) == "</" ? 2 : 1);
    const std::size_t end = rest_.find_first_of(" >/");
    element_ = rest_.substr(0, end);
    const bool heading = element_.size() == 2 && element_[0] == 'h' && element_[1] >= '1' && element_[1] <= '6';
    out_ += heading ? "h" + std::to_string(std::min(kDeepest, element_[1] - '0' + deeper_)) : std::string(element_);
    rest_.remove_prefix(element_.size());
    while (!rest_.empty() && rest_.front() != '>') attribute();
    take(1);
  }

  void attribute() {
    const std::size_t end = rest_.find_first_of("=>");
    const std::string_view name = rest_.substr(rest_.find_first_not_of(' '), end - std::min(end, rest_.find_first_not_of(' ')));
    if (end == std::string_view::npos || rest_[end] == '>') return take(end);
    take(end + 2);  // the sign and the opening quote
    const std::string_view value = rest_.substr(0, rest_.find('"'));
    out_ += changed(name, value);
    rest_.remove_prefix(value.size());
    take(1);
  }

  std::string changed(std::string_view name, std::string_view value) const {
    if (name == "id" || name == "aria-labelledby") return name_of_page(path_) + std::string(kBetween) + std::string(value);
    if (name == "href" && element_ == "a") return address_in_single(value, path_);
    return std::string(value);
  }

  std::string_view rest_;
  std::string_view path_;
  int deeper_;
  std::string_view element_;
  std::string out_;
};

}  // namespace

std::string name_of_page(std::string_view path) {
  std::string name(path.substr(0, path.rfind(".html")));
  std::replace(name.begin(), name.end(), '/', '_');
  return name;
}

std::string address_in_single(std::string_view address, std::string_view page_path) {
  const std::size_t hash = address.find('#');
  const std::string_view place = hash == std::string_view::npos ? std::string_view() : address.substr(hash + 1);
  std::string page(address.substr(0, hash));
  if (page.empty()) {
    page = page_path;
  } else if (page.starts_with("../")) {
    page.erase(0, 3);
  } else if (const std::size_t slash = page_path.find('/'); slash != std::string_view::npos) {
    page.insert(0, page_path.substr(0, slash + 1));
  }
  const std::string name = "#" + name_of_page(page);
  return place.empty() ? name : name + std::string(kBetween) + std::string(place);
}

std::string rehomed(std::string_view content, std::string_view page_path, int deeper) {
  return Rehoming(content, page_path, deeper).run();
}

}  // namespace benchleaf::html

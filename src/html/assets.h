#pragma once

#include <string_view>
#include <vector>

namespace benchleaf::html {

// What lies beside the pages, by path from the root of the site.
inline constexpr std::string_view kStylePath = "assets/handbook.css";
inline constexpr std::string_view kAskPath = "assets/ask.js";
inline constexpr std::string_view kFieldsPath = "assets/fields.js";
inline constexpr std::string_view kStepsPath = "assets/steps.js";
inline constexpr std::string_view kPagePath = "assets/page.js";
inline constexpr std::string_view kTrueSizePath = "assets/true-size.js";
inline constexpr std::string_view kCalculatorPath = "assets/calculator.js";
inline constexpr std::string_view kTicketFormPath = "assets/ticket-form.js";
inline constexpr std::string_view kLabelsPath = "assets/labels.js";
inline constexpr std::string_view kYamlPath = "assets/js-yaml.min.js";  ///< of others: it reads and writes watch files
// Written for each book.
inline constexpr std::string_view kPlacesPath = "assets/places.js";    ///< where each record stands
inline constexpr std::string_view kProgramPath = "assets/program.js";  ///< the program, built for the browser
inline constexpr std::string_view kDataPath = "assets/data.js";        ///< tables, records and shapes for it

/// A file that is the same for every book.
struct Asset {
  std::string_view path;
  std::string_view text;
};

/// The files of src/html/assets, written into the program by the build.
const std::vector<Asset>& assets();

}  // namespace benchleaf::html

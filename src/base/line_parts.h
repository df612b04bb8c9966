#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::base {

/// Appends a part to a line whose parts stand between tabs; a tab, a line end and a backslash inside it are written \t, \n, \\.
void add_part(std::string& line, std::string_view part);

/// A line of these parts, without a line end.
std::string line_of(std::initializer_list<std::string_view> parts);

/// The parts of such a line, at least one.
std::vector<std::string> parts_of(std::string_view line);

/// Takes the first line off a text, without its line end; empty at the end of the text.
std::string_view take_line(std::string_view& text);

}  // namespace benchleaf::base
